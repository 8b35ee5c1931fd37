#include "core/hull/knuckle_line.hpp"
#include "tests/support/catch.hpp"

#include <cmath>

using namespace sheerlay::core;

namespace {

/// A knuckle that rises to both ends as a cosine: height 250 - 150 cos, half-breadth 400 cos.
double shape(std::size_t i, std::size_t stations = 13) {
    return std::cos(1.2 * (2 * static_cast<double>(i) / static_cast<double>(stations - 1) - 1));
}

HullTable cosineTable(std::size_t stations = 13) {
    HullTable table;
    table.roundedTo = 1;
    for (std::size_t i = 0; i < stations; ++i) {
        Station s;
        s.x = 300.0 * static_cast<double>(i);
        TablePoint corner;
        corner.kind = PointKind::Knuckle;
        corner.height = std::round(250 - 150 * shape(i, stations));
        corner.halfBreadth = std::round(400 * shape(i, stations));
        s.knuckle = corner;
        table.stations.push_back(s);
    }
    return table;
}

/// Stations whose plausible knuckle differs from the printed one.
std::vector<std::size_t> mended(const HullTable& table) {
    std::vector<std::size_t> list;
    const auto plausible = plausibleKnuckle(table);
    REQUIRE(plausible.size() == table.stations.size());
    for (std::size_t i = 0; i < plausible.size(); ++i)
        if (plausible[i] && (plausible[i]->height != table.stations[i].knuckle->height ||
                             plausible[i]->halfBreadth != table.stations[i].knuckle->halfBreadth))
            list.push_back(i);
    return list;
}

} // namespace

TEST_CASE("a sound knuckle stands as printed, and a station without one has none") {
    HullTable table = cosineTable();
    CHECK(mended(table).empty());
    table.stations[0].knuckle.reset();
    CHECK(mended(table).empty());
    CHECK_FALSE(plausibleKnuckle(table)[0].has_value());
}

TEST_CASE("one number grossly off takes what its neighbours say, and nothing else does") {
    for (std::size_t i = 1; i < 12; ++i)
        for (const double off : {-90.0, 40.0, 305.0}) {
            HullTable table = cosineTable();
            table.stations[i].knuckle->height += off;
            INFO("station " << i << ", off by " << off);
            CHECK(mended(table) == std::vector{i});
            // four neighbours, each rounded to half a unit: at an inner station the weights add up to 5/3
            CHECK_THAT(plausibleKnuckle(table)[i]->height, WithinAbs(250 - 150 * shape(i), 3.0));
            CHECK(plausibleKnuckle(table)[i]->halfBreadth == table.stations[i].knuckle->halfBreadth);
        }
}

TEST_CASE("an outermost number is mended when it is off by a foot, not by an inch") {
    HullTable table = cosineTable();
    table.stations[12].knuckle->halfBreadth += 304.8;
    CHECK(mended(table) == std::vector<std::size_t>{12});
    table.stations[12].knuckle->halfBreadth -= 279.4;
    CHECK(mended(table).empty());
}

TEST_CASE("two numbers off in a long line are both told") {
    HullTable table = cosineTable(25);
    table.stations[5].knuckle->height += 120;
    table.stations[17].knuckle->height -= 70;
    CHECK(mended(table) == std::vector<std::size_t>{5, 17});
}
