#include "core/hull/trimmed_surface.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double pi = std::numbers::pi;

const Project& canoe() {
    static const Project p = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
    return p;
}
const LoftedHull& lofted() {
    static const LoftedHull h = loft(canoe()).value();
    return h;
}

/// A quarter pipe of radius 400 between two plumb planes 3000 mm apart: sheer level with the axis, keel a
/// quarter turn below.
TrimmedSurface quarterPipe() {
    geometry::Trims trims;
    trims.bow = geometry::TransomPlane{0, 0, 0};
    trims.stern = geometry::TransomPlane{3000, 0, 0};
    return trimSurface(test::splineOf(
                           [](double u, double v) {
                               return Vector3d(u, 400 * std::cos(v / 400), -400 * std::sin(v / 400));
                           },
                           {-200, 100, 34},
                           {-80, 40, 22}),
                       trims)
        .value();
}

/// Distance of p from a surface, from a start nearby.
double distance(const geometry::TensorSurface& s, const Vector3d& p, Vector2d uv) {
    for (int i = 0; i < 10; ++i) {
        const geometry::SurfaceJet j = s.jet(uv.x(), uv.y());
        Eigen::Matrix2d a;
        a << j.u.dot(j.u), j.u.dot(j.v), j.u.dot(j.v), j.v.dot(j.v);
        uv += a.inverse() * Vector2d(j.u.dot(p - j.p), j.v.dot(p - j.p));
    }
    return (s.point(uv.x(), uv.y()) - p).norm();
}

} // namespace

TEST_CASE("a quarter pipe has its closed-form measures") {
    const TrimmedSurface h = quarterPipe();
    CHECK_THAT(h.length, WithinAbs(3000, 1e-6));
    CHECK_THAT(h.beam, WithinAbs(800, 1e-3));
    CHECK_THAT(h.halfArea, WithinRel(3000 * 200 * pi, 1e-6));
    CHECK_THAT(h.halfGirthMax, WithinAbs(200 * pi, 0.02));
    for (const double x : {20.0, 1234.0, 2990.0})
        CHECK_THAT(halfGirthAt(h, x), WithinAbs(200 * pi, 0.02));
    CHECK(halfGirthAt(h, -10) == 0.0);
    CHECK(halfGirthAt(h, 3010) == 0.0);
    for (const double girth : {0.0, 100.0, 400.0}) {
        const Vector2d uv = parametersAtGirth(h, 1500, girth);
        CHECK_THAT(uv.x(), WithinAbs(1500, 1e-4));
        CHECK_THAT(uv.y(), WithinAbs(girth, 2e-3)); // v is the girth itself
    }
    for (const Vector3d& p : sectionAt(h, 777, 50)) {
        CHECK_THAT(p.x(), WithinAbs(777, 1e-8));
        CHECK_THAT(std::hypot(p.y(), p.z()), WithinAbs(400, 1e-4));
    }
    CHECK(sectionAt(h, 3001).empty());
}

TEST_CASE("a section lies in its plane and on the surface, from the sheer to the keel") {
    const TrimmedSurface& d = lofted().drawn;
    for (const double x : {60.0, 610.0, 2438.0, 4400.0}) {
        const auto section = sectionAt(d, x, 60);
        REQUIRE(section.size() > 20);
        double v = 0;
        for (std::size_t i = 0; i < section.size(); ++i) {
            if (i > 0)
                v += (section[i] - section[i - 1]).norm();
            CHECK_THAT(section[i].x(), WithinAbs(x, 1e-8));
            CHECK(distance(d.surface, section[i], {x, v}) < 1e-6);
        }
        CHECK_THAT(section.back().y(), WithinAbs(0, 1e-6));
        double nearest = 1e9;
        for (std::size_t i = 1; i < d.sheer.size(); ++i)
            if (d.sheer[i - 1].x() <= x && x <= d.sheer[i].x())
                nearest = std::abs(section.front().z() - 0.5 * (d.sheer[i - 1].z() + d.sheer[i].z()));
        if (x > 100)
            CHECK(nearest < 1.0);
    }
}

