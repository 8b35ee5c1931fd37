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

TEST_CASE("a sentence names first what the builder measures in") {
    const std::string radius =
        "Bent to a radius of " + bothUnitsLong(3048) + ", tighter than " + bothUnitsLong(6096) + ".";
    CHECK(unitsFirst(radius, Units::Inches) ==
          "Bent to a radius of 10.0 ft (3.0 m), tighter than 20.0 ft (6.1 m).");
    CHECK(unitsFirst(radius, Units::Millimetres) == radius);
    CHECK(unitsFirst(bothUnits(15.875), Units::Inches) == "5/8\" (16 mm)");
    CHECK(unitsFirst(bothUnits(-3.175) + " off", Units::Inches) == "-1/8\" (-3 mm) off");
    CHECK(unitsFirst("at x " + bothUnits(1714.6) + " and on", Units::Inches) ==
          "at x 5' 7 1/2\" (1715 mm) and on");
    CHECK(unitsFirst("(a tenth is " + bothUnits(3.175) + " here)", Units::Inches) ==
          "(a tenth is 1/8\" (3 mm) here)");
    CHECK(unitsFirst("more than 23 kg (51 lb), her limit", Units::Inches) ==
          "more than 51 lb (23 kg), her limit");
    CHECK(unitsFirst("2,3 m (7,5 ft)", Units::Inches) == "7,5 ft (2,3 m)"); // as a German sheet has it
    for (const char* other :
         {"", "row 5 mm", "2 rows (10 and 12) are narrow", "16 mm (about 5/8\")", "12 m (", "x mm (1\")"})
        CHECK(unitsFirst(other, Units::Inches) == other);
}

TEST_CASE("a length has no finer step than what it is known within") {
    CHECK(bothUnitsWithin(11.17, 0.03) == "11.17 mm (0.440\")");
    CHECK(bothUnitsWithin(11.17, 0.79) == "11.2 mm (0.44\")");
    CHECK(bothUnitsWithin(11.17, 1.2) == "11 mm (7/16\")"); // 7.04 sixteenths
}
