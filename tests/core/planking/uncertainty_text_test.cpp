#include "core/planking/uncertainty_text.hpp"
#include "tests/support/catch.hpp"

#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

PlanUncertainty sample() {
    PlanUncertainty u;
    u.edgeBend = 0.0347e-3; // twice that: 0.0694 /m
    u.twist = 0.71 / 304.8 * std::numbers::pi / 180;
    u.lengthTypical = 2.63;
    u.length = 17.06;
    u.halfGirth = 0.514;
    u.shutterWidth = 1.029;
    return u;
}

} // namespace

TEST_CASE("the +/- are two deviations, rounded up") {
    CHECK(toText(sample(), Units::Millimetres) ==
          "Rounding of the table moves edge bend by +/- 0.07 per metre (35 mm over 2 m), twist by +/- 5 "
          "degrees in a metre, "
          "strip lengths by +/- 6 mm (the most pointed by +/- 35 mm), half girth by +/- 1 mm and the "
          "shutter's width by +/- 2 mm. Away from the stations it may be more, "
          "bend and twist most.");
    // 0.07 /m sags 35 mm over 2 m and 52.0 mm over 8 ft, 8.2 quarters;
    // 5.26 mm is 3.3 sixteenths, 34.1 mm 5.4 quarters, 1.03 mm less than a sixteenth, 2.06 mm 1.3 sixteenths
    CHECK(toText(sample(), Units::Inches) ==
          "Rounding of the table moves edge bend by +/- 0.07 per metre (2 1/4\" over 8 ft), twist by +/- 1.5 "
          "degrees in a foot, "
          "strip lengths by +/- 1/4\" (the most pointed by +/- 1 1/2\"), half girth by +/- 1/16\" and the "
          "shutter's width by +/- 1/8\". Away from the stations it may be more, "
          "bend and twist most.");
}

TEST_CASE("nothing is told finer than it is known, and nothing that is not there") {
    PlanUncertainty u = sample();
    u.edgeBend = 0.0001e-3;
    u.twist = 0;
    u.length = u.lengthTypical = 0.01;
    u.halfGirth = 0.01;
    u.shutterWidth.reset();
    CHECK(toText(u, Units::Millimetres) ==
          "Rounding of the table moves edge bend by +/- 0.01 per metre (5 mm over 2 m), twist by +/- 1 "
          "degree in a metre, "
          "strip lengths by +/- 1 mm and half girth by +/- 1 mm. Away from the stations it may "
          "be more, bend and twist most.");
}

TEST_CASE("a length has no finer step than its +/-") {
    CHECK(lengthText(1587.7, 5, 0, Units::Millimetres) == "1590 mm");
    CHECK(lengthText(1587.7, 5, 3, Units::Millimetres) == "1590 mm");
    CHECK(lengthText(1587.7, 5, 34, Units::Millimetres) == "1580 mm");
    CHECK(lengthText(1587.7, 5, 120, Units::Millimetres) == "1600 mm");
    CHECK(lengthText(13.3, 0.5, 0, Units::Millimetres) == "13.5 mm");
    CHECK(lengthText(13.3, 0.5, 2, Units::Millimetres) == "13 mm");
    CHECK(lengthText(25.4 * 62.6, 25.4 / 4, 0, Units::Inches) == "5' 2 1/2\"");
    CHECK(lengthText(25.4 * 62.6, 25.4 / 4, 26, Units::Inches) == "5' 3\"");
}
