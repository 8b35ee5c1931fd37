#include "core/questions/section_chords.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("a section's points run from the sheer down, waterlines and buttocks mixed, to the keel") {
    HullTable table;
    table.halfSiding = 6;
    Station s;
    s.sheer = {PointKind::Sheer, 400, 300, "", "", 0};
    s.points = {{PointKind::Buttock, 100, 20, "", "", 0},
                {PointKind::Waterline, 390, 200, "", "", 0},
                {PointKind::Waterline, 300, 50, "", "", 0}};
    table.stations = {s, s};
    table.stations[0].keel = TablePoint{PointKind::Keel, 0, 5, "", "", 0};
    const auto section = sectionChords(table, 0);
    REQUIRE(section.size() == 5);
    CHECK(section[0] == Eigen::Vector2d(400, 300));
    CHECK(section[2] == Eigen::Vector2d(300, 50));
    CHECK(section[3] == Eigen::Vector2d(100, 20));
    CHECK(section[4] == Eigen::Vector2d(6, 5)); // the table's half siding
    CHECK(sectionChords(table, 1).size() == 4); // gives no keel
}
