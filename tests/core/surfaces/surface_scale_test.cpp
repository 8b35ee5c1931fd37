#include "core/surfaces/surface_scale.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/given_hull.hpp"
#include "tests/support/made_project.hpp"

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// As a reader hands over a file that counts in `unit`, its numbers being a boat's of 4200 times `size`.
geometry::GivenFaces counted(double unit, const std::string& name, double size) {
    auto given = turned(givenHull({}), unit * size * Eigen::Matrix3d::Identity());
    given.unit = unit;
    given.unitName = name;
    return given;
}

} // namespace

TEST_CASE("the file's unit is taken where it makes a boat") {
    const auto mm = surfaceScale(counted(1, "millimetre", 1), {});
    REQUIRE(mm.has_value());
    CHECK(mm->factor == 1.0);
    CHECK(mm->units == Units::Millimetres);
    const auto inches = surfaceScale(counted(25.4, "INCH", 1 / 25.4), {});
    REQUIRE(inches.has_value());
    CHECK(inches->factor == 1.0);
    CHECK(inches->units == Units::Inches);
    CHECK(inches->said.front().find("4200 mm (165.4 in) long") != std::string::npos);
}

TEST_CASE("a boat of a few millimetres is asked about, not guessed") {
    const auto tiny = surfaceScale(counted(1, "millimetre", 0.001), {});
    REQUIRE_FALSE(tiny.has_value());
    CHECK(tiny.error().found == "a boat 4.20 mm long, as the file counts in millimetre");
    CHECK(tiny.error().would == "--take \"units = m\", which makes her 4200 mm long");
    // 13.8 might be feet, or metres
    const auto feet = surfaceScale(counted(1, "millimetre", 1 / 304.8), {});
    REQUIRE_FALSE(feet.has_value());
    CHECK(feet.error().would.find("units = m\"") != std::string::npos);
    CHECK(feet.error().would.find("or \"units = ft\", which makes her 4200 mm long") != std::string::npos);
    CHECK(surfaceScale(counted(1, "millimetre", 1e5), {}).error().would == "a hull of 1.5 to 15 m");
}

TEST_CASE("what the builder says goes first, and is checked too") {
    const auto said = surfaceScale(counted(1, "millimetre", 0.001), corrected({"units = m"}));
    REQUIRE(said.has_value());
    CHECK_THAT(said->factor, WithinRel(1000.0, 1e-12));
    const auto wrong = surfaceScale(counted(1, "millimetre", 1), corrected({"units = in"}));
    REQUIRE_FALSE(wrong.has_value());
    CHECK(wrong.error().found == "a boat 106680 mm long, with the unit you say");
}
