#include "core/hull/trimmed_surface.hpp"
#include "core/moulds/mould_outline.hpp"
#include "geometry/offset_surface.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/formula_hull.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/surfaces.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double thickness = 6.35; // mm of planking, drawn to its outside
constexpr double foot = 200.0;     // mm
constexpr double exact = 0.02;     // mm, what issue 6 asks of closed forms

/// A hull whose outside is this surface: the moulds follow its inside, as loft() makes it.
LoftedHull insideOf(geometry::TensorSurface outside, geometry::Trims trims) {
    LoftedHull hull = test::exactHull(outside, trims);
    auto inside = trimSurface(geometry::offsetSurface(outside, -thickness), trims);
    REQUIRE(inside);
    hull.moulds = std::move(*inside);
    return hull;
}

geometry::Trims between(double from, double to) {
    geometry::Trims trims;
    trims.bow = geometry::TransomPlane{from, 0, 0};
    trims.stern = geometry::TransomPlane{to, 0, 0};
    return trims;
}

/// Cone about the x axis, or a cylinder with slope 0; sheer level with the axis.
LoftedHull coneHull(double radiusAtBow, double slope) {
    constexpr double quarter = 400.0 * std::numbers::pi / 2;
    return insideOf(test::splineOf(
                        [=](double u, double v) {
                            const double r = radiusAtBow + slope * u;
                            return Vector3d(u, r * std::cos(v / 400), -r * std::sin(v / 400));
                        },
                        {-200, 40, 60},
                        {-80, 24, static_cast<int>(quarter / 24) + 8}),
                    between(0, 2000));
}

/// Every edge point lies on a circle about the axis and leans over by `bevel`.
void checkCircle(const Mould& mould, double radius, double bevel) {
    REQUIRE(mould.edge.size() > 100);
    double worst = 0.0, lean = 0.0, chord = 0.0;
    for (std::size_t i = 0; i < mould.edge.size(); ++i) {
        worst = std::max(worst, std::abs(mould.edge[i].at.norm() - radius));
        lean = std::max(lean, std::abs(mould.edge[i].bevel - bevel));
        if (i > 0)
            chord = std::max(chord, radius - (0.5 * (mould.edge[i].at + mould.edge[i - 1].at)).norm());
    }
    CHECK(worst < exact);
    CHECK(chord < exact);
    CHECK(lean < 1e-4);
    CHECK(mould.edge.front().at.y() == Approx(0.0).margin(exact)); // the sheer
    CHECK(mould.edge.back().at.x() == Approx(0.0).margin(exact));  // the centreline
    CHECK(mould.keel == Approx(-radius).margin(exact));
}

double distanceTo(const std::vector<Vector2d>& line, const Vector2d& p) {
    double nearest = 1e300;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector2d d = line[i] - line[i - 1];
        const double t = std::clamp((p - line[i - 1]).dot(d) / d.squaredNorm(), 0.0, 1.0);
        nearest = std::min(nearest, (line[i - 1] + t * d - p).norm());
    }
    return nearest;
}

/// Section at x of a surface's inside, found without the product's offset and section: points of the drawn
/// surface on a fine grid, moved along normals from differences, crossed by the plane.
std::vector<Vector2d> meshSection(const TrimmedSurface& drawn, double x) {
    const auto moved = [&](double u, double v) {
        constexpr double h = 1e-3;
        const auto at = [&](double a, double b) { return drawn.surface.point(a, b); };
        const Vector3d n = (at(u + h, v) - at(u - h, v)).cross(at(u, v + h) - at(u, v - h)).normalized();
        return Vector3d(at(u, v) - thickness * n);
    };
    std::vector<Vector2d> section;
    for (double v = -30; v < drawn.surface.knotsV().last(); v += 2)
        for (double u = x - 80; u < x + 80; u += 2) {
            const Vector3d a = moved(u, v), b = moved(u + 2, v);
            if ((a.x() - x) * (b.x() - x) > 0 || a.x() == b.x())
                continue;
            const Vector3d p = a + (x - a.x()) / (b.x() - a.x()) * (b - a);
            section.emplace_back(p.y(), p.z());
            break;
        }
    return section;
}

} // namespace

TEST_CASE("a cylinder's mould is a circle one planking thickness smaller, with a square edge") {
    const LoftedHull hull = coneHull(400, 0);
    const auto mould = mouldOutline({}, hull, {900, true, foot, 0});
    REQUIRE(mould);
    checkCircle(*mould, 400 - thickness, 0);
}

TEST_CASE("a cone's mould is larger than a section offset, and bevelled by the cone's half angle") {
    const double slope = 0.15, angle = std::atan(slope);
    const LoftedHull hull = coneHull(200, slope);
    const auto mould = mouldOutline({}, hull, {900, true, foot, 0});
    REQUIRE(mould);
    // the normal leans over by the half angle, so that the wall is thickness / cos(angle) wide in the plane
    checkCircle(*mould, 200 + slope * 900 - thickness / std::cos(angle), angle);
    CHECK(mould->farFace() == Approx(900 - mould->thickness));

    // the same place with the forward face governing: the hull goes on beyond a square edge
    const auto after = mouldOutline({}, hull, {900, false, foot, 0});
    REQUIRE(after);
    CHECK(after->edge[50].bevel == Approx(-angle).margin(1e-4));
}

