#include "core/planking/plan_findings.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// Findings that no other test asks for by name, each provoked. What makes them true is tested where it is
// reckoned.

namespace {

const LoftedHull& canoeHull() {
    static const LoftedHull hull = loft(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay")).value();
    return hull;
}

Project canoe() {
    return projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
}

StartLine bent(double girth, const std::array<double, 3>& edgeBend) {
    StartLine line;
    line.kind = StartLine::Kind::Bent;
    line.girth = girth;
    line.edgeBend = edgeBend;
    return line;
}

const Finding* find(const Plan& plan, const std::string& code) {
    const auto found = std::find_if(
        plan.findings.begin(), plan.findings.end(), [&](const Finding& f) { return f.code == code; });
    return found == plan.findings.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("where closing begins is told for both ends, and strain over the allowance") {
    const Plan plan = plank(canoe(), canoeHull()).value();
    for (const char* code : {"closing-begins-bow", "closing-begins-stern"}) {
        INFO(code);
        const Finding* told = find(plan, code);
        REQUIRE(told != nullptr);
        CHECK(told->level == Level::Note);
        REQUIRE(told->strip.has_value());
        CHECK(told->text.find(std::to_string(*plan.marks.closingBow)) != std::string::npos);
    }
    const Finding* strain = find(plan, "strain-over-allowance");
    REQUIRE(strain != nullptr);
    CHECK(strain->level == Level::Caution);
    const auto worst =
        std::max_element(plan.strips.begin(), plan.strips.end(), [](const Strip& a, const Strip& b) {
            return a.strainMax < b.strainMax;
        });
    CHECK(strain->text.find(worst->id.substr(1)) != std::string::npos);
}

TEST_CASE("a start that was found is told with where it lies in the plan, and the plan's own worst bend") {
    Project p = canoe();
    p.planking.start.kind = StartLine::Kind::Easiest;
    const Plan plan = plank(p, canoeHull()).value();
    const Finding* told = find(plan, "start-found");
    REQUIRE(told != nullptr);
    CHECK(told->text.find(std::to_string(std::lround(plan.start.girth)) + " mm") != std::string::npos);
    char bend[16];
    std::snprintf(bend, sizeof bend, "%.2f per metre", 1e3 * worstEdgeBend(plan));
    CHECK(told->text.find(bend) != std::string::npos);
}

TEST_CASE("a bottom planked by itself is told with its row") {
    Project p = canoe();
    p.planking.closing = ClosingMethod::SplitBottom;
    const Plan plan = plank(p, canoeHull()).value();
    const Finding* told = find(plan, "bottom-split");
    REQUIRE(told != nullptr);
    CHECK(told->text.find("row " + std::to_string(*plan.splitRow)) != std::string::npos);
}

TEST_CASE("short pieces at the sheer and a last plank too thin to fit are told") {
    Project p = canoe();
    p.planking.start = bent(255, {0.069, 0.112, -0.145}); // closing.md section 3
    const Plan plan = plank(p, canoeHull()).value();
    const Finding* piece = find(plan, "short-filler");
    REQUIRE(piece != nullptr);
    REQUIRE(piece->strip.has_value());
    const auto strip = std::find_if(
        plan.strips.begin(), plan.strips.end(), [&](const Strip& s) { return s.id == *piece->strip; });
    REQUIRE(strip != plan.strips.end());
    CHECK(strip->length < shortFiller);

    p = canoe(); // from the sheer at 17 mm 17 percent of a strip are left on each side, closing.md section 5
    p.strips.coverWidth = 17;
    p.planking.closing = ClosingMethod::RunOver;
    const Plan thin = plank(p, canoeHull()).value();
    const Finding* told = find(thin, "shutter-sliver");
    REQUIRE(told != nullptr);
    CHECK(told->level == Level::Caution);
    CHECK(told->text.find("on starboard alone") != std::string::npos);
    CHECK(told->text.find("shift the start line") != std::string::npos);
}

TEST_CASE("where a knuckle fixes the start, no finding advises to move it") {
    Project p = skiffProject();
    p.planking.closing = ClosingMethod::RunOver;
    const LoftedHull hull = loft(p).value();
    const Finding* told = nullptr;
    Plan plan;
    for (p.strips.coverWidth = 15.5; !told && p.strips.coverWidth < 18; p.strips.coverWidth += 0.1) {
        plan = plank(p, hull).value();
        told = find(plan, "shutter-sliver");
    }
    REQUIRE(told != nullptr);
    CHECK(told->text.find("change the cover width") != std::string::npos);
    for (const Finding& f : plan.findings) {
        CHECK(f.text.find("start line") == std::string::npos);
        CHECK(f.text.find("another start") == std::string::npos);
    }
}

TEST_CASE("a start bent harder than the limit is told with the row from which tapers keep it") {
    Project p = canoe();
    p.planking.taper = Taper::Anywhere;
    p.planking.edgeBendRadius = 1000 / 0.30;
    p.planking.narrowest = 11.0;
    const Plan plan = plank(p, canoeHull()).value();
    const Finding* told = find(plan, "taper-met-later");
    REQUIRE(told != nullptr);
    CHECK(told->text.find("row " + std::to_string(plan.tapers->metFromBelow)) != std::string::npos);
    for (const Strip& s : plan.strips)
        if (s.row >= plan.tapers->metFromBelow && s.length > 300)
            CHECK(s.edgeBend.maxAbs <= 1.02 * plan.edgeBendLimit);
}
