#include "core/afloat/afloat_trial.hpp"
#include "core/hull/outside_surface.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/loaded_boat.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("floated again with other loads she lies as a boat planned with them from the first") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    const AfterPlanking first = afterPlanking(project, hull, plan);
    const AfloatTrial trial(
        *project.afloat, project.units, outsideSurface(project, hull).value(), *first.weights);

    const AfloatReport same = trial.with(first.afloat->loads);
    REQUIRE(same.rest);
    CHECK(same.rest->draught == first.afloat->rest->draught);
    CHECK(same.largestLoad == first.afloat->largestLoad);

    project.afloat->loads[0].x += 300;
    project.afloat->loads[0].y = 40;
    const AfterPlanking moved = afterPlanking(project, hull, plan);
    const AfloatReport again = trial.with(moved.afloat->loads);
    REQUIRE(again.rest);
    CHECK(again.rest->water.trim == moved.afloat->rest->water.trim);
    CHECK(again.rest->water.heel == moved.afloat->rest->water.heel);
    REQUIRE(again.toPort);
    CHECK(again.toPort->arms.size() == moved.afloat->toPort->arms.size());
    CHECK(again.findings.size() == moved.afloat->findings.size());
}

TEST_CASE("empty she floats as well, and what swamps her is told") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const Project project = test::loaded(bare);
    const AfterPlanking after = afterPlanking(project, hull, plan);
    const AfloatTrial trial(
        *project.afloat, project.units, outsideSurface(project, hull).value(), *after.weights);
    const AfloatReport empty = trial.with({});
    REQUIRE(empty.rest);
    CHECK(empty.load.mass == 0.0);
    CHECK(empty.rest->draught < after.afloat->rest->draught);
    const AfloatReport heavy = trial.with({{"bricks", 2000, 0, {2400, 0, 100}}});
    CHECK_FALSE(heavy.rest);
    REQUIRE(heavy.findings.size() == 1);
    CHECK(heavy.findings[0].code == "swamps");
}

TEST_CASE("a load so far toward an end that she stands on it is told as no rest") {
    // a deep, short tub: 0.4 m long, sides 2 m high; the water stays out however she trims
    const LoftedHull tub = test::quarterPipe(2000, 400);
    WeightSheet weights;
    weights.mass = 60;
    weights.centre = {200, 0, -1900};
    const AfloatReport report =
        AfloatTrial({}, Units::Millimetres, tub.laid, weights).with({{"anvil", 60, 0, {399, 0, -1900}}});
    CHECK_FALSE(report.rest);
    REQUIRE_FALSE(report.findings.empty());
    CHECK(report.findings[0].code == "no-rest");
}
