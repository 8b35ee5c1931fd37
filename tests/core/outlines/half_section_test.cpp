#include "core/outlines/drawing.hpp"
#include "core/outlines/half_section.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay::core;

namespace {

constexpr double quarter = std::numbers::pi / 2;

/// The arc from the keel at 0, 0 to starboard's sheer at 1, 1.
std::vector<DrawnPoint> arc() {
    return arcPoints({0, 1}, 1, 1, -quarter, quarter);
}

} // namespace

TEST_CASE("pieces are joined whichever way they run") {
    const auto whole = arc();
    std::vector<DrawnPoint> low(whole.begin(), whole.begin() + 31);
    std::vector<DrawnPoint> middle(whole.begin() + 30, whole.begin() + 61);
    std::vector<DrawnPoint> high(whole.begin() + 60, whole.end());
    std::ranges::reverse(middle);
    const auto chains = joined({middle, high, low}, 1e-9);
    REQUIRE(chains.size() == 1);
    CHECK(chains.front().size() == whole.size());
    CHECK(joined({low, high}, 1e-9).size() == 2);
}

TEST_CASE("a half section runs from sheer to keel on starboard, however it was drawn") {
    auto drawn = arc();
    for (int i = 0; i < 4; ++i) {
        if (i == 2)
            for (DrawnPoint& p : drawn)
                p.x = -p.x;
        std::ranges::reverse(drawn);
        const auto half = halfSection(drawn, 0.01);
        REQUIRE(half.has_value());
        CHECK(half->front().x == Approx(1));
        CHECK(half->front().y == Approx(1));
        CHECK(half->back().x == Approx(0).margin(1e-12));
    }
}

TEST_CASE("a whole section is cut at the centreline") {
    const auto half = halfSection(arcPoints({0, 1}, 1, 1, -2 * quarter, 2 * quarter), 0.01);
    REQUIRE(half.has_value());
    CHECK(half->front().x == Approx(1));
    CHECK(half->back().x == 0.0);
    CHECK(half->back().y == Approx(0).margin(1e-3)); // on the chord at the keel
    for (const DrawnPoint& p : *half)
        CHECK(p.x >= 0.0);
}

TEST_CASE("what is no half section is told") {
    CHECK(halfSection(arcPoints({1, 1}, 1, 1, 0, 4 * quarter), 0.01).error().find("closed") !=
          std::string::npos);
    CHECK(halfSection({{0, 1}, {1, 1}}, 0.01).error().find("equally high") != std::string::npos);
    CHECK(halfSection({{1, 3}, {-1, 2}, {1, 1}, {-1, 0}}, 0.01).error().find("3 times") != std::string::npos);
}

TEST_CASE("thinning keeps the ends and takes points that are there, evenly") {
    const auto all = arc();
    const auto kept = thinned(all, 10);
    REQUIRE(kept.size() == 10);
    CHECK(kept.front() == all.front());
    CHECK(kept.back() == all.back());
    for (std::size_t i = 0; i < kept.size(); ++i) {
        CHECK(std::ranges::find(all, kept[i]) != all.end());
        CHECK(std::atan2(kept[i].x, 1 - kept[i].y) ==
              Approx(quarter * static_cast<double>(i) / 9).margin(0.01));
    }
    CHECK(thinned(all, 500).size() == all.size());
}
