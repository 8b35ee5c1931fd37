#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/surfaces.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// A wedge: two flat sides y = +-(a x + b z) that meet in one straight, raked stem. Everything at its ends is
// a closed form of a and b.

namespace {

constexpr double length = 1000, t = 6.0, w = 18.0;

struct Wedge {
    double a, b;
    double height = 0.0; ///< mm, laid surface above the moulds
    geometry::HalfSiding siding;

    [[nodiscard]] Vector3d normal() const { return Vector3d(-a, 1, -b).normalized(); }
    [[nodiscard]] Vector3d alongSheer() const { return Vector3d(1, a, 0).normalized(); }
    [[nodiscard]] LoftedHull hull() const {
        geometry::Trims trims;
        trims.stern = geometry::TransomPlane{length, 0, 0};
        trims.siding = siding;
        const double drop = std::sqrt(1 + b * b);
        LoftedHull h = exactHull(
            splineOf(
                [this, drop](double u, double v) { return Vector3d(u, a * u - b * v / drop, -v / drop); },
                {-200, 20, 70},
                {-80, 20, 60}),
            trims);
        h.laidHeight = height;
        return h;
    }
};

Plan planOf(const Wedge& wedge, EndStyle style) {
    Project p;
    p.planking.bowEnds = p.planking.sternEnds = style;
    p.planking.closing = ClosingMethod::RunOver; // no plank over both sides: plain rows to the end
    p.strips.thickness = t;
    p.strips.width = p.strips.coverWidth = w;
    return plank(p, wedge.hull()).value();
}

/// How far along `direction` from `from` the plane (point, normal) is met.
double reach(const Vector3d& from, const Vector3d& direction, const Vector3d& point, const Vector3d& normal) {
    return (point - from).dot(normal) / direction.dot(normal);
}

double angle(const Vector3d& a, const Vector3d& b) {
    return std::acos(std::min(1.0, std::abs(a.normalized().dot(b.normalized()))));
}

} // namespace

TEST_CASE(
    "mitred on a wedge: each side is cut to the centreplane, by half of what the corner lacks of flat") {
    for (const Wedge& wedge :
         {Wedge{0.3, 0.6, 3.0, {}}, Wedge{0.4, 0.75, 0.0, {}}, Wedge{0.2, 0.3, 6.0, {}}}) {
        const Plan plan = planOf(wedge, EndStyle::Mitre);
        const Vector3d n = wedge.normal(), along = wedge.alongSheer();
        const Vector3d mirrored(n.x(), -n.y(), n.z());
        const double dihedral = std::numbers::pi - std::acos(n.dot(mirrored));
        const double beta = angle(along, Vector3d(wedge.b, 0, -wedge.a)); // the stem: y = 0 on the side
        int seen = 0;
        for (const Strip* s : stripsOf(plan, Side::Starboard)) {
            const StripEnd& e = s->ends[0];
            if (e.on != EndsOn::Stem || s->kind != StripKind::Full)
                continue;
            INFO(s->id << ", a " << wedge.a << ", b " << wedge.b);
            ++seen;
            CHECK_THAT(e.dihedral, WithinAbs(dihedral, 1e-9));
            CHECK_THAT(e.cut, WithinAbs(beta, 1e-6));
            CHECK_THAT(e.bevel, WithinAbs((std::numbers::pi - dihedral) / 2, 1e-9));
            CHECK(e.lap == 0.0);
            CHECK(e.weave == Weave::None);
            CHECK(e.landing == 0.0);
            // both faces, told from where the laid surface's middle meets the centreplane
            const Vector3d end = s->middle.front(), out = -along;
            CHECK_THAT(end.y(), WithinAbs(0, 1e-6));
            CHECK_THAT(
                e.runInner,
                WithinAbs(reach(end - wedge.height * n, out, Vector3d::Zero(), Vector3d::UnitY()), 1e-5));
            CHECK_THAT(
                e.runOuter,
                WithinAbs(reach(end + (t - wedge.height) * n, out, Vector3d::Zero(), Vector3d::UnitY()),
                          1e-5));
        }
        CHECK(seen > 15);
    }
}

