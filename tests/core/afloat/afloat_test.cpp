#include "core/afloat/afloat.hpp"
#include "core/hull/outside_surface.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_hull.hpp"
#include "tests/support/loaded_boat.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

bool has(const std::vector<Finding>& findings, const std::string& code) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; });
}

} // namespace

TEST_CASE("nothing is reckoned that was not asked for") {
    const auto& [project, hull, plan] = test::canoeToLoad();
    const AfterPlanking after = afterPlanking(project, hull, plan);
    CHECK(after.empty());
    CHECK_FALSE(after.covering);
    CHECK_FALSE(after.afloat);
    CHECK(after.findings.empty());
}

TEST_CASE("the loaded canoe rests where weight and buoyancy agree") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const Project project = test::loaded(bare);
    const AfterPlanking after = afterPlanking(project, hull, plan);
    REQUIRE(after.afloat);
    const AfloatReport& a = *after.afloat;
    REQUIRE(a.rest);
    const Burden all = together(a.boat, a.load);
    CHECK_THAT(a.load.mass, WithinAbs(150, 1e-9));
    CHECK_THAT(a.rest->under.volume / 1e9 * a.density, WithinRel(all.mass, 1e-9));
    CHECK((a.rest->under.centre - all.centre).cross(a.rest->water.up()).norm() < 1e-4);
    // coefficients belong together: block = prismatic x midship
    CHECK_THAT(a.form.block, WithinRel(a.form.prismatic * a.form.midship, 1e-9));
    CHECK(a.rest->freeboard > 0);
    REQUIRE(a.toStarboard);
    CHECK_FALSE(a.toPort);
    CHECK(a.toStarboard->floods);
    // initial stability: the curve leaves upright at GM sin f
    const RightingArm& first = a.toStarboard->arms[1];
    CHECK_THAT(first.arm / std::sin(first.heel), WithinRel(a.rest->gm, 0.02));
}

TEST_CASE("a yoke without a place hangs the boat level by the weights that are told") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.afloat->parts[0] = {"a heavy stern locker", 6, 4000, 0, 200, 0};
    project.fitout = FitoutChoices{};
    project.fitout->gunwales = GunwaleChoices{};
    project.fitout->yoke = ThwartChoice{};
    project.fitout->yoke->name = "yoke";
    const AfterPlanking after = afterPlanking(project, hull, plan);
    REQUIRE(after.fitout);
    REQUIRE(after.fitout->yoke);
    CHECK(after.fitout->yoke->x > hull.laid.length / 2 + 100);
    // her moment about the yoke is nothing, the yoke's own weight, which hangs at it, included
    double moment = 0;
    for (const WeightItem& item : after.weights->items)
        moment += item.mass * (item.centre.x() - after.fitout->yoke->x);
    CHECK_THAT(moment, WithinAbs(0, 0.1)); // kg mm: the bar lies along a sheer that slopes
    CHECK(std::count_if(after.weights->items.begin(), after.weights->items.end(), [](const WeightItem& item) {
              return item.name == "gunwales" || item.name == "thwarts and yoke";
          }) == 2);
}

TEST_CASE("under water lies what the formula of the hull says") {
    // the canoe's own formula, integrated over x and z by fine sums, moved out by the planking's thickness on
    // average: compared on the moulds, where the formula holds exactly
    const auto& [project, hull, plan] = test::canoeToLoad();
    const test::FormulaHull formula = test::formulaCanoe();
    const FloatBody body = floatBodyOf(hull.moulds);
    const double level = 130;
    double volume = 0, plane = 0;
    constexpr int nx = 1200, nz = 400;
    for (int i = 0; i < nx; ++i) {
        const double x = -2438.4 + 4876.8 * (i + 0.5) / nx;
        plane += 2 * formula.halfBreadth(x, level) * 4876.8 / nx;
        for (int k = 0; k < nz; ++k)
            volume += 2 * formula.halfBreadth(x, level * (k + 0.5) / nz) * level / nz * 4876.8 / nx;
    }
    const Submerged s = submerged(body, {level, 0, 0});
    CHECK_THAT(s.volume, WithinRel(volume, 2e-3)); // the loft itself is rounded to its table
    CHECK_THAT(s.plane, WithinRel(plane, 2e-3));
}

TEST_CASE("levels rise to the sheer's lowest point, and the largest load leaves the freeboard asked for") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const Project project = test::loaded(bare);
    const AfterPlanking after = afterPlanking(project, hull, plan);
    const AfloatReport& a = *after.afloat;
    CHECK(a.levels.front().mass == 0.0);
    for (std::size_t i = 1; i < a.levels.size(); ++i)
        CHECK(a.levels[i].mass > a.levels[i - 1].mass);
    const FloatBody body = floatBodyOf(outsideSurface(project, hull).value());
    CHECK_THAT(a.levels.back().mass, WithinRel(levelDisplacement(body, 1000, 0), 1e-6));
    CHECK_THAT(a.largestLoad, WithinRel(levelDisplacement(body, 1000, 152.4) - a.boat.mass, 1e-9));
}

