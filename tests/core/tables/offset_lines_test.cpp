#include "core/tables/offset_lines.hpp"
#include "tests/support/catch.hpp"

#include <string>
#include <vector>

using namespace sheerlay::core;

TEST_CASE("lines are named one by one or by their distance") {
    const auto some = parseLevels("6 in, 3\", 1-0-0, 6 in", Units::Millimetres);
    REQUIRE(some.has_value());
    REQUIRE(some->at.size() == 3); // once each, in order
    CHECK_THAT(some->at[0], WithinAbs(76.2, 1e-9));
    CHECK_THAT(some->at[2], WithinAbs(304.8, 1e-9));
    CHECK(some->between(100, 400).size() == 2);
    const auto steps = parseLevels("Every 100 mm", Units::Inches);
    REQUIRE(steps.has_value());
    CHECK(steps->between(-150, 300) == std::vector<double>{-100, 0, 100, 200}); // strictly inside
    CHECK(parseLevels("4", Units::Inches)->at == std::vector<double>{4 * 25.4});
}

TEST_CASE("what is no line is told with what would do") {
    for (const char* text :
         {"", "every", "every 0 mm", "3 in,, 4 in", "3 in,", "every three", "4-3", "every -2 in"}) {
        INFO(text);
        const auto read = parseLevels(text, Units::Millimetres);
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().found.empty());
        CHECK_FALSE(read.error().would.empty());
    }
}

TEST_CASE("an offset is printed as the table's last digit allows") {
    const double sixteenth = 25.4 / 16;
    CHECK(roundedLength(100.4, 1.0, Units::Millimetres) == "100");
    CHECK(roundedLength(100.27, 0.5, Units::Millimetres) == "100.5");
    CHECK(roundedLength(-0.2, 1.0, Units::Millimetres) == "0");
    CHECK(roundedLength(25.4 * 15.80, sixteenth, Units::Inches) == "15.8125");    // 15 13/16
    CHECK(roundedLength(25.4 * 15.80, 2 * sixteenth, Units::Inches) == "15.750"); // to eighths
    // a table in the other unit: no more digits than it supports
    CHECK(roundedLength(100.4, sixteenth, Units::Millimetres) == "100");
    CHECK(roundedLength(25.4 * 15.8128, 1.0, Units::Inches) == "15.81");
}
