#include "core/project/ten_strips.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("ten strips laid edge to edge tell what one of them covers") {
    StripStock strip;
    strip.width = 19.05;
    strip.coverWidth = 15.875;
    // laid by hand: the first bead shows, then nine coves and beads follow
    CHECK(tenStripsMeasure(strip) == Approx(19.05 + 9 * 15.875));
    CHECK(coverByTenStrips(tenStripsMeasure(strip), strip).value() == Approx(15.875));
    CHECK(coverByTenStrips(tenStripsMeasure(strip) + 1.35, strip).value() == Approx(15.875 + 0.15));
    strip.coverWidth = strip.width; // square edges cover their full width
    CHECK(tenStripsMeasure(strip) == Approx(190.5));
    CHECK(coverByTenStrips(190.5, strip).value() == Approx(19.05));
}

TEST_CASE("a measure that strips of that width can't have is none") {
    StripStock strip;
    strip.width = 19.05;
    CHECK_FALSE(coverByTenStrips(19.05, strip).has_value());
    CHECK_FALSE(coverByTenStrips(195.0, strip).has_value());
}
