#include "core/units/rounded_text.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

constexpr Units mm = Units::Millimetres, inches = Units::Inches;

TEST_CASE("a length to cut is never rounded down") {
    CHECK(cutLengthText(4875.1, mm) == "4880 mm");
    CHECK(cutLengthText(4875.0, mm) == "4875 mm");
    CHECK(cutLengthText(4879.99, mm) == "4880 mm");
    CHECK(cutLengthText(25.4 * 50.01, inches) == "4' 2 1/4\"");
    CHECK(cutLengthText(25.4 * 50.25, inches) == "4' 2 1/4\"");
    CHECK(cutLengthText(25.4 * 50.26, inches) == "4' 2 1/2\"");
}

TEST_CASE("a place is told to the nearest 5 mm or quarter of an inch") {
    CHECK(placeText(1303.0, mm) == "1305 mm");
    CHECK(placeText(1302.4, mm) == "1300 mm");
    CHECK(placeText(25.4 * 10.3, inches) == "10 1/4\"");
}
