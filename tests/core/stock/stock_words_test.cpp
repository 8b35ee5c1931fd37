#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("boards, runs and weights as a builder says them") {
    BoardLot lot;
    lot.thickness = 0.875 * mmPerInch;
    lot.width = 5.5 * mmPerInch;
    lot.length = 12 * mmPerFoot;
    CHECK(sizeText(lot, Units::Inches) == "7/8\" by 5 1/2\" by 12'");
    CHECK(sizeText(lot, Units::Millimetres) == "22 by 140 by 3658 mm");
    lot.length += 2 * mmPerInch;
    CHECK(sizeText(lot, Units::Inches) == "7/8\" by 5 1/2\" by 12' 2\"");
    CHECK(runOfStrip(1000.5 * mmPerFoot, Units::Inches) == "1001 ft"); // a run of stock is rounded up
    CHECK(runOfStrip(2000.0, Units::Millimetres) == "2 m");
    CHECK(weightText(8.53, Units::Millimetres) == "8.5 kg (19 lb)"); // 1 lb = 0.45359237 kg
    CHECK(weightText(8.53, Units::Inches) == "19 lb (8.5 kg)");
    CHECK(weightText(0.009, Units::Inches) == "0.02 lb (0.01 kg)"); // what is there is not nothing
    CHECK(weightText(0.0, Units::Inches) == "0.0 lb (0.0 kg)");
    CHECK(pieceText(10 * mmPerInch + 0.25 * mmPerInch, Units::Inches) == "10 1/4\"");
    CHECK(pieceText(10 * mmPerInch + 0.1, Units::Inches) == "10 1/4\""); // never shorter than it is
    CHECK(pieceText(260.35, Units::Millimetres) == "261 mm");
    CHECK(spoken("western-redcedar") == "western redcedar");
}
