#include "core/units/both_units.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("a length in a sentence is told in both unit systems") {
    CHECK(bothUnits(15.875) == "16 mm (5/8\")"); // 10/16 in
    CHECK(bothUnits(25.4) == "25 mm (1\")");
    CHECK(bothUnits(3.9) == "4 mm (1/8\")"); // 2.46 sixteenths
    CHECK(bothUnits(0) == "0 mm (0\")");
    CHECK(bothUnitsLong(3048) == "3.0 m (10.0 ft)");    // 10 ft exactly
    CHECK(bothUnitsFine(0.254) == "0.25 mm (0.010\")"); // ten thousandths
    CHECK(bothUnitsFine(17.41) == "17.41 mm (0.685\")");
}

TEST_CASE("a length has no finer step than what it is known within") {
    CHECK(bothUnitsWithin(11.17, 0.03) == "11.17 mm (0.440\")");
    CHECK(bothUnitsWithin(11.17, 0.79) == "11.2 mm (0.44\")");
    CHECK(bothUnitsWithin(11.17, 1.2) == "11 mm (7/16\")"); // 7.04 sixteenths
}
