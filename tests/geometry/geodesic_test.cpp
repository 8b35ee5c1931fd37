#include "geometry/geodesic.hpp"
#include "geometry/surface_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double pi = std::numbers::pi;

/// Unit speed, `turn` from X_u toward D of it.
GeodesicState launched(const Surface& s, const Vector2d& uv, double turn) {
    const SurfaceJet j = s.jet(uv.x(), uv.y());
    const Frame f = frameAlong(j, j.u);
    return {uv, parameterComponents(j, std::cos(turn) * f.tangent + std::sin(turn) * f.across), 1.0, 0.0};
}

GeodesicState run(const Surface& s, GeodesicState state, double length, int steps) {
    for (int i = 0; i < steps; ++i)
        state = geodesicStep(s, s.jet(state.uv.x(), state.uv.y()), state, length / steps);
    return state;
}

Vector3d place(const Surface& s, const GeodesicState& state) {
    return s.jet(state.uv.x(), state.uv.y()).p;
}

Vector3d heading(const Surface& s, const GeodesicState& state) {
    const SurfaceJet j = s.jet(state.uv.x(), state.uv.y());
    return j.u * state.velocity.x() + j.v * state.velocity.y();
}

const ParameterBox everywhere{-1e9, 1e9, -1e9, 1e9};

} // namespace

TEST_CASE("straight in a plane, whatever its parameters") {
    const PlaneSurface s({5, 6, 7}, {2, 0, 1}, {1, 0.5, -3});
    const GeodesicState a = launched(s, {0.3, -0.2}, 1.1);
    const GeodesicState b = run(s, a, 1000, 3);
    CHECK((place(s, b) - place(s, a) - 1000 * heading(s, a)).norm() < 1e-10);
    CHECK(b.jacobi == 1.0);
    CHECK(b.jacobiRate == 0.0);
}

TEST_CASE("a helix on a cylinder") {
    const CylinderSurface s(300);
    const GeodesicState b = run(s, launched(s, {0, 0}, 0.6), 1500, 100);
    // unrolled it is a straight line
    CHECK_THAT(b.uv.x(), WithinRel(1500 * std::cos(0.6), 1e-12));
    CHECK_THAT(b.uv.y(), WithinRel(1500 * std::sin(0.6), 1e-12));
    CHECK_THAT(b.jacobi, WithinAbs(1, 1e-12));
}

TEST_CASE("a great circle closes after 2 pi R, and its neighbours spread as a cosine") {
    const double R = 500;
    const RevolutionSurface s = sphere(R);
    const GeodesicState a = launched(s, {0.3, 0.1}, 1.2);
    const GeodesicState home = run(s, a, 2 * pi * R, 400);
    CHECK((place(s, home) - place(s, a)).norm() < 1e-6 * R);
    CHECK((heading(s, home) - heading(s, a)).norm() < 1e-6);
    CHECK_THAT(home.jacobi, WithinAbs(1, 1e-6));
    const GeodesicState part = run(s, a, 700, 100);
    CHECK_THAT(part.jacobi, WithinAbs(std::cos(700 / R), 1e-8));
    CHECK_THAT(part.jacobiRate, WithinAbs(-std::sin(700 / R) / R, 1e-10));
    // it stays in one plane through the middle
    const Vector3d axis = place(s, a).cross(heading(s, a)).normalized();
    CHECK_THAT(place(s, part).dot(axis), WithinAbs(0, 1e-6));
}

TEST_CASE("straight in the unrolled sector of a cone") {
    const double g = 0.4;
    const RevolutionSurface s = cone(g);
    const Vector2d from(900, 0.2);
    const double turn = 2.2;
    const GeodesicState b = run(s, launched(s, from, turn), 1200, 400);
    // sector: polar coordinates (slant, angle sin g). D of X_u is -X_v's side or +? n x X_u = +v.
    const auto flat = [&](const Vector2d& uv) {
        const double a = uv.y() * std::sin(g);
        return Vector2d(uv.x() * std::cos(a), uv.x() * std::sin(a));
    };
    const double a0 = from.y() * std::sin(g);
    const Vector2d wanted = flat(from) + 1200 * Vector2d(std::cos(a0 + turn), std::sin(a0 + turn));
    CHECK((flat(b.uv) - wanted).norm() < 1e-6 * 1200);
    CHECK_THAT(b.jacobi, WithinAbs(1, 1e-9)); // K = 0
}

TEST_CASE("Clairaut: rho cos(angle to the parallel) stays the same") {
    const auto clairaut = [](const RevolutionSurface& s, const GeodesicState& g) {
        const double rho = s.rho(g.uv.x());
        return rho * rho * g.velocity.y(); // rho times the unit vector around, dotted with the heading
    };
    SECTION("torus, several times around the tube") {
        const RevolutionSurface s = torus(300, 100);
        GeodesicState g = launched(s, {0.4, 0}, 0.5);
        const double c = clairaut(s, g);
        for (int k = 0; k < 10; ++k) {
            g = run(s, g, 200, 100);
            CHECK_THAT(clairaut(s, g), WithinRel(c, 1e-7));
            CHECK_THAT(heading(s, g).norm(), WithinAbs(1, 1e-8)); // speed is one by itself
        }
    }
    SECTION("tractroid") {
        const RevolutionSurface s = tractroid(800);
        GeodesicState g = launched(s, {400, 0}, 1.3);
        const double c = clairaut(s, g);
        for (int k = 0; k < 5; ++k) {
            g = run(s, g, 100, 50);
            CHECK_THAT(clairaut(s, g), WithinRel(c, 1e-8));
        }
        CHECK_THAT(g.jacobi, WithinRel(std::cosh(500.0 / 800), 1e-8)); // K = -1/a^2
    }
}

