#include "core/planking/accent_rows.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using core::Accent;

namespace {

/// A quarter pipe of radius 300 is 471 mm round from the sheer, level with the axis, to the keel; heights
/// follow from the girth: z = -300 sin(girth / 300).
core::Project pipeProject(std::vector<Accent> accents, core::StartLine start = {}) {
    core::Project p;
    p.strips.coverWidth = 17.0;
    p.planking.start = start;
    p.planking.accents = std::move(accents);
    return p;
}
core::StartLine geodesic(double girth) {
    return {core::StartLine::Kind::Geodesic, girth, 0, {}};
}
std::vector<const core::Strip*> accentsOf(const core::Plan& plan) {
    std::vector<const core::Strip*> list;
    for (const core::Strip& s : plan.strips)
        if (s.accent && s.side == core::Side::Starboard)
            list.push_back(&s);
    return list;
}

} // namespace

TEST_CASE("An accent asked for by height lies at that height, one whole strip from end to end") {
    const core::LoftedHull hull = test::quarterPipe(300, 2400);
    const double height = -300 * std::sin(200.0 / 300);
    const auto girth = core::accentGirth(hull, {Accent::By::Height, height});
    REQUIRE(girth);
    CHECK(*girth == Approx(200).margin(0.05));
    // 200 mm below the sheer and 140 below the start lies in row 9; the start moves up or down by less than
    // half a strip so that the row's middle runs just there
    const auto plan = core::plank(pipeProject({{Accent::By::Height, height}}, geodesic(60)), hull);
    REQUIRE(plan);
    CHECK(std::abs(plan->start.girth - 60) <= 8.5);
    const auto accents = accentsOf(*plan);
    REQUIRE(accents.size() == 1);
    for (const Eigen::Vector3d& p : accents[0]->middle)
        CHECK(p.z() == Approx(height).margin(0.1));
    CHECK(accents[0]->length == Approx(2400).margin(0.5));
    CHECK(accents[0]->kind == core::StripKind::Full);
}

TEST_CASE("From the sheer the nearest row is the accent and the plan stays the plain one") {
    const core::LoftedHull hull = test::quarterPipe(300, 2400);
    const auto plan = core::plank(pipeProject({{Accent::By::Girth, 60}, {Accent::By::Girth, 90}}), hull);
    const auto plain = core::plank(pipeProject({}), hull);
    REQUIRE(plan);
    REQUIRE(plain);
    REQUIRE(plan->accentRows == std::vector<int>{4, 6}); // 51 to 68, 85 to 102
    const auto accents = accentsOf(*plan);
    REQUIRE(accents.size() == 2);
    CHECK(accents[0]->row == 4);
    REQUIRE(plan->strips.size() == plain->strips.size());
    for (std::size_t i = 0; i < plain->strips.size(); ++i)
        CHECK(plan->strips[i].upperEdge == plain->strips[i].upperEdge);
}

TEST_CASE("Two accents are named apart, by where each was asked for") {
    const core::LoftedHull hull = test::quarterPipe(300, 2400);
    const auto told = [&](std::vector<Accent> accents) {
        const auto plan = core::plank(pipeProject(std::move(accents)), hull);
        REQUIRE(plan);
        std::string all;
        for (const core::Finding& f : plan->findings)
            if (f.code.starts_with("accent"))
                all += f.text + "\n";
        return all;
    };
    const std::string one = told({{Accent::By::Girth, 60}});
    CHECK(one.starts_with("Row 4 is the accent row, one strip"));
    // the one off the hull takes no other's name
    const std::string all =
        told({{Accent::By::Girth, 700}, {Accent::By::Girth, 60}, {Accent::By::Height, -100}});
    INFO(all);
    CHECK(all.find("Row 4 is the accent row asked for 60 mm") != std::string::npos);
    CHECK(all.find("is the accent row asked for at a height of -100 mm") != std::string::npos);
    CHECK(all.find("asked for 700 mm") != std::string::npos);
}

TEST_CASE("What can't be one whole strip on the hull is told") {
    const core::LoftedHull hull = test::quarterPipe(300, 2400);
    const auto told = [&](Accent accent) {
        const auto plan = core::plank(pipeProject({accent}), hull);
        REQUIRE(plan);
        for (const core::Finding& f : plan->findings)
            if (f.code.starts_with("accent"))
                return f.code;
        return std::string();
    };
    CHECK(told({Accent::By::Girth, 700}) == "accent-off-hull");
    CHECK(told({Accent::By::Height, 100}) == "accent-off-hull");
    CHECK(told({Accent::By::Girth, 470.5}) == "accent-broken"); // the last plank
    CHECK(told({Accent::By::Girth, 100}) == "accent-row");
}

TEST_CASE("Tapers leave accent rows whole") {
    core::Project p = test::projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    p.planking.start = geodesic(0);
    p.planking.taper = core::Taper::Anywhere;
    p.planking.edgeBendRadius = 1 / 0.2e-3;
    p.planking.narrowest = 11;
    const test::Planked without = test::planked(p);
    REQUIRE(without.plan.tapers);
    REQUIRE(without.plan.tapers->touched > 0);
    int tapered = 0; // a row the tapers would have chosen
    for (const core::Strip& s : without.plan.strips)
        if (s.planed != core::PlanedEdge::None && s.row > 0)
            tapered = s.row;
    REQUIRE(tapered > 0);
    p.planking.accents = {{Accent::By::Girth, (tapered - 0.5) * p.strips.coverWidth}};
    const auto plan = core::plank(p, without.hull);
    REQUIRE(plan);
    REQUIRE(plan->accentRows == std::vector<int>{tapered});
    REQUIRE(plan->tapers);
    CHECK(plan->tapers->touched > 0);
    CHECK(plan->tapers->metFromBelow == without.plan.tapers->metFromBelow);
    for (const core::Strip* s : accentsOf(*plan))
        CHECK(s->planed == core::PlanedEdge::None);
}
