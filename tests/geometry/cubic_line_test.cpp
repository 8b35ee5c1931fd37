#include "geometry/cubic_line.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

using namespace sheerlay::geometry;

namespace {

std::vector<Eigen::Vector3d> arc(double radius, int pieces) {
    std::vector<Eigen::Vector3d> points;
    for (int i = 0; i <= pieces; ++i) {
        const double a = 0.5 * std::numbers::pi * i / pieces;
        points.emplace_back(radius * std::cos(a), radius * std::sin(a), 0.0);
    }
    return points;
}

} // namespace

TEST_CASE("a cubic line follows an arc far closer than its chords do") {
    const double radius = 500.0;
    const CubicLine line(arc(radius, 31)); // points 25 mm apart: chords miss by 0.16 mm
    double worst = 0.0;
    for (int i = 0; i <= 2000; ++i)
        worst = std::max(worst, std::abs(line.at(i / 2000.0).p.norm() - radius));
    CHECK(worst < 0.02);
}

TEST_CASE("its slope is the derivative of its points") {
    const CubicLine line(arc(300.0, 20));
    const double h = 1e-6;
    for (const double t : {0.01, 0.2345, 0.5, 0.77, 0.99}) {
        const Eigen::Vector3d by = (line.at(t + h).p - line.at(t - h).p) / (2.0 * h);
        CHECK((line.at(t).after - by).norm() < 1e-3 * by.norm());
    }
}

TEST_CASE("a corner stays a corner and straight pieces stay straight") {
    const CubicLine line({{0, 0, 0}, {10, 0, 0}, {20, 0, 0}, {20, 10, 0}, {20, 20, 0}});
    REQUIRE(line.corners().size() == 1);
    CHECK_THAT(line.corners().front(), WithinAbs(0.5, 1e-12));
    CHECK_THAT(line.length(), WithinAbs(40.0, 1e-12));
    for (int i = 0; i <= 100; ++i) {
        const Eigen::Vector3d p = line.at(i / 100.0).p;
        CHECK(std::min(std::abs(p.y()), std::abs(p.x() - 20.0)) < 1e-12);
    }
    const CubicLine::Place there = line.at(0.5);
    CHECK((there.before - Eigen::Vector3d(40, 0, 0)).norm() < 1e-9);
    CHECK((there.after - Eigen::Vector3d(0, 40, 0)).norm() < 1e-9);
}

TEST_CASE("points on top of each other are one, and a line needs two") {
    const CubicLine line({{0, 0, 0}, {0, 0, 0}, {3, 4, 0}, {3, 4, 0}});
    CHECK(line.breaks().size() == 2);
    CHECK_THROWS_AS(CubicLine({{1, 2, 3}, {1, 2, 3}}), std::invalid_argument);
    CHECK_THROWS_AS(CubicLine({{0, 0, 0}, {1, 0, 0}, {2, 0, 0}}, {0.0, 0.7, 0.6}), std::invalid_argument);
}
