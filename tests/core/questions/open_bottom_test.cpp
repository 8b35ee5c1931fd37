#include "core/project/project_file.hpp"
#include "core/questions/open_bottom.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <vector>

using namespace sheerlay::core;

namespace {

HullTable tableOf(const char* name) {
    return readProject(std::string(SHEERLAY_REFERENCE "/") + name).value().project.hull;
}

/// A station of waterlines, the keel on the base line.
Station stationOf(double x, double sheerBreadth, const std::vector<std::array<double, 2>>& waterlines) {
    Station s;
    s.x = x;
    s.sheer = {PointKind::Sheer, sheerBreadth, 300, "", "", 0};
    s.keel = TablePoint{PointKind::Keel, 0, 0, "0", "", 0};
    for (const auto& [y, z] : waterlines)
        s.points.push_back({PointKind::Waterline, y, z, "", "", 0});
    return s;
}

} // namespace

TEST_CASE(
    "the canoe of 1889 is open from bilge to rabbet: 55 percent, 17 mm and 66 square centimetres at X") {
    // stephens_american_cruising_canoe_fie.csv, station X: half-breadths 1-2-2 at 4 in, 1-0-2 at 2 in, rabbet
    // on the base line; figures by table_checks.md section 1 (tangent through 4 and 2 in, chord to the keel)
    HullTable table = tableOf("stephens_1889_corrected.sheerlay");
    table.halfSiding = 0;
    for (Station& s : table.stations)
        if (s.keel)
            s.keel->halfBreadth = 0;
    const auto open = openBottoms(table);
    REQUIRE(open.size() >= 5);
    bool seen = false;
    for (const OpenBottom& o : open)
        if (table.stations[o.station].printedX == "7-0-0") {
            seen = true;
            CHECK_THAT(o.part, WithinAbs(0.55, 0.01));
            CHECK_THAT(o.girth, WithinAbs(17, 0.5));
            CHECK_THAT(o.area / 100, WithinAbs(66, 0.5));
        }
    CHECK(seen);
}

TEST_CASE("a table with buttocks down to the keel leaves nothing open") {
    CHECK(openBottoms(tableOf("formula_canoe.sheerlay")).empty());
    CHECK(openBottoms(tableOf("formula_skiff.sheerlay")).empty());
    CHECK(openBottoms(tableOf("formula_narrow.sheerlay")).empty());
}

TEST_CASE("girth and area of the opening are those of its triangle, the volume its sum over the boat") {
    HullTable table;
    // from (400, 200) at 45 degrees to (300, 100): on to the corner (200, 0), then level to the keel
    for (int i = 0; i < 4; ++i)
        table.stations.push_back(stationOf(500.0 * i, 410, {{400, 200}, {300, 100}}));
    auto open = openBottoms(table);
    REQUIRE(open.size() == 4);
    CHECK_THAT(open[1].girth, WithinAbs(std::hypot(100, 100) + 200 - std::hypot(300, 100), 1e-9));
    CHECK_THAT(open[1].area, WithinAbs(0.5 * 200 * 100, 1e-9));
    CHECK_THAT(openVolume(table, open), WithinAbs(2 * 10000.0 * 1500, 1e-6)); // a prism, both sides
    // a V goes straight on to the keel: nothing is open, however far
    table.stations[0] = stationOf(0, 410, {{400, 200}, {200, 100}});
    // a buttock halfway closes it
    table.stations[1].points.push_back({PointKind::Buttock, 150, 20, "", "", 0});
    open = openBottoms(table);
    REQUIRE(open.size() == 2);
    CHECK(open[0].station == 2);
    // without a keel of its own a station says nothing about it
    table.stations[2].keel.reset();
    CHECK(openBottoms(table).size() == 1);
}
