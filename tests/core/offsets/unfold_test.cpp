#include "core/offsets/unfold.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("stations are repeated on the other side of the fold, the one at it stands alone") {
    std::vector<Station> listed(3);
    for (std::size_t i = 0; i < 3; ++i) {
        listed[i].x = 304.8 * static_cast<double>(i);
        listed[i].printedX = std::to_string(i) + "-0-0";
        listed[i].sheer.halfBreadth = 100.0 * static_cast<double>(i);
    }
    const auto all = unfolded(listed, 2 * 304.8);
    REQUIRE(all.size() == 5);
    for (std::size_t i = 0; i < 5; ++i) {
        CHECK(all[i].x == Approx(304.8 * static_cast<double>(i)));
        CHECK(all[i].printedX == std::to_string(i) + "-0-0");
        CHECK(all[i].sheer.halfBreadth == all[4 - i].sheer.halfBreadth);
    }
    CHECK(unfolded(listed, 3 * 304.8).size() == 6);
}
