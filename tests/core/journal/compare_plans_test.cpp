#include "core/journal/compare_plans.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

namespace {

Strip strip(const char* id, Side side, int row, double cut, double bend) {
    Strip made;
    made.id = id;
    made.side = side;
    made.row = row;
    made.cutLength = cut;
    made.edgeBend.maxAbs = bend;
    return made;
}

} // namespace

TEST_CASE("rows still to come are set side by side, with what only one of the plans has") {
    Plan before;
    before.strips = {strip("S01", Side::Starboard, 1, 5000, 1e-4),
                     strip("S02", Side::Starboard, 2, 4900, 2e-4),
                     strip("P02", Side::Port, 2, 4900, 2e-4),
                     strip("S10", Side::Starboard, 10, 4000, 3e-4),
                     strip("C11", Side::Centre, 11, 900, 0)};
    Plan after;
    after.strips = {strip("S01", Side::Starboard, 1, 5000, 1e-4),
                    strip("S02", Side::Starboard, 2, 4910, 2.5e-4),
                    strip("C10", Side::Centre, 10, 3000, 0)};
    const auto changes = changesBelow(before, after, 1);
    REQUIRE(changes.size() == 4);
    CHECK(changes[0].strip == "S02");
    CHECK(*changes[0].cutAfter - *changes[0].cutBefore == 10.0);
    CHECK(*changes[0].bendAfter == 2.5e-4);
    CHECK(changes[1].strip == "C10");
    CHECK(!changes[1].cutBefore);
    CHECK(changes[2].strip == "S10");
    CHECK(!changes[2].cutAfter);
    CHECK(changes[3].strip == "C11");
    CHECK(changesBelow(before, after, 11).empty());
}

TEST_CASE("what a new plan comes to: pieces of both sides, and the hardest bend still to come") {
    Plan before;
    before.strips = {strip("S01", Side::Starboard, 1, 5000, 9e-4), // is down
                     strip("S02", Side::Starboard, 2, 4900, 2e-4),
                     strip("P02", Side::Port, 2, 4900, 2e-4)};
    Plan after = before;
    after.strips.push_back(strip("S03", Side::Starboard, 3, 4000, 3e-4));
    const PlanChange change = changeOf(before, after, 1);
    CHECK(change.piecesBefore == 3);
    CHECK(change.piecesAfter == 4);
    CHECK(change.bendBefore == 2e-4);
    CHECK(change.hardestBefore == "S02");
    CHECK(change.bendAfter == 3e-4);
    CHECK(change.hardestAfter == "S03");
    CHECK(changeOf(before, after, 3).hardestAfter.empty());
}
