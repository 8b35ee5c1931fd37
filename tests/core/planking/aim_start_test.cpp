#include "core/planking/aim_start.hpp"
#include "core/planking/landing.hpp"
#include "core/planking/planking.hpp"
#include "core/planking/tapered_boat.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// closing.md section 3: the formula canoe from the bent line at girth 255 leaves two slivers of 2.3 mm in row
// -16; at 247 to 251 mm and from 259 mm on they are 6 mm and more.

namespace {

struct Boat {
    Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    LoftedHull hull = loft(project).value();
    Strength strength{*findWood(project.strips.wood), project.strips.thickness, project.strips.width};
    LayingContext context{&project, &hull, &hull.laid, &strength, 305.0};
    Plan empty;

    Boat() { empty.edgeBendLimit = 0.32e-3; }
    [[nodiscard]] Plan from(double girth) const {
        StartLine start;
        start.kind = StartLine::Kind::Bent;
        start.girth = girth;
        start.edgeBend = {0.069, 0.112, -0.145}; // planking.md, reference hull
        return layFrom(start, {}, context, empty).value();
    }
};

double worst(const Plan& plan) {
    double most = 0;
    for (const Strip& s : plan.strips)
        most = std::max(most, s.edgeBend.maxAbs);
    return most;
}

} // namespace

TEST_CASE("slivers at the sheer go away when the start moves by a few millimetres") {
    const Boat boat;
    const Plan plan = boat.from(255);
    REQUIRE_FALSE(topIsSound(plan));
    const auto move = moveForTop(boat.context, boat.empty, plan);
    REQUIRE(move.has_value());
    CHECK(std::abs(*move) <= 6); // 249 or 259 and beyond, by the table
    CHECK(topIsSound(boat.from(255 + *move)));
    for (int nearer = 1; nearer < std::abs(*move); ++nearer) { // none of the smaller moves would do
        CHECK_FALSE(topIsSound(boat.from(255 + nearer)));
        CHECK_FALSE(topIsSound(boat.from(255 - nearer)));
    }
}

TEST_CASE("a start the program chose is moved off slivers, bends no strip harder for it, and says so") {
    const Boat boat;
    Plan plan = boat.from(255);
    const double before = worst(plan);
    clearTop({}, boat.context, boat.empty, plan);
    CHECK(topIsSound(plan));
    CHECK(worst(plan) <= before + 0.005e-3);
    CHECK(plan.start.girth != 255);
    CHECK(std::abs(plan.start.girth - 255) <= 9);
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-3));
    const auto told = std::count_if(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
        return f.code == "moved-for-sheer";
    });
    CHECK(told == 1);
}

TEST_CASE("a sound top is left alone") {
    const Boat boat;
    const Plan plan = layFrom(StartLine{}, {}, boat.context, boat.empty).value();
    CHECK_FALSE(moveForTop(boat.context, boat.empty, plan).has_value());
    Plan same = plan;
    clearTop({}, boat.context, boat.empty, same);
    CHECK(same.strips.size() == plan.strips.size());
    CHECK(same.findings.size() == plan.findings.size());
}

namespace {

/// The reference canoe from the sheer, run over, with a wish for the last plank: parts of a strip.
Project wishing(double least, double most) {
    Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    project.planking.closing = ClosingMethod::RunOver;
    project.planking.shutter = {least, most};
    return project;
}

bool tells(const Plan& plan, const std::string& code) {
    return std::ranges::any_of(plan.findings, [&](const Finding& f) { return f.code == code; });
}

} // namespace

TEST_CASE("a last plank of wanted width is reached by moving the start a little, and the plan says so") {
    // closing.md section 5: 17 percent from the sheer, first strip 3 mm lower: 99 percent
    const Project project = wishing(0.6, 1.0);
    const Plan plan = plank(project, loft(project).value()).value();
    CHECK(tells(plan, "moved-for-shutter"));
    CHECK_FALSE(tells(plan, "shutter-not-met"));
    CHECK(tells(plan, "shutter")); // told with its width
    CHECK(shutterRemainder(plan) >= 0.6 * plan.coverWidth);
    CHECK(std::abs(plan.start.shift) <= 8.5);
}

TEST_CASE("a wish that no small move fulfils is told, and the plan stays") {
    const Project project = wishing(0.7001, 0.7002); // a fiftieth of what half a millimetre moves
    const Plan plan = plank(project, loft(project).value()).value();
    CHECK(tells(plan, "shutter-not-met"));
    CHECK_FALSE(tells(plan, "moved-for-shutter"));
    CHECK(plan.start.shift == 0.0);
}

TEST_CASE("tapers keep the limit from a start that was moved for the last plank") {
    Project project = wishing(0.6, 1.0);
    project.planking.start.kind = StartLine::Kind::Bent;
    project.planking.start.girth = 261; // closing.md section 1: 2 touched strips meet 0.15, 4 meet 0.12
    project.planking.start.edgeBend = {0.069, 0.112, -0.145};
    project.planking.taper = Taper::Anywhere;
    project.planking.edgeBendRadius = 1000 / 0.12;
    project.planking.narrowest = 11.0;
    const LoftedHull hull = loft(project).value();
    const Plan plan = plank(project, hull).value();
    for (const Strip& s : plan.strips) {
        INFO(s.id << " bends " << 1000 * s.edgeBend.maxAbs);
        CHECK_FALSE(overLimit(s, plan.edgeBendLimit));
    }
    CHECK(shutterRemainder(plan) >= 0.6 * plan.coverWidth);
}