TEST_CASE("moulds, laid and drawn surface stand the right heights apart along the normal") {
    const double t = canoe().strips.thickness;
    struct Case {
        DrawnTo drawn;
        LayOn lay;
        double moulds, laid; ///< above the drawn surface, mm
    };
    for (const Case& c : {Case{DrawnTo::Moulds, LayOn::Moulds, 0, 0},
                          Case{DrawnTo::Moulds, LayOn::MidThickness, 0, t / 2},
                          Case{DrawnTo::Moulds, LayOn::Outside, 0, t},
                          Case{DrawnTo::Outside, LayOn::Moulds, -t, -t},
                          Case{DrawnTo::Outside, LayOn::MidThickness, -t, -t / 2},
                          Case{DrawnTo::Outside, LayOn::Outside, -t, 0}}) {
        Project p = canoe();
        p.hull.drawnTo = c.drawn;
        p.planking.layOn = c.lay;
        const LoftedHull h = loft(p).value();
        CHECK_THAT(h.laidHeight, WithinAbs(c.laid - c.moulds, 1e-12));
        for (double u = 200; u < 4700; u += 431)
            for (double v = 30; v < 500; v += 67) {
                const geometry::SurfaceJet j = h.drawn.surface.jet(u, v);
                if (j.p.y() < 20)
                    continue;
                const Vector3d moulds = h.moulds.surface.point(u, v), laid = h.laid.surface.point(u, v);
                CHECK((moulds - j.p - c.moulds * j.normal()).norm() < 5e-3);
                CHECK((laid - j.p - c.laid * j.normal()).norm() < 5e-3);
            }
    }
}

TEST_CASE("girth grows with the height it is laid at, by the turn of the section") {
    // a section that turns from the sheer's flare to level at the keel gains height times that turn; the
    // canoe amidships is level at the keel and leans in a little at the sheer (tumblehome)
    const double t = canoe().strips.thickness;
    const TrimmedSurface& moulds = lofted().moulds;
    const double x = 2438.4;
    const auto section = sectionAt(moulds, x, 200);
    const Vector3d top = (section[1] - section[0]).normalized();
    const double turn =
        pi - std::acos(std::clamp(top.y(), -1.0, 1.0)); // from the sheer's direction to inboard
    CHECK(turn > pi / 2 - 0.3);
    CHECK(turn < pi / 2 + 0.3);
    Project p = canoe();
    p.planking.layOn = LayOn::MidThickness;
    const LoftedHull middle = loft(p).value();
    CHECK(middle.laidHeight == t / 2);
    CHECK_THAT(halfGirthAt(middle.laid, x) - halfGirthAt(moulds, x), WithinAbs(turn * t / 2, 0.4));
    // planking.md section 6: 614.9, 620.5 and 626.0 mm
    p.planking.layOn = LayOn::Outside;
    const LoftedHull outside = loft(p).value();
    CHECK_THAT(halfGirthAt(moulds, x), WithinAbs(614.9, 1.0));
    CHECK_THAT(halfGirthAt(middle.laid, x), WithinAbs(620.5, 1.0));
    CHECK_THAT(halfGirthAt(outside.laid, x), WithinAbs(626.0, 1.0));
    CHECK(outside.laid.halfArea > middle.laid.halfArea);
    CHECK(middle.laid.halfArea > moulds.halfArea);
}

TEST_CASE("the outline agrees with the trims: its points are on them, and inside is inside") {
    const TrimmedSurface& h = lofted().laid;
    for (const Vector2d& uv : h.outline.profile) {
        const Vector3d p = h.surface.point(uv.x(), uv.y());
        CHECK_THAT(h.trims.value(geometry::Trim::Centre, uv.y(), p), WithinAbs(0, 1e-6));
    }
    for (const Vector2d& uv : h.outline.sheer)
        CHECK(uv.y() == 0.0);
    for (double u = 100; u < 4800; u += 97)
        for (double v = 7; v < 620; v += 13) {
            const Vector3d p = h.surface.point(u, v);
            if (std::abs(p.y()) < 0.5)
                continue;
            if (h.outline.region.contains(u, v))
                CHECK(h.trims.violated(v, p) == geometry::Trim::None);
        }
}
