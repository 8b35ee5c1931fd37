#include "core/outlines/drawing.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay::core;

TEST_CASE("an arc's points lie on it, a degree apart, both ends included") {
    const auto points = arcPoints({3, 4}, 10, 10, 0.5, -std::numbers::pi / 2);
    REQUIRE(points.size() == 91);
    for (const DrawnPoint& p : points)
        CHECK(std::hypot(p.x - 3, p.y - 4) == Approx(10));
    CHECK(points.front().x == Approx(3 + 10 * std::cos(0.5)));
    CHECK(points.back().y == Approx(4 + 10 * std::sin(0.5 - std::numbers::pi / 2)));
}

TEST_CASE("a rational spline is a true circle") {
    DrawnSpline quarter; // the textbook quarter circle: middle weight cos 45 degrees
    quarter.degree = 2;
    quarter.knots = {0, 0, 0, 1, 1, 1};
    quarter.poles = {{1, 0}, {1, 1}, {0, 1}};
    quarter.weights = {1, std::sqrt(0.5), 1};
    const auto points = splinePoints(quarter);
    REQUIRE(points.size() == 17);
    for (const DrawnPoint& p : points)
        CHECK(std::hypot(p.x, p.y) == Approx(1).margin(1e-14));
    CHECK(points.front().x == Approx(1));
    CHECK(points.back().y == Approx(1));
}

TEST_CASE("a cubic spline of two spans gives back the parabola it was made from") {
    // Poles are the blossom of (u, u^2) at three knots in a row: ((a+b+c)/3, (ab+ac+bc)/3).
    DrawnSpline spline;
    spline.knots = {0, 0, 0, 0, 1, 3, 3, 3, 3};
    for (std::size_t i = 1; i <= 5; ++i) {
        const double a = spline.knots[i];
        const double b = spline.knots[i + 1];
        const double c = spline.knots[i + 2];
        spline.poles.push_back({(a + b + c) / 3, (a * b + a * c + b * c) / 3});
    }
    const auto points = splinePoints(spline);
    REQUIRE(points.size() == 33);
    for (const DrawnPoint& p : points)
        CHECK(p.y == Approx(p.x * p.x).margin(1e-12));
    CHECK(points.back().x == Approx(3));
}

TEST_CASE("numbers that make no spline give no points") {
    DrawnSpline bad;
    bad.poles = {{0, 0}, {1, 1}};
    bad.knots = {0, 0, 1, 1};
    CHECK(splinePoints(bad).empty()); // two poles are too few for degree 3
    bad.degree = 1;
    CHECK(splinePoints(bad).size() == 17);
    bad.knots = {0, 1, 0, 1};
    CHECK(splinePoints(bad).empty());
    bad.knots = {0, 0, 1, 1};
    bad.weights = {1, 0};
    CHECK(splinePoints(bad).empty());
}
