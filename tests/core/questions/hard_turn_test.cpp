#include "core/project/project_file.hpp"
#include "core/questions/hard_turn.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_tables.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// Flat sides and a flat bottom that meet in a chine at (300, 80), every point on one of the two straight
/// runs.
Station chineStation(double x) {
    Station s;
    s.x = x;
    s.sheer = {PointKind::Sheer, 400, 330, "", "", 0};
    for (const double z : {280.0, 230.0, 180.0, 130.0})
        s.points.push_back({PointKind::Waterline, 300 + 100 * (z - 80) / 250, z, "", "", 0});
    s.points.push_back({PointKind::Point, 300, 80, "", "", 0});
    for (const double y : {200.0, 100.0})
        s.points.push_back({PointKind::Buttock, y, 80 * y / 300, "", "", 0});
    s.keel = TablePoint{PointKind::Keel, 0, 0, "0", "", 0};
    return s;
}

} // namespace

TEST_CASE("a chine over several stations is seen, with its place and angle") {
    HullTable table;
    table.roundedTo = 1;
    for (int i = 0; i < 5; ++i)
        table.stations.push_back(chineStation(300.0 * i));
    const auto turns = hardTurns(table);
    REQUIRE(turns.size() == 5);
    for (const HardTurn& t : turns) {
        CHECK_THAT(t.halfBreadth, WithinAbs(300, 1e-9));
        CHECK_THAT(t.height, WithinAbs(80, 1e-9));
        // from the side's slope to the bottom's
        CHECK_THAT(t.angle, WithinAbs(std::atan2(250, 100) - std::atan2(80, 300), 1e-9));
    }
    HullTable known = table; // the loft knows of it then
    for (Station& s : known.stations) {
        s.knuckle = s.points[4];
        s.points.erase(s.points.begin() + 4);
    }
    CHECK(hardTurns(known).empty());
    table.stations.resize(2); // two stations are no line
    CHECK(hardTurns(table).empty());
}

TEST_CASE("round hulls have none, dense or sparse") {
    for (const char* path : {SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay",
                             SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay",
                             SHEERLAY_EXAMPLES "/marsh-hen/marsh-hen.sheerlay",
                             SHEERLAY_REFERENCE "/formula_skiff.sheerlay",
                             SHEERLAY_REFERENCE "/formula_narrow.sheerlay",
                             SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay"}) {
        INFO(path);
        CHECK(hardTurns(readProject(path).value().project.hull).empty());
    }
    CHECK(hardTurns(skiffTable(sixteenth, 50.8).hull).empty());
    CHECK(hardTurns(footStations(formulaRecurved(), sixteenth, 50.8).hull).empty());
}