TEST_CASE("fourth order: half the step, a sixteenth of the error") {
    const RevolutionSurface s = torus(900, 350);
    const GeodesicState a = launched(s, {0.2, 0}, 0.8);
    const GeodesicState exact = run(s, a, 800, 6400);
    const auto error = [&](int steps) {
        const GeodesicState b = run(s, a, 800, steps);
        return Vector2d((place(s, b) - place(s, exact)).norm(), std::abs(b.jacobi - exact.jacobi));
    };
    const Vector2d coarse = error(20), fine = error(40), finest = error(80);
    for (const Eigen::Index i : {0, 1}) {
        CHECK(coarse[i] / fine[i] > 13);
        CHECK(coarse[i] / fine[i] < 20);
        CHECK(fine[i] / finest[i] > 14);
        CHECK(fine[i] / finest[i] < 18);
    }
    CHECK(error(47)[0] < 1e-3); // 17 mm steps, tube of 350 mm
}

TEST_CASE("walking back returns to the start") {
    const RevolutionSurface s = torus(900, 350);
    const GeodesicState a = launched(s, {0.2, 0}, 0.8);
    GeodesicState there = run(s, a, 1000, 500);
    GeodesicState back = there;
    for (int i = 0; i < 500; ++i)
        back = geodesicStep(s, s.jet(back.uv.x(), back.uv.y()), back, -2.0);
    CHECK((place(s, back) - place(s, a)).norm() < 1e-7);
    CHECK_THAT(back.jacobi, WithinAbs(1, 1e-9));
    CHECK_THAT(back.jacobiRate, WithinAbs(0, 1e-11));
}

TEST_CASE("a bent line in the plane is a circle, bent to the keel when positive") {
    const CylinderSurface s(400); // an isometry of (u, v), v toward the keel
    const double k = 1.0 / 2000;
    const auto line = traceBentLine(s, {0, 0}, Vector3d::UnitX(), {k, 0, 0, 1}, everywhere, 25, 1000);
    REQUIRE(line.size() == 81);
    for (const BentLineNode& n : line) {
        CHECK_THAT(n.uv.x(), WithinAbs(std::sin(k * n.s) / k, 1e-7));
        CHECK_THAT(n.uv.y(), WithinAbs((1 - std::cos(k * n.s)) / k, 1e-7));
        CHECK(n.edgeBend == k);
        CHECK_THAT(n.velocity.norm(), WithinAbs(1, 1e-10));
        CHECK_THAT(n.velocity.y(), WithinAbs(std::sin(k * n.s), 1e-10)); // toward growing s on both sides
    }
    CHECK(line[40].s == 0.0);
    CHECK_THAT(line.back().s, WithinAbs(1000, 1e-9));
    CHECK_THAT(line.front().s, WithinAbs(-1000, 1e-9));
}

TEST_CASE("a line of constant edge bend tan(latitude)/R follows the latitude") {
    const double R = 600, lat = 0.5;
    const RevolutionSurface s = sphere(R);
    // D points north where the line runs toward falling v; a parallel bends toward its pole
    const Vector3d west = -s.jet(lat, 0).v;
    for (const BentLineNode& n :
         traceBentLine(s, {lat, 0}, west, {std::tan(lat) / R, 0, 0, 1}, everywhere, 20, 800)) {
        CHECK_THAT(n.uv.x(), WithinAbs(lat, 1e-9));
        CHECK_THAT(n.uv.y(), WithinAbs(-n.s / (R * std::cos(lat)), 1e-9));
    }
}

TEST_CASE("a varying edge bend turns the line by its integral") {
    const CylinderSurface s(400);
    const EdgeBendProfile p{2e-4, -5e-4, 4e-4, 1500};
    CHECK_THAT(p.at(1500), WithinRel(1e-4, 1e-12));
    CHECK_THAT(p.at(-750), WithinRel(2e-4 - 5e-4 / 4 + 4e-4 / 16, 1e-12));
    const auto line = traceBentLine(s, {0, 0}, Vector3d::UnitX(), p, everywhere, 30, 1500);
    const double l = 1500, turn = l * (2e-4 - 5e-4 / 3 + 4e-4 / 5);
    CHECK_THAT(std::atan2(line.back().velocity.y(), line.back().velocity.x()), WithinAbs(turn, 1e-9));
    CHECK_THAT(std::atan2(line.front().velocity.y(), line.front().velocity.x()), WithinAbs(-turn, 1e-9));
    CHECK_THAT(line.back().edgeBend, WithinRel(1e-4, 1e-9));
}

TEST_CASE("tracing ends at the box and refuses a spacing that is not positive") {
    const CylinderSurface s(400);
    const auto line = traceBentLine(s, {0, 0}, Vector3d::UnitX(), {0, 0, 0, 1}, {-101, 62, -10, 10}, 10, 1e6);
    CHECK_THAT(line.front().uv.x(), WithinAbs(-100, 1e-9));
    CHECK_THAT(line.back().uv.x(), WithinAbs(60, 1e-9));
    for (const double spacing : {0.0, -1.0, std::nan("")})
        CHECK_THROWS_AS(traceBentLine(s, {0, 0}, Vector3d::UnitX(), {0, 0, 0, 1}, everywhere, spacing, 100),
                        std::invalid_argument);
}
