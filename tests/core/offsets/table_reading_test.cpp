#include "core/offsets/table_reading.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Expected<TableReading, std::vector<FileMessage>> readingOf(const std::string& text,
                                                           const std::vector<std::string>& takes = {}) {
    const auto corrections = readCorrections(takes);
    REQUIRE(corrections.has_value());
    const auto grid = splitCells(text, "trial.csv");
    REQUIRE(grid.has_value());
    return guessReading(*grid, *corrections, "trial.csv");
}

std::vector<OffsetLine> kinds(const TableReading& reading) {
    std::vector<OffsetLine> result;
    for (const TableLine& line : reading.lines)
        result.push_back(line.kind);
    return result;
}

std::string first(const Expected<TableReading, std::vector<FileMessage>>& reading) {
    REQUIRE_FALSE(reading.has_value());
    return toText(reading.error().front());
}

const std::string printed = "Offsets of the Grey Teal, in mm;;;\n"
                            "Station;0;1;2\n"
                            "Position;0;600;1200\n"
                            "HEIGHTS ABOVE BASE;;;\n"
                            "Sheer;450;400;450\n"
                            "Keel;50;0;50\n"
                            "Buttock 100;...;20;...\n"
                            "HALF-BREADTHS;;;\n"
                            "Sheer;10;400;10\n"
                            "200;8;380;8\n"
                            "Sung by;a;b;c\n";

} // namespace

TEST_CASE("a printed table with headings is understood row by row") {
    const auto reading = readingOf(printed);
    REQUIRE(reading.has_value());
    CHECK(reading->stationsInColumns);
    CHECK(reading->labels == 1);
    CHECK(kinds(*reading) == std::vector<OffsetLine>{OffsetLine::Heading,
                                                     OffsetLine::StationNames,
                                                     OffsetLine::Positions,
                                                     OffsetLine::Heading,
                                                     OffsetLine::SheerHeight,
                                                     OffsetLine::KeelHeight,
                                                     OffsetLine::Buttock,
                                                     OffsetLine::Heading,
                                                     OffsetLine::SheerBreadth,
                                                     OffsetLine::Waterline,
                                                     OffsetLine::Unused});
}

TEST_CASE("a turned table with merged headings over its columns is understood") {
    const auto reading = readingOf(",,Heights,,Half-breadths,,\n"
                                   "Station,x (mm),Sheer,Keel,Sheer,WL 100,WL 200\n"
                                   "0,0,450,50,10,8,9\n1,600,400,0,400,380,390\n2,1200,450,50,10,8,9\n");
    REQUIRE(reading.has_value());
    CHECK_FALSE(reading->stationsInColumns);
    CHECK(reading->labels == 2);
    CHECK(kinds(*reading) == std::vector<OffsetLine>{OffsetLine::StationNames,
                                                     OffsetLine::Positions,
                                                     OffsetLine::SheerHeight,
                                                     OffsetLine::KeelHeight,
                                                     OffsetLine::SheerBreadth,
                                                     OffsetLine::Waterline,
                                                     OffsetLine::Waterline});
}

TEST_CASE("corrections win over the guess") {
    const auto reading =
        readingOf(printed, {"row 7 = unused", "row 10 = waterline 210 mm", "row 11 = half-siding"});
    REQUIRE(reading.has_value());
    CHECK(reading->lines[6].kind == OffsetLine::Unused);
    CHECK(reading->lines[9].at == Approx(210));
    CHECK(reading->lines[10].kind == OffsetLine::KeelBreadth);
    CHECK(first(readingOf(printed, {"column 2 = unused"})).find("stations = rows") != std::string::npos);
    CHECK(first(readingOf(printed, {"row 99 = unused"})).find("no such line") != std::string::npos);
    CHECK(first(readingOf(printed, {"row 7 = pudding"})).find("names no line") != std::string::npos);
    CHECK(first(readingOf(printed, {"row 7 = waterline"})).find("without its height") != std::string::npos);
}

TEST_CASE("numbered waterlines get the spacing the builder gives") {
    const std::string numbered = "Station;0;1;2\nPosition (mm);0;600;1200\nSheer height;450;400;450\n"
                                 "Sheer half-breadth;10;400;10\nWL 1;8;380;8\nWL 2;9;390;9\n";
    CHECK(first(readingOf(numbered)).find("waterline-spacing") != std::string::npos);
    const auto reading = readingOf(numbered, {"waterline-spacing = 75 mm"});
    REQUIRE(reading.has_value());
    CHECK(reading->lines[4].at == Approx(75));
    CHECK(reading->lines[5].at == Approx(150));
    const auto halves = readingOf("Station;0;1;2\nPosition (in);0;24;48\nSheer height;18;16;18\n"
                                  "Sheer half-breadth;1;16;1\nWL 1/2;1;14;1\nWL 1 1/2;1;15;1\n",
                                  {"waterline-spacing = 4 in"});
    REQUIRE(halves.has_value());
    CHECK(halves->lines[4].at == Approx(2 * 25.4));
    CHECK(halves->lines[5].at == Approx(6 * 25.4));
}