TEST_CASE("a load that swamps her is told in words, with what she carries") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.afloat->loads.push_back({"bricks", 900, 2438, 0, 100, 0});
    const AfterPlanking heavy = afterPlanking(project, hull, plan);
    CHECK_FALSE(heavy.afloat->rest);
    REQUIRE(has(heavy.findings, "swamps"));
    project.afloat->loads.back() = {"bricks", 230, 100, 0, 200, 0}; // at the bow
    const AfterPlanking forward = afterPlanking(project, hull, plan);
    CHECK(std::any_of(forward.findings.begin(), forward.findings.end(), [](const Finding& f) {
        return f.text.find(" deep there") != std::string::npos; // how deep the water stands over the sheer
    }));
    CHECK(std::any_of(forward.findings.begin(), forward.findings.end(), [](const Finding& f) {
        return f.text.find("over the sheer at the bow, ") != std::string::npos;
    }));
    project.afloat->loads.back() = {"bricks", 230, 4500, 0, 200, 0}; // at the stern
    const AfterPlanking astern = afterPlanking(project, hull, plan);
    CHECK_FALSE(astern.afloat->rest);
    const auto told = std::find_if(
        astern.findings.begin(), astern.findings.end(), [](const Finding& f) { return f.code == "swamps"; });
    REQUIRE(told != astern.findings.end());
    CHECK(told->level == Level::Stop);
    CHECK(told->text.find("toward the middle") != std::string::npos);
    REQUIRE(told->x);
    CHECK(*told->x > 3500);
}

TEST_CASE("weight to one side heels her and is told; low freeboard is told") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.afloat->loads[0].y = 60;
    project.afloat->freeboard = 280;
    const AfterPlanking after = afterPlanking(project, hull, plan);
    REQUIRE(after.afloat->rest);
    CHECK(after.afloat->rest->water.heel > 0);
    CHECK(after.afloat->toPort);
    CHECK(has(after.findings, "heels-at-rest"));
    CHECK(has(after.findings, "low-freeboard"));
}

TEST_CASE("weight high over her centreline is not told as an even rest") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    for (PlacedWeight& load : project.afloat->loads)
        load.height = 2700;
    const AfterPlanking after = afterPlanking(project, hull, plan);
    CHECK_FALSE(after.afloat->rest);
    CHECK(has(after.findings, "swamps"));
}

TEST_CASE("an outside that can't be found is told, and nothing is reckoned from it") {
    const auto& [bare, whole, plan] = test::canoeToLoad();
    const Project project = test::loaded(bare);
    LoftedHull hull = whole;
    hull.laid.trims.siding =
        hull.laid.trims.siding.widened(5000); // wider than she is: no centreline to end at
    const AfterPlanking after = afterPlanking(project, hull, plan);
    CHECK(has(after.findings, "no-outside"));
    CHECK_FALSE(after.afloat);
    CHECK_FALSE(after.weights);
}

TEST_CASE("salt water carries more") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    const auto fresh = afterPlanking(project, hull, plan);
    project.afloat->density = 1025;
    const auto salt = afterPlanking(project, hull, plan);
    CHECK(salt.afloat->rest->draught < fresh.afloat->rest->draught);
    CHECK_THAT(salt.afloat->levels.back().mass / fresh.afloat->levels.back().mass, WithinRel(1.025, 1e-9));
}

TEST_CASE("an inside that can't be found leaves the fit-out out, and the rest is reckoned") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.fitout.emplace().glassInside = 700; // thicker than she is deep
    const AfterPlanking after = afterPlanking(project, hull, plan);
    CHECK(has(after.findings, "no-faces"));
    CHECK_FALSE(after.fitout);
    CHECK(after.weights);
    CHECK(after.afloat);
}

TEST_CASE("on her moulds she weighs planking, glue and the outside's cloth, shared among them") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const AfterPlanking after = afterPlanking(test::loaded(bare), hull, plan);
    REQUIRE(after.onMoulds);
    double all = 0.0;
    for (const MouldLoad& m : after.onMoulds->loads)
        all += m.hull;
    CHECK_THAT(all, WithinRel(after.onMoulds->hull.mass, 1e-9));
    CHECK(after.onMoulds->hull.mass > plankingWeight(bare, plan).mass);
    CHECK(after.onMoulds->hull.mass < after.weights->mass);
}
