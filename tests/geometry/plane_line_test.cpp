#include "geometry/plane_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/spheroid_hull.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <vector>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector3d;

// Planes cut a spheroid in circles and ellipses: places, ends and curvature in closed form. The spheroid is
// itself a spline fitted to the true one, which the tolerances allow for.

namespace {

struct Boat {
    SpheroidHull shape;
    TensorSurface surface = shape.surface();
    Trims trims;
    HullOutline outline = traceOutline(surface, trims).value();
    [[nodiscard]] std::vector<PlaneLine> cut(const Vector3d& normal, double offset) const {
        return planeLines(surface, trims, outline, {normal, offset});
    }
};

const Boat& boat() {
    static const Boat b;
    return b;
}

/// Curvature of an ellipse with semi-axes a and b at its point (x, y).
double ellipseCurvature(double a, double b, double x, double y) {
    return 1 / (a * a * b * b * std::pow(x * x / std::pow(a, 4) + y * y / std::pow(b, 4), 1.5));
}

void checkOnPlane(const PlaneLine& line, const Vector3d& normal, double offset) {
    for (std::size_t i = 0; i < line.size(); ++i) {
        CHECK_THAT(normal.dot(line[i].p), WithinAbs(offset, 1e-6));
        if (i > 0)
            CHECK((line[i].p - line[i - 1].p).norm() < 5.5);
    }
}

} // namespace

TEST_CASE("a waterline of a spheroid is an ellipse from stem to stem") {
    const Boat& b = boat();
    for (const double depth : {100.0, 250.0}) {
        const auto lines = b.cut(Vector3d::UnitZ(), -depth);
        REQUIRE(lines.size() == 1);
        const PlaneLine& line = lines[0];
        const double part = std::sqrt(1 - depth * depth / (b.shape.b * b.shape.b));
        const double a = part * b.shape.a, c = part * b.shape.b;
        CHECK_THAT(line.front().p.x(), WithinAbs(-a, 0.5));
        CHECK_THAT(line.back().p.x(), WithinAbs(a, 0.5));
        CHECK_THAT(line.front().p.y(), WithinAbs(0, 0.05));
        checkOnPlane(line, Vector3d::UnitZ(), -depth);
        for (const PlaneLinePoint& p : line) {
            CHECK_THAT(std::hypot(p.p.x() / a, p.p.y() / c), WithinAbs(1, 1e-4));
            if (std::abs(p.p.x()) < 0.9 * a)
                CHECK_THAT(p.curvature, WithinRel(ellipseCurvature(a, c, p.p.x(), p.p.y()), 0.01));
        }
    }
}

TEST_CASE("buttocks end on the sheer, sections run from sheer to keel") {
    const Boat& b = boat();
    const auto buttocks = b.cut(Vector3d::UnitY(), 200);
    REQUIRE(buttocks.size() == 1);
    CHECK_THAT(buttocks[0].front().p.z(), WithinAbs(0, 0.05));
    CHECK_THAT(buttocks[0].back().p.z(), WithinAbs(0, 0.05));
    CHECK_THAT(buttocks[0].back().p.x(), WithinAbs(b.shape.a * std::sqrt(0.75), 0.5));
    checkOnPlane(buttocks[0], Vector3d::UnitY(), 200);

    const auto sections = b.cut(Vector3d::UnitX(), 700);
    REQUIRE(sections.size() == 1);
    const double radius = b.shape.b * std::sqrt(1 - 700.0 * 700.0 / (b.shape.a * b.shape.a));
    for (const PlaneLinePoint& p : sections[0]) {
        CHECK_THAT(std::hypot(p.p.y(), p.p.z()), WithinAbs(radius, 0.05));
        CHECK_THAT(p.curvature, WithinRel(1 / radius, 0.005)); // a circle's, + where round
    }
}

TEST_CASE("a diagonal through the axis cuts the meridian's ellipse, whatever its angle") {
    const Boat& b = boat();
    for (const double angle : {0.4, 0.9, 1.3}) {
        const Vector3d normal(0, std::sin(angle), std::cos(angle));
        const auto lines = b.cut(normal, 0);
        REQUIRE(lines.size() == 1);
        for (const PlaneLinePoint& p : lines[0])
            if (std::abs(p.p.x()) < 0.9 * b.shape.a)
                CHECK_THAT(
                    p.curvature,
                    WithinRel(ellipseCurvature(b.shape.a, b.shape.b, p.p.x(), std::hypot(p.p.y(), p.p.z())),
                              0.01));
    }
}

TEST_CASE("a plane past the hull cuts nothing, and a hollow line has a curvature below zero") {
    CHECK(boat().cut(Vector3d::UnitZ(), 50).empty());
    CHECK(boat().cut(Vector3d::UnitX(), 2600).empty());
    // y = 300 + x^2 / 4000: hollow at the sides, as a waist is
    const TensorSurface waist =
        splineOf([](double u, double v) { return Vector3d(u, (300 + u * u / 4000) * (1 - v / 400), -v); },
                 {-600, 60, 20},
                 {-60, 26, 20});
    const PlaneLinePoint p = planeLinePoint(waist, {Vector3d::UnitZ(), -100}, {0, 100});
    CHECK_THAT(p.curvature, WithinRel(-0.75 * 2 / 4000, 1e-6));
}

TEST_CASE("a line is cut off where a transom stands") {
    const Boat& b = boat();
    Trims trims;
    trims.stern = TransomPlane{1500, 0.2, 0};
    const HullOutline outline = traceOutline(b.surface, trims).value();
    const auto lines = planeLines(b.surface, trims, outline, {Vector3d::UnitZ(), -150});
    REQUIRE(lines.size() == 1);
    CHECK_THAT(lines[0].back().p.x(), WithinAbs(1500 - 0.2 * 150, 0.05));
    const auto sheerCrossing = planeLines(b.surface, trims, outline, {Vector3d::UnitY(), 100});
    REQUIRE(sheerCrossing.size() == 1);
    const Vector3d end = sheerCrossing[0].back().p;
    CHECK_THAT(end.x() - 0.2 * end.z(), WithinAbs(1500, 0.05)); // on the transom's plane
}