TEST_CASE("a sphere's mould is the circle of the sphere inside it") {
    constexpr double radius = 500;
    LoftedHull hull = test::quarterSphere(radius);
    auto inside = trimSurface(geometry::offsetSurface(hull.drawn.surface, -thickness), hull.drawn.trims);
    REQUIRE(inside);
    hull.moulds = std::move(*inside);
    for (const double x : {250.0, 500.0, 700.0}) {
        const bool forward = x <= 500;
        const auto mould = mouldOutline({}, hull, {x, forward, foot, 0});
        REQUIRE(mould);
        const double small = radius - thickness;
        const double sine = std::abs(x - radius) / small;
        checkCircle(*mould, small * std::sqrt(1 - sine * sine), std::asin(sine));
    }
}

TEST_CASE("the canoe's moulds agree with a fine mesh of her inside, and not with a section offset") {
    const test::FormulaHull formula = test::formulaCanoe();
    Project project = test::doubleEnder(formula, 0.1);
    project.hull.drawnTo = DrawnTo::Outside;
    project.strips.thickness = thickness;
    const auto hull = loft(project);
    REQUIRE(hull);
    double flatOffset = 0.0;
    for (const double t : {-2100.0, -1500.0, -600.0, 0.0, 900.0, 2100.0}) {
        const double x = t + hull->xShift;
        const auto mould = mouldOutline(project, *hull, {x, t <= 0, 600, 0});
        REQUIRE(mould);
        const std::vector<Vector2d> mesh = meshSection(hull->drawn, x);
        double worst = 0.0, fromFormula = 0.0;
        for (const EdgePoint& e : mould->edge) {
            worst = std::max(worst, distanceTo(mesh, e.at));
            const double d = formula.distance({t, e.at.x(), e.at.y()});
            fromFormula = std::max(fromFormula, std::abs(d - thickness));
        }
        INFO("t " << t << " worst " << worst << " from the formula " << fromFormula);
        CHECK(worst < 0.1);
        if (std::abs(t) < 2000)
            CHECK(fromFormula < 0.3); // the loft's own error with it
        // taken off in the plane, the outline would come out smaller where the hull bevels
        const auto section = sectionWithNormals(hull->drawn, x, 400);
        for (const SectionPoint& p : section) {
            const Vector2d m = Vector2d(p.normal.y(), p.normal.z()).normalized();
            const Vector2d inPlane = Vector2d(p.point.y(), p.point.z()) - thickness * m;
            if (t < -2000 && inPlane.x() > 10 && inPlane.y() < mould->sheer - 10)
                flatOffset = std::max(flatOffset, distanceTo(mesh, inPlane));
        }
    }
    CHECK(flatOffset > 0.1);
}

TEST_CASE("the far face's outline lies where the bevel says") {
    const LoftedHull hull = coneHull(200, 0.15);
    const auto mould = mouldOutline({}, hull, {900, true, foot, 0});
    const auto far = mouldOutline({}, hull, {mould->farFace(), true, foot, 0});
    REQUIRE(far);
    const double setback = mould->edge[40].at.norm() - far->edge[40].at.norm();
    CHECK(setback == Approx(mould->thickness * std::tan(mould->edge[40].bevel)).margin(exact));
}

TEST_CASE("horn, shoulder, leg and foot close the outline, and a stem form takes its half") {
    Project project;
    project.moulds.strongback.width = 200;
    const LoftedHull hull = coneHull(400, 0);
    const auto mould = mouldOutline(project, hull, {900, true, foot, 0});
    REQUIRE(mould);
    const double r = 400 - thickness;
    const std::size_t n = mould->outline.size();
    const std::vector<Vector2d> tail(mould->outline.end() - 4, mould->outline.end());
    const std::vector<Vector2d> wanted{{0, foot}, {100, foot}, {100, 25}, {r, 25}};
    for (std::size_t i = 0; i < 4; ++i)
        CHECK((tail[i] - wanted[i]).norm() < exact);
    CHECK(n > 200);

    const auto half = mouldOutline(project, hull, {900, true, foot, 9.5});
    REQUIRE(half);
    CHECK(half->edge.back().at.x() == Approx(9.5).margin(1e-6));
    CHECK(half->edge.back().at.norm() == Approx(r).margin(exact));
    double least = 1e9;
    for (const Vector2d& p : half->outline)
        least = std::min(least, p.x());
    CHECK(least == Approx(9.5).margin(1e-6));
    CHECK_FALSE(mouldOutline(project, hull, {2600, true, foot, 0}));
}

TEST_CASE("a mould keeps the knuckle's corner where the insides of both panels meet") {
    Project project = test::prismProject();
    project.hull.drawnTo = DrawnTo::Outside;
    project.strips.thickness = thickness;
    const auto hull = loft(project);
    REQUIRE(hull);
    const auto mould = mouldOutline(project, *hull, {.x = 900, .foot = 600});
    REQUIRE(mould);
    const test::ChineSection s = test::prismSection(900);
    const auto outward = [&](std::size_t k) {
        const Vector2d along = (s[k + 1] - s[k]).normalized();
        return Vector2d(-along.y(), along.x());
    };
    const Vector2d corner = s[1] - thickness * (outward(0) + outward(1)) / (1 + outward(0).dot(outward(1)));
    double nearest = 1e300, off = 0;
    for (const EdgePoint& e : mould->edge) {
        nearest = std::min(nearest, (e.at - corner).norm());
        const std::size_t k = e.at.y() > corner.y() ? 0 : 1;
        off = std::max(off, std::abs((e.at - s[1]).dot(outward(k)) + thickness));
    }
    CHECK(nearest < 0.05);
    CHECK(off < 0.05);
}
