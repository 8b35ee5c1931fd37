#include "core/offsets/cell_length.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

namespace {

Notation plainIn(PlainUnit unit) {
    Notation notation;
    notation.plain = unit;
    return notation;
}

double mm(const std::string& cell, const Notation& notation) {
    const auto read = readCell(cell, notation);
    INFO("cell " << cell);
    REQUIRE(read.has_value());
    return read->millimetres;
}

} // namespace

TEST_CASE("plain numbers count in the table's unit") {
    CHECK(mm("12.5", plainIn(PlainUnit::Millimetres)) == Approx(12.5));
    CHECK(mm("12.5", plainIn(PlainUnit::Centimetres)) == Approx(125));
    CHECK(mm("1.25", plainIn(PlainUnit::Metres)) == Approx(1250));
    CHECK(mm("2", plainIn(PlainUnit::Inches)) == Approx(50.8));
    CHECK(mm("2", plainIn(PlainUnit::Feet)) == Approx(609.6));
    CHECK(mm("40 mm", plainIn(PlainUnit::Inches)) == Approx(40)); // its own unit wins
}

TEST_CASE("feet, inches and eighths are read whatever stands between them") {
    Notation notation = plainIn(PlainUnit::Inches);
    notation.feetInchesEighths = true;
    const double wanted = (12 + 3 + 4.5 / 8) * 25.4;
    for (const char* cell : {"1-3-4+", "1 3 4+", "1.3.4+", "1:3:4+", " 1–3–4+ "})
        CHECK(mm(cell, notation) == Approx(wanted).margin(1e-9));
    CHECK(readCell("1 3 4", notation)->printed == "1-3-4");
    CHECK(mm("-0-0-4", notation) == Approx(-12.7));
    CHECK(mm("0", notation) == 0.0);
    CHECK_FALSE(readCell("7", notation).has_value()); // inches or eighths?
    CHECK_FALSE(readCell("1-3-9", notation).has_value());
    CHECK(isFeetInchesEighths("0 11 7"));
    CHECK_FALSE(isFeetInchesEighths("15 3/4"));
    CHECK_FALSE(isFeetInchesEighths("1-3"));
}

TEST_CASE("two parts are read only once the builder said what they are") {
    Notation notation = plainIn(PlainUnit::Inches);
    CHECK_FALSE(readCell("3-4", notation).has_value());
    notation.twoPart = TwoPart::InchesEighths;
    CHECK(mm("3-4", notation) == Approx(3.5 * 25.4));
    notation.twoPart = TwoPart::FeetInches;
    CHECK(mm("3-4", notation) == Approx(40 * 25.4));
}

TEST_CASE("a comma is what the table's decimal mark makes it") {
    Notation notation = plainIn(PlainUnit::Millimetres);
    notation.decimal = DecimalMark::Comma;
    CHECK(mm("12,5", notation) == Approx(12.5));
    CHECK(mm("1,250", notation) == Approx(1.25));
    CHECK(mm("12,5 cm", notation) == Approx(125));
    notation.decimal = DecimalMark::Point;
    CHECK(mm("1,250", notation) == Approx(1250));
}

TEST_CASE("a mark of doubt is noticed and the number read") {
    const auto read = readCell("0-6-1?", plainIn(PlainUnit::Inches));
    REQUIRE(read.has_value());
    CHECK(read->markedDoubtful);
    CHECK(read->millimetres == Approx(6.125 * 25.4));
    CHECK(read->printed == "0-6-1");
}

TEST_CASE("blanks, dots and dashes are not given; numbers are") {
    for (const char* cell : {"", "  ", ".", "...", "…", "-", "—", "– –", "n/a", "····"})
        CHECK(isNotGiven(cell));
    for (const char* cell : {"0", "-1", "0-0-0", ".5", "?", "x"})
        CHECK_FALSE(isNotGiven(cell));
}

TEST_CASE("what a project of these units quotes says the same length") {
    for (const PlainUnit unit : {PlainUnit::Millimetres,
                                 PlainUnit::Centimetres,
                                 PlainUnit::Metres,
                                 PlainUnit::Inches,
                                 PlainUnit::Feet}) {
        const Notation notation = plainIn(unit);
        for (const char* cell : {"7", "7.25", "0", "0-6-3+", "3 in", "-4.5"}) {
            const auto read = readCell(cell, notation);
            REQUIRE(read.has_value());
            const auto again = parseLength(read->printed, projectUnits(notation));
            REQUIRE(again.has_value());
            CHECK(again->millimetres == read->millimetres);
        }
    }
}
