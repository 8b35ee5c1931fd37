#include "core/offsets/line_label.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

namespace {

Notation inches() {
    Notation notation;
    notation.plain = PlainUnit::Inches;
    return notation;
}

TableLine line(const std::string& label, const std::string& group = "") {
    INFO("label \"" << label << "\" under \"" << group << "\"");
    const auto read = readLabel(label, group, inches());
    REQUIRE(read.has_value());
    REQUIRE(read->has_value());
    return **read;
}

} // namespace

TEST_CASE("lines are known by the words builders write") {
    for (const char* label :
         {"Sheer height", "deck_height", "Height of deck", "Sheer ht.", "Gunwale, height above base"})
        CHECK(line(label).kind == OffsetLine::SheerHeight);
    for (const char* label : {"Sheer half-breadth", "hb_deck", "Half-breadth of sheer", "Deck width"})
        CHECK(line(label).kind == OffsetLine::SheerBreadth);
    for (const char* label : {"Keel", "rabbet_height", "Rabbet, height above base", "Profile"})
        CHECK(line(label).kind == OffsetLine::KeelHeight);
    for (const char* label : {"Half siding", "Keel half-breadth", "sided"})
        CHECK(line(label).kind == OffsetLine::KeelBreadth);
    for (const char* label : {"Station", "St.", "Mould"})
        CHECK(line(label).kind == OffsetLine::StationNames);
    for (const char* label : {"x", "x_in", "Position", "Distance from bow"})
        CHECK(line(label).kind == OffsetLine::Positions);
    CHECK(line("Half-breadth from centreline").kind == OffsetLine::PointBreadth);
    CHECK(line("Height above base").kind == OffsetLine::PointHeight);
}

TEST_CASE("waterlines and buttocks are found with their places") {
    for (const char* label :
         {"WL 4", "W.L. 4", "hb_wl4", "Waterline 4 in", "4\" WL", "wl 0-4-0", "WL 2 | 4 in"}) {
        const TableLine read = line(label);
        CHECK(read.kind == OffsetLine::Waterline);
        CHECK(read.at == Approx(4 * 25.4));
    }
    for (const char* label : {"Buttock 6", "BUT6", "6 in buttock", "B 6", "Butt. 6"}) {
        const TableLine read = line(label);
        CHECK(read.kind == OffsetLine::Buttock);
        CHECK(read.at == Approx(6 * 25.4));
    }
    CHECK(line("WL 15 3/4").at == Approx(15.75 * 25.4));
    CHECK(line("WL 4 below LWL").at == Approx(-4 * 25.4));
    CHECK(line("WL 100 mm").at == Approx(100));
}

TEST_CASE("of a height and a half-breadth in one label the first was measured, at the other") {
    // as our own export writes them
    const TableLine waterline = line("half-breadth at height 4.00 in");
    CHECK(waterline.kind == OffsetLine::Waterline);
    CHECK(waterline.at == Approx(4 * 25.4));
    const TableLine buttock = line("height at half-breadth 100 mm");
    CHECK(buttock.kind == OffsetLine::Buttock);
    CHECK(buttock.at == Approx(100.0));
}

TEST_CASE("a heading says what its lines leave out") {
    CHECK(line("6 in", "HALF-BREADTHS").kind == OffsetLine::Waterline);
    CHECK(line("6 in", "Heights above base").kind == OffsetLine::Buttock);
    CHECK(line("Sheer", "HEIGHTS").kind == OffsetLine::SheerHeight);
    CHECK(line("Sheer", "Half-breadths").kind == OffsetLine::SheerBreadth);
    CHECK(line("Rabbet", "Half-breadths").kind == OffsetLine::KeelBreadth);
    CHECK(line("6 in", "Buttocks").kind == OffsetLine::Buttock);
    CHECK(line("Keel", "Heights below LWL").below);
    CHECK_FALSE(line("Sheer above LWL", "Heights below LWL").below);
    CHECK(line("A, 14 in at 40 degrees", "Diagonals").kind == OffsetLine::Diagonal);
}

TEST_CASE("diagonals carry their height and slope") {
    const TableLine angled = line("Diagonal 2, 14 in at 40°");
    CHECK(angled.kind == OffsetLine::Diagonal);
    CHECK(angled.diagonal.height == Approx(14 * 25.4));
    REQUIRE(angled.diagonal.angle.has_value());
    CHECK(*angled.diagonal.angle == Approx(40));
    const TableLine through = line("Diagonal 14 in through 12 in");
    CHECK_FALSE(through.diagonal.angle.has_value());
    CHECK(through.diagonal.throughBreadth == Approx(12 * 25.4));
    CHECK(through.diagonal.throughHeight == 0.0);
    CHECK(line("Diagonal 14 in through 12 in at 2 in").diagonal.throughHeight == Approx(2 * 25.4));
}

TEST_CASE("what says too little is asked about, and what says nothing is no line") {
    for (const char* label :
         {"WL", "Buttock", "Diagonal", "Diagonal 2", "Sheer", "Diagonal 14 in at 95 degrees"}) {
        INFO(label);
        const auto read = readLabel(label, "", inches());
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().would.empty());
    }
    for (const char* label : {"", "Grey Teal", "lifted in spring", "7"}) {
        const auto read = readLabel(label, "", inches());
        REQUIRE(read.has_value());
        CHECK_FALSE(read->has_value());
    }
}