TEST_CASE("landed on a stem piece: bevelled to its side, and as wide there as the strip is cut through") {
    // of one thickness, and growing thinner toward the bow
    for (const auto& siding :
         {geometry::HalfSiding(9.0),
          geometry::HalfSiding(std::vector<std::array<double, 2>>{{-200, 2}, {400, 24}, {1200, 60}})}) {
        const Wedge wedge{0.3, 0.6, 3.0, siding};
        const Plan plan = planOf(wedge, EndStyle::Stem);
        const Vector3d n = wedge.normal(), along = wedge.alongSheer();
        int seen = 0;
        for (const Strip* s : stripsOf(plan, Side::Starboard)) {
            const StripEnd& e = s->ends[0];
            if (e.on != EndsOn::Stem || s->kind != StripKind::Full)
                continue;
            const Vector3d end = s->middle.front();
            const double grows = siding.slopeAt(end.x());
            const Vector3d side = Vector3d(-grows, 1, 0).normalized(); // of the stem piece
            const Vector3d edge = n.cross(side).normalized();          // where the strip's face meets it
            INFO(s->id << ", stem grows " << grows);
            ++seen;
            CHECK_THAT(end.y(), WithinAbs(siding.at(end.x()), 1e-5));
            CHECK_THAT(e.cut, WithinAbs(angle(along, edge), 1e-6));
            CHECK_THAT(e.bevel, WithinAbs(std::numbers::pi / 2 - angle(n, side), 1e-9));
            CHECK(e.lap == 0.0);
            CHECK(e.weave == Weave::None);
            const Vector3d inner = end - wedge.height * n, outer = inner + t * n, out = -along;
            const double runInner = reach(inner, out, end, side), runOuter = reach(outer, out, end, side);
            CHECK_THAT(e.runInner, WithinAbs(runInner, 1e-5));
            CHECK_THAT(e.runOuter, WithinAbs(runOuter, 1e-5));
            // the joint is a band between the two faces' edges on the stem's side
            const Vector3d across = outer + runOuter * out - (inner + runInner * out);
            CHECK_THAT(e.landing, WithinAbs((across - across.dot(edge) * edge).norm(), 1e-5));
            CHECK(e.landing > t);
        }
        CHECK(seen > 15);
    }
}

TEST_CASE("a stem piece of no thickness is asked after") {
    const auto asked = [](const Wedge& wedge, EndStyle style) {
        const Plan plan = planOf(wedge, style);
        return std::count_if(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
            return f.code == "stem-without-siding";
        });
    };
    CHECK(asked({0.3, 0.6, 3.0, {}}, EndStyle::Stem) == 1); // at the bow; the stern has a transom
    CHECK(asked({0.3, 0.6, 3.0, geometry::HalfSiding(9.0)}, EndStyle::Stem) == 0);
    CHECK(asked({0.3, 0.6, 3.0, {}}, EndStyle::Mitre) == 0);
}

TEST_CASE("woven on a wedge with something between the sides: the strip crosses half of it first") {
    const Wedge bare{0.3, 0.6, 3.0, {}}, filled{0.3, 0.6, 3.0, geometry::HalfSiding(4.0)};
    const Plan plan = planOf(filled, EndStyle::Weave);
    const Vector3d out = -bare.alongSheer();
    const StripEnd& with = plan.strips[1].ends[0];
    REQUIRE(with.weave != Weave::None);
    const StripEnd& without = planOf(bare, EndStyle::Weave).strips[1].ends[0];
    CHECK_THAT(with.lap, WithinRel(without.lap, 1e-6)); // past the centreplane as before
    CHECK_THAT(with.runInner - without.runInner, WithinAbs(4.0 / std::abs(out.y()), 1e-4));
    CHECK_THAT(with.runOuter - without.runOuter, WithinAbs(4.0 / std::abs(out.y()), 1e-4));
}
