#include "core/fitout/rings.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay::core;

TEST_CASE("the area inside a closed line does not hang on its direction or place") {
    CHECK(ringArea({{10, 5}, {14, 5}, {14, 8}}) == Approx(6.0)); // half of 4 by 3
    CHECK(ringArea({{14, 8}, {14, 5}, {10, 5}}) == Approx(6.0));
    std::vector<Eigen::Vector2d> polygon; // regular, n sides: n r^2 sin(2 pi / n) / 2
    constexpr int sides = 7;
    for (int i = 0; i < sides; ++i)
        polygon.emplace_back(100 + 30 * std::cos(2 * std::numbers::pi * i / sides),
                             30 * std::sin(2 * std::numbers::pi * i / sides));
    CHECK(ringArea(polygon) == Approx(sides * 900 * std::sin(2 * std::numbers::pi / sides) / 2));
    CHECK(ringArea({}) == 0.0);
}