TEST_CASE("heights are counted downward where it is said, or where the keel has the larger numbers") {
    const auto below = [](const std::string& keels, const std::string& label) {
        const auto reading =
            readingOf("Station;0;1;2;3\nPosition (mm);0;600;1200;1800\nSheer height;100;150;150;100\n" +
                      label + ";" + keels + "\nSheer half-breadth;9;9;9;9\nWL 200;9;9;9;9\n");
        REQUIRE(reading.has_value());
        return std::pair{reading->lines[3].below, reading->lines[5].at};
    };
    CHECK(below("500;550;550;500", "Keel") == std::pair{true, -200.0});
    CHECK(below("50;0;0;50", "Keel") == std::pair{false, 200.0});
    CHECK(below("50;60;60;50", "Keel below LWL") == std::pair{true, 200.0});
}

TEST_CASE("stations and the heights of lines may stand in a heading without the word station of its own") {
    const auto reading =
        readingOf("Line,Height,St 0,St 1,St 2\nPosition,,0,4.5,9\nDeck half-breadth (ft),,0.02,1.1,0.03\n"
                  "Deck height,,1.5,1.1,1.4\nKeel height,,0.4,0,0.3\nWL1,0.25,,0.6,\n");
    REQUIRE(reading.has_value());
    CHECK(reading->labels == 2);
    CHECK(reading->lines[0].kind == OffsetLine::StationNames);
    CHECK(reading->lines[2].kind == OffsetLine::SheerBreadth);
    CHECK(reading->lines[5].kind == OffsetLine::Waterline);
    CHECK(reading->lines[5].at == Approx(0.25 * 304.8));
}

TEST_CASE("a list of points is known by its columns") {
    const auto reading = readingOf("x;half-breadth;height\n0;10;20\n0;11;30\n600;12;40\n", {"units = in"});
    REQUIRE(reading.has_value());
    CHECK(reading->pointList);
}

TEST_CASE("what is missing or doubled is asked for") {
    CHECK(first(readingOf("Station;0;1;2\nWL 100 mm;1;2;3\nWL 200 mm;1;2;3\n")).find("sheer heights") !=
          std::string::npos);
    CHECK(first(readingOf(printed + "Station;0;1;3\n")).find("names of stations") != std::string::npos);
    CHECK(readingOf(printed + "Station;0;1;2\n").has_value());
    CHECK(first(readingOf(printed + "WL;1;2;3\n")).find("--take \"row 12 = waterline") != std::string::npos);
}

TEST_CASE("every line of the table is told in words") {
    const auto grid = splitCells(printed, "trial.csv");
    const auto reading = guessReading(*grid, {}, "trial.csv");
    REQUIRE(reading.has_value());
    std::string all;
    for (const std::string& sentence : describeReading(*grid, *reading, {})) {
        CHECK(sentence.back() == '.');
        all += sentence + "\n";
    }
    CHECK(all.find("semicolons") != std::string::npos);
    CHECK(all.find("millimetres") != std::string::npos);
    CHECK(all.find("row 7, \"Buttock 100\": heights of the buttock at half-breadth 100 mm.") !=
          std::string::npos);
    CHECK(all.find("row 10, \"200\": half-breadths on the waterline at height 200 mm.") != std::string::npos);
    CHECK(all.find("row 11, \"Sung by\": not used.") != std::string::npos);
}

TEST_CASE("a diagonal's angle is told with the digits it was given") {
    const auto grid = splitCells(
        printed + "Diagonal 300 at 37.5\u00b0;1;2;3\nDiagonal 200 at 30\u00b0;1;2;3\n", "trial.csv");
    const auto reading = guessReading(*grid, {}, "trial.csv");
    REQUIRE(reading.has_value());
    const auto said = describeReading(*grid, *reading, {});
    CHECK(said[said.size() - 2].find(" at 37.5 degrees.") != std::string::npos);
    CHECK(said.back().find(" at 30 degrees.") != std::string::npos);
}

TEST_CASE("columns are named as spreadsheets do") {
    CHECK(columnName(0) == "column 1 (A)");
    CHECK(columnName(25) == "column 26 (Z)");
    CHECK(columnName(26) == "column 27 (AA)");
}
