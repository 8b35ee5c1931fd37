#include "core/fitout/hull_faces.hpp"
#include "core/fitout/sheer_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Stand = GunwaleChoices::Stand;

namespace {

constexpr double exact = 0.05;                          // mm, issue 8
constexpr double curvature = 2e-6;                      // 1/mm: a radius of 5 m to 5 cm
constexpr double angle = 0.05 * std::numbers::pi / 180; // issue 8

} // namespace

TEST_CASE("a level circular sheer is an arc, inside and outside, bent one way only") {
    constexpr double ring = 5000, tube = 400;
    Project project = test::bareFitout();
    project.strips.thickness = 6.0;
    const auto faces = facesOf(project, test::tubeBoat(ring, tube));
    REQUIRE(faces);
    for (const auto& [face, off] : {std::pair{&faces->inside, 0.0}, {&faces->outside, 6.0}}) {
        const double radius = ring + tube + off;
        for (const Stand stand : {Stand::Square, Stand::Side}) {
            const auto line = sheerLine(*face, stand);
            CHECK(line.back().s == Approx(2 * radius * std::acos(ring / radius)).margin(exact));
            for (const SheerPoint& p : line) {
                CHECK(p.bend == Approx(1 / radius).margin(curvature));
                CHECK(p.edge == Approx(0).margin(curvature));
                CHECK(p.twist == Approx(0).margin(curvature));
                CHECK(p.flare == Approx(0).margin(angle));
            }
        }
    }
}

TEST_CASE("a helical sheer has the helix's length, bend, twist and flare") {
    constexpr double radius = 400, length = 2000, rise = 0.08;
    Project project = test::bareFitout();
    project.strips.thickness = 6.0;
    const auto faces = facesOf(project, test::helixPipe(radius, length, rise));
    REQUIRE(faces);
    const double rate = rise / radius; // rad/mm of x
    for (const auto& [face, rho] : {std::pair{&faces->inside, radius}, {&faces->outside, radius + 6}}) {
        const double slope = rho * rate, per = std::sqrt(1 + slope * slope);
        const auto line = sheerLine(*face, Stand::Side);
        CHECK(line.back().s == Approx(length * per).margin(exact));
        for (const SheerPoint& p : line) {
            CHECK(p.bend == Approx(rho * rate * rate / (per * per)).margin(curvature));
            CHECK(p.edge == Approx(0).margin(curvature));
            CHECK(std::abs(p.twist) == Approx(rate / (per * per)).margin(curvature));
            // the normal leans down by the angle about the axis; seen along the run, by a little more
            const double a = rate * p.point.x();
            const double dip = slope * std::cos(a) / per;
            CHECK(p.flare == Approx(std::asin(std::sin(a) / std::sqrt(1 - dip * dip))).margin(angle));
        }
        // whichever way the stick stands, it follows the same curve
        const auto square = sheerLine(*face, Stand::Square);
        for (std::size_t i = 0; i < line.size(); ++i)
            CHECK(std::hypot(square[i].bend, square[i].edge) ==
                  Approx(std::hypot(line[i].bend, line[i].edge)).margin(1e-9));
    }
}

TEST_CASE("the square stick's twist is what turns its level axis about the run") {
    const auto faces = facesOf(test::bareFitout(), test::helixPipe(400, 2000, 0.2));
    REQUIRE(faces);
    const auto line = sheerLine(faces->inside, Stand::Square, 2000);
    for (std::size_t i = 100; i + 100 < line.size(); i += 100) {
        const SheerPoint &a = line[i - 1], &b = line[i + 1];
        const double byDifference = ((b.out - a.out) / (b.s - a.s)).dot(line[i].up);
        CHECK(line[i].twist == Approx(byDifference).margin(1e-8));
        const Eigen::Vector3d turn = (b.along - a.along) / (b.s - a.s);
        CHECK(line[i].bend == Approx(-turn.dot(line[i].out)).margin(1e-8));
        CHECK(line[i].edge == Approx(-turn.dot(line[i].up)).margin(1e-8));
    }
}

TEST_CASE("between its points the line is found by x") {
    const auto faces = facesOf(test::bareFitout(), test::tubeBoat(5000, 400));
    REQUIRE(faces);
    const auto line = sheerLine(faces->inside, Stand::Square);
    for (const double x : {-1500.0, 3.0, 777.0}) {
        const SheerPoint p = sheerPointAt(line, x);
        CHECK(p.point.x() == Approx(x).margin(1e-6));
        CHECK(p.point.y() == Approx(std::sqrt(5400.0 * 5400 - x * x) - 5000).margin(0.02));
        CHECK(p.s - line.back().s / 2 == Approx(5400 * std::asin(x / 5400)).margin(0.02));
    }
    CHECK(sheerPointAt(line, -9999).s == 0.0);
}
