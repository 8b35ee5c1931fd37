#include "core/units/length.hpp"
#include "core/units/length_text.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <vector>

using namespace sheerlay::core;

namespace {

constexpr double sixteenth = 25.4 / 16;
// One rounding of a value below 100 m: far under a thousandth of a millimetre.
constexpr double exactly = 1e-10;

double mm(std::string_view text, Units plain = Units::Millimetres) {
    INFO(text);
    const auto read = parseLength(text, plain);
    REQUIRE(read.has_value());
    return read->millimetres;
}

double resolution(std::string_view text, Units plain = Units::Millimetres) {
    INFO(text);
    const auto read = parseLength(text, plain);
    REQUIRE(read.has_value());
    return read->resolution;
}

LengthError refused(std::string_view text, Units plain = Units::Millimetres) {
    INFO(text);
    const auto read = parseLength(text, plain);
    REQUIRE_FALSE(read.has_value());
    return read.error();
}

bool holds(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("feet-inches-eighths follow N = 192 f + 16 i + 2 e +- 1") {
    // Worked by hand from the definition, in sixteenths of an inch.
    CHECK(mm("1-3-4") == fromSixteenths(192 + 48 + 8));
    CHECK(mm("1-3-4+") == fromSixteenths(249));
    CHECK(mm("0-6-2-") == fromSixteenths(96 + 4 - 1));
    CHECK(mm("0-6-2+") == fromSixteenths(101)); // 6 5/16 in
    CHECK(mm("10-1-6") == fromSixteenths(16 * 121 + 12));
    CHECK(mm("1-07-4") == mm("1-7-4"));
    CHECK(mm("01-07-04+") == mm("1-7-4+"));
    CHECK(mm("13-0-2") == 3968.75);
    CHECK(mm("0-0-0") == 0.0);
    CHECK(mm("7-6-0") == 2286.0);
    CHECK(mm(" 1-3-4+ ") == mm("1-3-4+"));
    CHECK(mm("1–3–4+") == mm("1-3-4+")); // en dashes
    CHECK(mm("-0-3-4") == -mm("0-3-4"));
    CHECK(mm("−0-3-4+") == -mm("0-3-4+")); // minus sign; the + belongs to the size
    CHECK(mm("0-6-8") == mm("0-7-0"));     // eight eighths carry
    CHECK(mm("0-11-8+") == mm("1-0-0+"));
    CHECK(mm("1-3-4", Units::Inches) == mm("1-3-4", Units::Millimetres));
}

TEST_CASE("what could be meant in two ways is reported and not guessed") {
    CHECK(holds(refused("4-3").found, "two parts"));
    CHECK(holds(refused("4-3").found, "\"4-3\""));
    CHECK(holds(refused("4-3").would, "feet-inches-eighths"));
    CHECK(holds(refused("4-3+").found, "two parts"));
    CHECK(holds(refused("0-6-9").found, "8 eighths"));
    CHECK(holds(refused("0-12-0").found, "11 inches"));
    CHECK(holds(refused("1-2-3-4").found, "more than three"));
    CHECK(holds(refused("1-2-3++").found, "goes on"));
    CHECK(holds(refused("0-6-2.5").found, "goes on"));
    CHECK(holds(refused("1-2-3 in").found, "goes on"));
    CHECK(holds(refused("1,250").found, "comma"));
    CHECK(holds(refused("1,250.5").found, "decimal mark"));
    CHECK(holds(refused("3/8").found, "without a unit"));
    CHECK(holds(refused("4'14\"").found, "12 inches"));
    CHECK(holds(refused("-").would, "leaving"));
    CHECK(holds(refused("—").would, "leaving"));
}

TEST_CASE("fractions, decimals and units") {
    CHECK_THAT(mm("15 3/4 in"), WithinAbs(400.05, exactly));
    CHECK(mm("15-3/4 in") == mm("15 3/4 in"));
    CHECK(mm("15¾\"") == mm("15 3/4 in"));
    CHECK(mm("15 ¾ inches") == mm("15 3/4 in"));
    CHECK(mm("3/8", Units::Inches) == 9.525);
    CHECK(mm("5/16 in") == 7.9375);
    CHECK(mm("9/8 in") == 28.575);
    CHECK(mm("⅛ in") == 3.175);
    CHECK(mm("⅜\"") == 9.525);
    CHECK(mm("⅝\"") == 15.875);
    CHECK(mm("⅞\"") == 22.225);
    CHECK(mm("½\"") == 12.7);
    CHECK(mm("¼\"") == 6.35);
    CHECK(mm("3' 2 1/2\"") == 977.9);
    CHECK(mm("3′ 2½″") == 977.9);
    CHECK(mm("3'-2 1/2\"") == 977.9);
    CHECK(mm("3 ft 2 1/2 in") == 977.9);
    CHECK(mm("3ft2in") == 965.2);
    CHECK(mm("3' 2") == 965.2);
    CHECK(mm("3' 2.5\"") == 977.9);
    CHECK(mm("12 ft") == 3657.6);
    CHECK(mm("4.5'") == 1371.6);
    CHECK(mm("6''") == 152.4);
    CHECK(mm("400 mm") == 400.0);
    CHECK(mm("400mm") == 400.0);
    CHECK(mm("400.25 MM") == 400.25);
    CHECK(mm("40 cm") == 400.0);
    CHECK(mm("0.4 m") == 400.0);
    CHECK(mm(".4 m") == 400.0);
    CHECK(mm("4.5") == 4.5);
    CHECK(mm("4.5", Units::Inches) == 114.3);
    CHECK(mm("-1/2 in") == -12.7);
    CHECK(mm("-12 mm") == -12.0);
    CHECK(mm("12,5 mm") == 12.5);   // cannot be thousands
    CHECK(mm("0,125 in") == 3.175); // nor can this
    CHECK(mm("1,2345 m") == 1234.5);
}

TEST_CASE("the finest digit a notation can say") {
    CHECK(resolution("1-3-4") == 3.175);
    CHECK(resolution("1-3-4+") == sixteenth);
    CHECK(resolution("1-3-4-") == sixteenth);
    CHECK(resolution("15 3/4 in") == 6.35);
    CHECK(resolution("15 12/16 in") == sixteenth);
    CHECK(resolution("3' 2 1/2\"") == 12.7);
    CHECK(resolution("3 ft") == 0.0);
    CHECK(resolution("15 in") == 0.0);
    CHECK(resolution("400 mm") == 1.0);
    CHECK_THAT(resolution("400.5 mm"), WithinAbs(0.1, exactly));
    CHECK_THAT(resolution("4.25", Units::Inches), WithinAbs(0.254, exactly));
    CHECK_THAT(resolution("40.5 cm"), WithinAbs(1.0, exactly));
}

TEST_CASE("what is no length is refused with something that would do") {
    const std::vector<std::string> bad{"",
                                       " ",
                                       "abc",
                                       "12 parsecs",
                                       "12 in in",
                                       "1/0 in",
                                       "3 4/4 in",
                                       "nan",
                                       "inf",
                                       "1e3 mm",
                                       "--3 mm",
                                       "3 mm -",
                                       "/8 in",
                                       "3' 2 mm",
                                       "1.5' 2\"",
                                       "12.",
                                       "1.2.3",
                                       "+",
                                       "1/2/3 in",
                                       "4'\x01",
                                       "\xff\xfe",
                                       "3\" 2'",
                                       "5 4 in",
                                       "99999999999999 mm",
                                       std::string(500, '1')};
    for (const std::string& text : bad) {
        const LengthError error = refused(text);
        CHECK_FALSE(error.found.empty());
        CHECK_FALSE(error.would.empty());
        CHECK_FALSE(holds(error.would, "\\"));
        CHECK(error.found.size() < 200);
    }
}

TEST_CASE("every sixteenth from -60 ft to 60 ft survives printing and reading") {
    for (std::int64_t k = -60 * 192; k <= 60 * 192; ++k) {
        const std::string text = toFeetInchesEighths(fromSixteenths(k));
        const auto read = parseLength(text, Units::Millimetres);
        REQUIRE(read.has_value());
        REQUIRE(read->millimetres == fromSixteenths(k)); // the same bits: no drift however often it is saved
        REQUIRE(toSixteenths(read->millimetres) == k);
    }
}

TEST_CASE("printed inches and fractions survive reading") {
    for (const int denominator : {16, 32}) {
        for (std::int64_t k = -40 * denominator; k <= 40 * denominator; ++k) {
            const double length = 25.4 * static_cast<double>(k) / denominator;
            const std::string text = formatLength(length, Units::Inches, denominator);
            INFO(text);
            REQUIRE_THAT(mm(text), WithinAbs(length, exactly));
        }
    }
}

TEST_CASE("printing for a table of offsets") {
    CHECK(toFeetInchesEighths(0.0) == "0-0-0");
    CHECK(toFeetInchesEighths(fromSixteenths(249)) == "1-3-4+");
    CHECK(toFeetInchesEighths(-fromSixteenths(56)) == "-0-3-4");
    CHECK(toFeetInchesEighths(-0.1) == "0-0-0");
    CHECK(toFeetInchesEighths(300.0) == "0-11-6+"); // 11.811 in: nearest sixteenth is 189
    CHECK(toFeetInchesEighths(304.7) == "1-0-0");   // carries into the foot
    CHECK(toFeetInchesEighths(std::numeric_limits<double>::quiet_NaN()) == "?");
    CHECK(toFeetInchesEighths(std::numeric_limits<double>::infinity()) == "?");
}

TEST_CASE("printing for people") {
    CHECK(formatLength(1304.925, Units::Inches) == "4' 3 3/8\"");
    CHECK(formatLength(51.3125 * 25.4, Units::Inches) == "4' 3 5/16\"");
    CHECK(formatLength(15.75 * 25.4, Units::Inches) == "15 3/4\"");
    CHECK(formatLength(23.999 * 25.4, Units::Inches) == "2' 0\"");
    CHECK(formatLength(48 * 25.4, Units::Inches) == "4' 0\"");
    CHECK(formatLength(12.7, Units::Inches) == "1/2\"");
    CHECK(formatLength(0.0, Units::Inches) == "0\"");
    CHECK(formatLength(-12.7, Units::Inches) == "-1/2\"");
    CHECK(formatLength(25.4 * 3 / 32, Units::Inches, 32) == "3/32\"");
    CHECK(formatLength(25.4 * 3 / 32, Units::Inches, 16) == "1/8\""); // half a sixteenth goes up
    CHECK(formatLength(1299.4, Units::Millimetres) == "1299 mm");
    CHECK(formatLength(1299.46, Units::Millimetres, 16, 1) == "1299.5 mm");
    CHECK(formatLength(-0.2, Units::Millimetres) == "0 mm");
    CHECK(formatLength(std::numeric_limits<double>::quiet_NaN(), Units::Inches) == "?");
}

TEST_CASE("random text never harms the reader and never reads as something that is not finite") {
    const unsigned seed = 20261125;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    const std::string alphabet = "0123456789-+/.,'\" inmft\xc2\xbd\xe2\x80\xb2";
    std::uniform_int_distribution<std::size_t> sign(0, alphabet.size() - 1);
    std::uniform_int_distribution<int> size(0, 14);
    int readable = 0;
    for (int i = 0; i < 50000; ++i) {
        std::string text;
        for (int n = size(random); n > 0; --n)
            text += alphabet[sign(random)];
        const auto read = parseLength(text, i % 2 == 0 ? Units::Inches : Units::Millimetres);
        if (read) {
            ++readable;
            REQUIRE(std::isfinite(read->millimetres));
            REQUIRE(read->resolution >= 0.0);
        } else {
            REQUIRE_FALSE(read.error().found.empty());
        }
    }
    CHECK(readable > 500); // the alphabet does make lengths, so both ways were walked
}

TEST_CASE("quoting for messages cuts long text and shows no control signs") {
    CHECK(quoted("abc") == "\"abc\"");
    CHECK(quoted("a\nb") == "\"a?b\"");
    CHECK(quoted(std::string(100, 'x')) == "\"" + std::string(40, 'x') + "…\"");
}

TEST_CASE("feet-inches-eighths are known by their two dashes, whatever the sign in front") {
    for (const char* printed : {"1-3-4", "1-3-4+", "0-0-0", "-0-3-4", "1-3-4-"})
        CHECK(inFeetInchesEighths(printed));
    for (const char* printed : {"", "-", "12", "-12", "3-4", "-3-4", "15 3/4 in"})
        CHECK_FALSE(inFeetInchesEighths(printed));
}

TEST_CASE("blanks, tabs and line ends are taken off the ends and left within") {
    CHECK(trimmed(" \t a b\r\n") == "a b");
    CHECK(trimmed("\n \t").empty());
}
