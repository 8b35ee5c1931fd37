#include "core/outlines/dxf_curves.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay::core;

namespace {

DxfEntity entity(const std::string& name, const std::vector<std::pair<int, std::string>>& pairs) {
    DxfEntity made{name, {}, 1};
    for (const auto& [code, value] : pairs)
        made.pairs.push_back({code, value, 1});
    return made;
}

} // namespace

TEST_CASE("an ellipse keeps its equation and its ends") {
    // half axes 4 and 2, the long one upward: the short one points to the left
    const auto quarter = entity("ELLIPSE",
                                {{10, "1"},
                                 {20, "2"},
                                 {30, "0"},
                                 {11, "0"},
                                 {21, "4"},
                                 {31, "0"},
                                 {40, "0.5"},
                                 {41, "0"},
                                 {42, std::to_string(std::numbers::pi / 2)}});
    CHECK_FALSE(leavesThePlane(quarter));
    const auto points = dxfCurve(quarter);
    REQUIRE(points.size() > 80);
    CHECK(points.front().x == Approx(1));
    CHECK(points.front().y == Approx(6));
    CHECK(points.back().x == Approx(-1));
    CHECK(points.back().y == Approx(2).margin(1e-5)); // the angle is written with six decimals
    for (const DrawnPoint& p : points)
        CHECK(std::pow((p.x - 1) / 2, 2) + std::pow((p.y - 2) / 4, 2) == Approx(1));
}

TEST_CASE("an ellipse that says no angles is whole; one seen from behind turns the other way") {
    const auto whole = dxfCurve(entity("ELLIPSE", {{11, "4"}, {40, "0.5"}}));
    CHECK(whole.front().x == Approx(whole.back().x));
    CHECK(whole.front().y == Approx(whole.back().y).margin(1e-9));
    CHECK(whole[90].y == Approx(2));
    const auto behind = dxfCurve(entity("ELLIPSE", {{11, "4"}, {40, "0.5"}, {230, "-1"}}));
    CHECK(behind[90].y == Approx(-2));
}

TEST_CASE("tilted curves leave the plane; the way a line is thick does not count") {
    CHECK(leavesThePlane(entity("ARC", {{40, "1"}, {210, "0.6"}, {230, "0.8"}})));
    CHECK(leavesThePlane(entity("ELLIPSE", {{11, "4"}, {31, "1"}})));
    CHECK_FALSE(leavesThePlane(entity("LINE", {{210, "1"}, {230, "0"}})));
}

TEST_CASE("what draws no curve has no points") {
    CHECK(dxfCurve(entity("TEXT", {{10, "1"}})).empty());
}
