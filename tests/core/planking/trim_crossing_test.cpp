#include "core/planking/trim_crossing.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;

TEST_CASE("a point near a trim is brought onto it, and an arc ends where it crosses it") {
    const double R = 400, length = 3000;
    const TrimmedSurface hull = quarterPipe(R, length).laid;
    const double keel = R * std::numbers::pi / 2;
    const Vector2d on = ontoTrim(hull, geometry::Trim::Centre, {1500, keel - 20});
    CHECK_THAT(hull.surface.point(on.x(), on.y()).y(), WithinAbs(0, 1e-9));
    CHECK_THAT(on.x(), WithinAbs(1500, 1e-6)); // square to the line
    const Vector2d end = ontoTrim(hull, geometry::Trim::SternPlane, {2990, 100});
    CHECK_THAT(hull.surface.point(end.x(), end.y()).x(), WithinAbs(length, 1e-9));

    // straight down over the keel: 30 mm before it, 10 mm past it
    const geometry::ParameterArc down{{1000, keel - 30}, {0, 40}, {1000, keel + 10}, {0, 40}};
    const Crossing crossing = firstCrossing(hull, down);
    CHECK(crossing.trim == geometry::Trim::Centre);
    CHECK_THAT(crossing.f, WithinAbs(0.75, 1e-3));
    const auto inside = [&](double u, double v) {
        return insideHull(hull, {u, v}, hull.surface.point(u, v));
    };
    CHECK(inside(1000, keel - 30));
    CHECK_FALSE(inside(1000, keel + 10));
    CHECK_FALSE(inside(-5, 100));
}
