#include "core/offsets/guess_notation.hpp"
#include "tests/support/cut_table.hpp"

using namespace sheerlay::core;
using sheerlay::test::cut;

namespace {

GuessedNotation guessed(const std::string& text, const TableCorrections& corrections = {}) {
    const auto notation = guessNotation(cut(text), corrections);
    REQUIRE(notation.has_value());
    return *notation;
}

} // namespace

TEST_CASE("a unit in a heading, behind a number or in the notation is found") {
    CHECK(guessed("Station;0;1\nSheer height (mm);400;390\n").notation.plain == PlainUnit::Millimetres);
    CHECK(guessed("st;x_cm;hb_wl\n1;0;2\n2;30;4\n").notation.plain == PlainUnit::Centimetres);
    CHECK(guessed("Offsets in metres;;\nst;0;1\nsheer;0.4;0.39\n").notation.plain == PlainUnit::Metres);
    CHECK(guessed("st;0;1\nWL 4 in;3.5;7.25\n").notation.plain == PlainUnit::Inches);
    CHECK(guessed("st;0;1\nsheer;15 3/4;15 1/2\n").notation.plain == PlainUnit::Inches);
    const auto builders = guessed("st;0;1\nsheer;1-3-4;1-3-2\nkeel;0-0-1;0-0-0\n");
    CHECK(builders.notation.plain == PlainUnit::Inches);
    CHECK(builders.notation.feetInchesEighths);
}

TEST_CASE("numbers too large for anything but millimetres are taken so, and it is said") {
    const auto large = guessed("st;0;1;2\nx;0;2400;4800\nsheer;400;390;410\nhalf;10;380;10\n");
    CHECK(large.notation.plain == PlainUnit::Millimetres);
    CHECK(large.unitFromSize);
}

TEST_CASE("numbers that may be inches or centimetres are asked about") {
    const CellGrid grid = cut("st;0;1;2\nx;0;90;180\nsheer;15;14;15\n");
    const auto notation = guessNotation(grid, {});
    REQUIRE_FALSE(notation.has_value());
    CHECK(notation.error().would.find("units = ") != std::string::npos);
    TableCorrections said;
    said.units = PlainUnit::Centimetres;
    CHECK(guessNotation(grid, said)->notation.plain == PlainUnit::Centimetres);
    CHECK_FALSE(guessNotation(cut("x (mm);y (in);z\n1;2;3\n"), {}).has_value());
}

TEST_CASE("decimal commas and points are told apart, and asked about where they can't be") {
    CHECK(guessed("st;0;1\nsheer (mm);400,5;390,25\n").notation.decimal == DecimalMark::Comma);
    CHECK(guessed("st;0;1\nsheer (mm);400.5;390\n").notation.decimal == DecimalMark::Point);
    const CellGrid either = cut("st;0;1\nx (mm);1,250;2,500\n");
    const auto asked = guessNotation(either, {});
    REQUIRE_FALSE(asked.has_value());
    CHECK(asked.error().would.find("decimal = comma") != std::string::npos);
    TableCorrections said;
    said.decimal = DecimalMark::Point;
    CHECK(guessNotation(either, said)->notation.decimal == DecimalMark::Point);
    CHECK_FALSE(guessNotation(cut("st;0;1\nx (mm);1,25;2.5\n"), {}).has_value());
}
