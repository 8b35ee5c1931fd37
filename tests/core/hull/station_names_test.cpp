#include "core/hull/station_names.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("stations are called what the table prints, else by their number") {
    Project p;
    p.hull.stations.resize(3);
    p.hull.stations[0].printedX = "0-6-0";
    p.hull.stations[2].printedX = "2-0-0";
    LoftedHull hull;
    hull.stationX = {150, 300, 600};
    CHECK(stationNames(p, hull) == std::vector<std::string>{"0-6-0", "2", "2-0-0"});
}
