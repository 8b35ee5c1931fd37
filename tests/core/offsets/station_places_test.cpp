#include "core/offsets/station_places.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

/// The places of a table that has besides them only the sheer.
Expected<StationPlaces, std::vector<FileMessage>> placesOf(const std::string& header,
                                                           const std::vector<std::string>& takes = {}) {
    const auto columns =
        std::count(header.begin(), header.end(), ';') / (1 + std::count(header.begin(), header.end(), '\n'));
    std::string text = header + "\n";
    for (const char* sheer : {"Sheer height (mm)", "Sheer half-breadth (mm)"}) {
        text += sheer;
        for (std::ptrdiff_t i = 0; i < columns; ++i)
            text += ";400";
        text += "\n";
    }
    const auto corrections = readCorrections(takes);
    REQUIRE(corrections.has_value());
    const auto grid = splitCells(text, "trial.csv");
    REQUIRE(grid.has_value());
    const auto reading = guessReading(*grid, *corrections, "trial.csv");
    REQUIRE(reading.has_value());
    return stationPlaces(TurnedGrid(*grid, reading->stationsInColumns), *reading, *corrections, "trial.csv");
}

std::vector<double> xs(const StationPlaces& places) {
    std::vector<double> result;
    for (const StationPlace& station : places.stations)
        result.push_back(station.x);
    return result;
}

} // namespace

TEST_CASE("a line of positions says where stations stand") {
    const auto places = placesOf("Station;0;1;X\nPosition;-600;0;600");
    REQUIRE(places.has_value());
    CHECK(xs(*places) == std::vector<double>{-600, 0, 600});
    CHECK(places->stations[2].name == "X");
    CHECK_FALSE(places->fold.has_value());
}

TEST_CASE("names that are lengths are positions; numbers of stations are not") {
    const auto lengths = placesOf("Station;0;300 mm;600;900");
    REQUIRE(lengths.has_value());
    CHECK(xs(*lengths) == std::vector<double>{0, 300, 600, 900});
    const auto numbers = placesOf("Station;0;1;2;3");
    REQUIRE_FALSE(numbers.has_value());
    CHECK(toText(numbers.error().front()).find("spacing = 12 in") != std::string::npos);
}

TEST_CASE("numbered stations stand at their number times the spacing, X between its neighbours") {
    const auto places = placesOf("Station;0;1/2;1;X;3;St. 4", {"spacing = 300 mm"});
    REQUIRE(places.has_value());
    CHECK(xs(*places) == std::vector<double>{0, 150, 300, 600, 900, 1200});
    CHECK_FALSE(placesOf("Station;0;1;bow;stern;3", {"spacing = 300 mm"}).has_value());
    CHECK_FALSE(placesOf("Station;0;1;2", {"spacing = -3"}).has_value());
    CHECK_FALSE(placesOf("Station;0;1;2", {"spacing = wide"}).has_value());
}

TEST_CASE("stations named in pairs are folded about the one that stands alone") {
    const auto places = placesOf("Station;0 & 6;1 & 5;2 & 4;3", {"spacing = 300 mm"});
    REQUIRE(places.has_value());
    CHECK(places->fold == 900.0);
    const auto even = placesOf("Station;0 & 5;1 & 4;2 and 3", {"spacing = 300 mm"});
    REQUIRE(even.has_value());
    CHECK(even->fold == 750.0);
    CHECK_FALSE(placesOf("Station;0 & 5;1 & 4;2 & 3", {"spacing = 300 mm", "mirror = no"})->fold.has_value());
    const auto said = placesOf("Station;0;1;2;3", {"spacing = 300 mm", "mirror = 3"});
    CHECK(said->fold == 900.0);
    CHECK(placesOf("Station;0;1;2;3", {"spacing = 300 mm", "mirror = 1050 mm"})->fold == 1050.0);
    const auto without = placesOf("Station;0 & 5;1 & 4;2 & 3\nPosition;0;300;600");
    REQUIRE_FALSE(without.has_value());
    CHECK(toText(without.error().front()).find("mirror") != std::string::npos);
}

TEST_CASE("a station without its position is named by its cell") {
    const auto places = placesOf("Station;0;1;2\nPosition;0;...;600");
    REQUIRE_FALSE(places.has_value());
    CHECK(toText(places.error().front()).find("row 2, column 3 (C)") != std::string::npos);
}

TEST_CASE("a station's number is read from its name") {
    CHECK(stationNumber("3") == 3.0);
    CHECK(stationNumber("St. 3 1/2") == 3.5);
    CHECK(stationNumber("½") == 0.5);
    CHECK_FALSE(stationNumber("X").has_value());
    CHECK_FALSE(stationNumber("bow").has_value());
    CHECK_FALSE(stationNumber("300 mm").has_value());
}
