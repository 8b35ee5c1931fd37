#include "core/journal/typed_round.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

RowReading roundOf(int row, std::vector<GirthLeft> girths, ReadSide side = ReadSide::Starboard) {
    RowReading round;
    round.row = row;
    round.side = side;
    round.date = "2026-05-01";
    round.girthLeft = std::move(girths);
    return round;
}

} // namespace

TEST_CASE("a girth is read in the units shown, and kept as typed, with its unit where the file would read it "
          "otherwise") {
    Station station;
    station.x = 914.4;
    station.printedX = "3-0-0";
    const auto fraction = readGirth(station, "15 3/4 in", Units::Millimetres, Units::Millimetres);
    REQUIRE(fraction);
    CHECK_THAT(fraction->girth, WithinAbs(15.75 * 25.4, 1e-12));
    CHECK(fraction->printedGirth == "15 3/4 in");
    CHECK(fraction->x == 914.4);
    CHECK(fraction->printedX == "3-0-0");
    const auto plain = readGirth(station, "400", Units::Millimetres, Units::Inches);
    REQUIRE(plain);
    CHECK(plain->girth == 400.0);
    CHECK(plain->printedGirth == "400 mm"); // in the file it would be 400 inches
    const auto half = readGirth(station, "12 1/2", Units::Inches, Units::Millimetres);
    REQUIRE(half);
    CHECK(half->printedGirth == "12 1/2 in");
    for (const Units inFile : {Units::Inches, Units::Millimetres}) // what is kept reads alike everywhere
        CHECK(readGirth(station, half->printedGirth, inFile, inFile)->girth == 12.5 * 25.4);
    const auto unread = readGirth(station, "4-3", Units::Inches, Units::Inches);
    REQUIRE_FALSE(unread);
    CHECK_FALSE(unread.error().would.empty());
}

TEST_CASE("a round goes on where it was left, and another row, side or day begins one") {
    Journal journal = withRound({}, roundOf(5, {{600, 300, "", "", 0}}));
    journal = withRound(journal, roundOf(5, {{300, 310, "", "", 0}, {600, 299, "", "", 0}}));
    REQUIRE(journal.readings.size() == 1);
    REQUIRE(journal.readings[0].girthLeft.size() == 2);
    CHECK(journal.readings[0].girthLeft[0].x == 300);
    CHECK(journal.readings[0].girthLeft[1].girth == 299); // read again
    journal = withRound(journal, roundOf(5, {{600, 301, "", "", 0}}, ReadSide::Port));
    CHECK(journal.readings.size() == 2);
    journal = withRound(journal, roundOf(6, {{600, 280, "", "", 0}}, ReadSide::Port));
    CHECK(journal.readings.size() == 3);
    RowReading later = roundOf(6, {{600, 279, "", "", 0}}, ReadSide::Port);
    later.date = "2026-05-02";
    CHECK(withRound(journal, later).readings.size() == 4);
}
