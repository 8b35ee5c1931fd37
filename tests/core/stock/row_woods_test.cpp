#include "core/planking/planking.hpp"
#include "core/stock/row_woods.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Plan rowsFrom(int first, int last) {
    Plan plan;
    for (int row = first; row <= last; ++row) {
        Strip strip;
        strip.row = row;
        if (row != 0)
            plan.strips.push_back(strip);
    }
    return plan;
}

} // namespace

TEST_CASE("rules of wood: every nth row, and the later rule over the earlier") {
    Project project;
    const Plan plan = rowsFrom(-2, 12);
    CHECK(rowWoods(project, plan).at(5) == "western-redcedar");
    project.stock = Stock{};
    project.stock->woodRules = {
        {"white-ash", 3, 9, 3, {}, 0}, {"black-walnut", 6, 6, 1, {}, 0}, {"black-cherry", -2, 2, 2, {}, 0}};
    const auto woods = rowWoods(project, plan);
    CHECK(woods.size() == 14);
    CHECK(woods.at(3) == "white-ash");
    CHECK(woods.at(4) == "western-redcedar");
    CHECK(woods.at(6) == "black-walnut");
    CHECK(woods.at(9) == "white-ash");
    CHECK(woods.at(12) == "western-redcedar");
    // rows -2, -1, 1, 2 are neighbours in this order, so every second of them is -2 and 1
    CHECK(woods.at(-2) == "black-cherry");
    CHECK(woods.at(-1) == "western-redcedar");
    CHECK(woods.at(1) == "black-cherry");
    CHECK(woods.at(2) == "western-redcedar");
}

TEST_CASE("on a pipe planked from the sheer a row's girth counts cover widths, and a band takes rows by it") {
    constexpr double width = 20.0;
    Project project;
    project.strips.coverWidth = width;
    project.planking.layOn = LayOn::Moulds;
    const Plan plan = plank(project, test::quarterPipe(400, 3000)).value(); // girth 628 mm, 31.4 strips
    const auto girths = rowGirths(plan);
    for (const auto& [row, girth] : girths)
        if (row < 32) { // the last is one piece over the keel
            INFO("row " << row);
            CHECK(girth == Approx((row - 0.5) * width).margin(0.01));
        }
    project.stock = Stock{};
    WoodRule band;
    band.wood = "black-walnut";
    band.girth = {{95.0, 215.0}}; // the middles of rows 6 to 11: 110 to 210; that of row 5 lies at 90
    band.every = 2;
    project.stock->woodRules = {band};
    const auto woods = rowWoods(project, plan);
    for (const auto& [row, wood] : woods) {
        INFO("row " << row);
        CHECK((wood == "black-walnut") == (row == 6 || row == 8 || row == 10));
    }
}

TEST_CASE("fillers above the start have less girth than the rows below, on a real boat") {
    const test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay"));
    const auto girths = rowGirths(boat.plan);
    REQUIRE(girths.begin()->first < 0);
    double before = 0.0;
    for (const auto& [row, girth] : girths) {
        INFO("row " << row);
        CHECK(girth >= before - 1.0); // rows short of the widest place are measured elsewhere
        CHECK(girth <= boat.hull.laid.halfGirthMax + 1.0);
        before = girth;
    }
}
