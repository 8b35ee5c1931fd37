#include "core/outlines/svg_path.hpp"
#include "tests/support/catch.hpp"

#include <cmath>

using namespace sheerlay::core;

namespace {

std::vector<DrawnPoint> only(std::string_view d) {
    const auto curves = svgPath(d);
    REQUIRE(curves.size() == 1);
    return curves.front();
}

void checkSame(const std::vector<DrawnPoint>& a, const std::vector<DrawnPoint>& b) {
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        CHECK(a[i].x == Approx(b[i].x).margin(1e-12));
        CHECK(a[i].y == Approx(b[i].y).margin(1e-12));
    }
}

} // namespace

TEST_CASE("lines of every kind, told absolutely and from the pen") {
    const std::vector<DrawnPoint> wanted{{1, 2}, {4, 2}, {4, 7}, {0, 9}};
    checkSame(only("M1,2 L4 2 V7 L0 9"), wanted);
    checkSame(only("m1 2h3v5l-4 2"), wanted);
    checkSame(only("M1 2 4 2 4 7 0 9"), wanted); // numbers after a move are lines
    checkSame(only("m1.0.2e1 3,0 0 5-4 2"), wanted);
    checkSame(only("M0 0 L1 0 L1 1 Z"), {{0, 0}, {1, 0}, {1, 1}, {0, 0}});
    CHECK(svgPath("M0 0 L1 0 M5 5 L6 6").size() == 2);
}

TEST_CASE("curves are the polynomials they say") {
    // (t, t^2) as a quadratic curve, raised to a cubic one
    for (const DrawnPoint& p : only("M0 0 Q.5 0 1 1"))
        CHECK(p.y == Approx(p.x * p.x).margin(1e-12));
    for (const DrawnPoint& p : only("M0 0 C0.33333333333333331 0 .66666666666666663 .33333333333333331 1 1"))
        CHECK(p.y == Approx(p.x * p.x).margin(1e-12));
    // smooth ones go on along the parabola
    for (const DrawnPoint& p : only("M0 0 Q.5 0 1 1 T2 4"))
        CHECK(p.y == Approx(p.x * p.x).margin(1e-12));
    checkSame(only("M0 0 C1 2 3 4 5 6 S8 9 10 12"), only("M0 0 C1 2 3 4 5 6 C7 8 8 9 10 12"));
    checkSame(only("m1 1 c1 2 3 4 5 6"), only("M1 1 C2 3 4 5 6 7"));
}

TEST_CASE("arcs lie on their ellipse, take the side asked for, and grow where they can't reach") {
    for (const DrawnPoint& p : only("M1 0 A1 1 0 0 1 0 1")) { // the quarter circle about 0, 0
        CHECK(std::hypot(p.x, p.y) == Approx(1).margin(1e-12));
        CHECK(p.x + p.y >= 1 - 1e-12);
    }
    for (const DrawnPoint& p : only("M1 0 A1 1 0 0 0 0 1")) // the other circle through both
        CHECK(std::hypot(p.x - 1, p.y - 1) == Approx(1).margin(1e-12));
    bool far = false;
    for (const DrawnPoint& p : only("M1 0A1 1 0 110 1")) { // the long way round; flags may touch
        CHECK(std::hypot(p.x - 1, p.y - 1) == Approx(1).margin(1e-12));
        far = far || p.x > 1.9;
    }
    CHECK(far);
    for (const DrawnPoint& p : only("M-2 0 A.1 .1 0 0 1 2 0"))
        CHECK(std::hypot(p.x, p.y) == Approx(2).margin(1e-12));
    for (const DrawnPoint& p : only("M0 2 A2 1 90 0 1 0 -2")) // an ellipse stood on end
        CHECK(p.x * p.x + p.y * p.y / 4 == Approx(1).margin(1e-12));
    CHECK(only("M0 0 A0 5 0 0 1 3 4").size() == 2); // no radius: a line
}

TEST_CASE("reading ends where the rules are broken") {
    checkSame(only("M0 0 L1 1 L2"), {{0, 0}, {1, 1}});
    checkSame(only("M0 0 L1 1 x L3 3"), {{0, 0}, {1, 1}});
    CHECK(svgPath("").empty());
    CHECK(svgPath("L").empty());
    CHECK(svgPath("M0 0 A1 1 0 2 1 3 3").empty());
    CHECK(svgNumbers("1,2 -3.5e1,.5").size() == 4);
    CHECK(svgNumbers("1e999").empty());
}
