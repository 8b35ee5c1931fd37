#include "core/project/project_writer.hpp"
#include "tests/support/project_text.hpp"

#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 1e-9; // mm, one rounding of a conversion

const std::string everything = R"(
[fitout]
wood = "black-cherry"
glass-inside = "0.4 mm"
bolt-diameter = "5/16 in"
[fitout.gunwales]
inner = { width = "3/4 in", height = "7/8 in" }
outer = { width = "5/8 in" }
stand = "side"
edge = "rabbet"
stock-length = "10 ft"
scarf-slope = 12
screw-heads = "flush"
screw-diameter = "4.8 mm"
screw-length = "1 1/2 in"
scuppers = { opening = "4 in", block = "1 1/2 in" }
[[fitout.bulkhead]]
end = "stern"
from-end = "12 in"
crown = "3/4 in"
[[fitout.deck]]
end = "bow"
length = "18 in"
between = "planking"
[[fitout.seat]]
x = "4-6-0"
above-bottom = "9 1/2 in"
depth = "10 in"
tilt = 3.3
leg-room = "20 in"
caning = { hole = "3/16 in" }
[[fitout.seat]]
name = "bow seat"
x = 1200
below-sheer = 60
on = "cleats"
[[fitout.thwart]]
x = "3 ft"
knee-room = "10 in"
[fitout.yoke]
width = "3 in"
)";

std::string refused(const std::string& tables) {
    const auto read = parseProject(test::smallProject() + tables, "trial.sheerlay");
    REQUIRE_FALSE(read.has_value());
    REQUIRE(read.error().size() == 1);
    return toText(read.error().front());
}

} // namespace

TEST_CASE("a file that asks for nothing gets nothing fitted out") {
    CHECK_FALSE(test::parsed(test::smallProject()).fitout);
}

TEST_CASE("every part of the fit-out is read, and what is left out keeps its place") {
    const Project p = test::parsed(test::smallProject() + everything);
    REQUIRE(p.fitout);
    const FitoutChoices& f = *p.fitout;
    CHECK(f.wood == "black-cherry");
    CHECK(f.glassInside == 0.4);
    CHECK(f.glassOutside == FitoutChoices{}.glassOutside);
    REQUIRE(f.gunwales);
    CHECK(f.gunwales->inner.height == Approx(22.225).margin(exact));
    CHECK(f.gunwales->outer.width == Approx(15.875).margin(exact));
    CHECK(f.gunwales->outer.height == StickSize{}.height);
    CHECK(f.gunwales->stand == GunwaleChoices::Stand::Side);
    CHECK(f.gunwales->edge == GunwaleChoices::Edge::Rabbet);
    CHECK(f.gunwales->stockLength == Approx(3048).margin(exact));
    CHECK(f.gunwales->scarfSlope == 12);
    CHECK_FALSE(f.gunwales->plugs);
    CHECK(f.gunwales->screwDiameter == Approx(4.8).margin(exact));
    CHECK(f.gunwales->screwLength.value() == Approx(38.1).margin(exact));
    CHECK(f.boltDiameter == Approx(7.9375).margin(exact));
    REQUIRE(f.gunwales->scuppers);
    CHECK(f.gunwales->scuppers->block == Approx(38.1).margin(exact));
    REQUIRE(f.bulkheads.size() == 1);
    CHECK(f.bulkheads[0].end == End::Stern);
    CHECK(f.bulkheads[0].fromEnd == Approx(304.8).margin(exact));
    REQUIRE(f.decks.size() == 1);
    CHECK(f.decks[0].between == DeckChoice::Between::Planking);
    REQUIRE(f.seats.size() == 2);
    CHECK(f.seats[0].name == "seat 1");
    CHECK(f.seats[0].tilt == Approx(3.3 * std::numbers::pi / 180).margin(1e-12));
    CHECK(f.seats[0].caning->hole == Approx(4.7625).margin(exact));
    CHECK_FALSE(f.seats[0].belowSheer);
    CHECK(f.seats[0].legRoom == Approx(508).margin(exact));
    CHECK(f.seats[1].legRoom == SeatChoice{}.legRoom);
    CHECK(f.seats[1].on == SeatChoice::On::Cleats);
    CHECK(f.seats[1].belowSheer == 60.0);
    REQUIRE(f.thwarts.size() == 1);
    CHECK(f.thwarts[0].x == Approx(914.4).margin(exact));
    CHECK(f.thwarts[0].kneeRoom == Approx(254).margin(exact));
    REQUIRE(f.yoke);
    CHECK_FALSE(f.yoke->x); // where the boat balances
}

TEST_CASE("what is written reads back to the same fit-out, in either unit") {
    Project p = test::parsed(test::smallProject() + everything);
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        p.units = units;
        const std::string text = writeProject(p);
        const Project again = test::parsed(text);
        CHECK(writeProject(again) == text);
        REQUIRE(again.fitout);
        CHECK(again.fitout->gunwales->inner.height == Approx(p.fitout->gunwales->inner.height).margin(1e-8));
        CHECK(again.fitout->seats[0].aboveBottom.value() == Approx(241.3).margin(1e-8));
        CHECK(again.fitout->seats[0].tilt == Approx(p.fitout->seats[0].tilt).margin(1e-12));
        if (units == Units::Millimetres)
            CHECK(again.fitout->decks == p.fitout->decks);
    }
}

TEST_CASE("what can't be is named with its key, and what is unknown is left out") {
    using Catch::Matchers::Contains;
    CHECK_THAT(refused("[fitout]\nwood = \"cheese\"\n"), Contains("fitout.wood"));
    CHECK_THAT(refused("[[fitout.seat]]\nx = 1200\n"), Contains("no height") && Contains("above-bottom"));
    CHECK_THAT(refused("[[fitout.seat]]\nx = 1200\nabove-bottom = 200\nbelow-sheer = 60\n"),
               Contains("told twice"));
    CHECK_THAT(refused("[[fitout.seat]]\nx = 1200\nabove-bottom = 200\ntilt = 70\n"),
               Contains("fitout.seat[1].tilt"));
    CHECK_THAT(refused("[[fitout.seat]]\nx = 1200\nabove-bottom = 200\ndepth = 120\nrail = { width = 60 }\n"),
               Contains("two rails"));
    CHECK_THAT(refused("[[fitout.thwart]]\nwidth = 60\n"), Contains("fitout.thwart[1].x"));
    CHECK_THAT(refused("[[fitout.bulkhead]]\nfrom-end = 300\n"), Contains("fitout.bulkhead[1].end"));
    CHECK_THAT(refused("[fitout.gunwales]\ninner = { width = 900 }\n"), Contains("mixed up"));
    const auto odd = parseProject(test::smallProject() + "[fitout]\nmast = 1\n", "trial.sheerlay");
    REQUIRE(odd.has_value());
    REQUIRE(odd->warnings.size() == 1);
    CHECK_THAT(toText(odd->warnings[0]), Contains("fitout.mast"));
}
