#include "core/covering/glue.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <algorithm>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double pi = std::numbers::pi;

Fitout fitted(const Project& project, const LoftedHull& hull) {
    const auto fitout = planFitout(project, hull, Plan{}, [](const Fitout&) { return 1500.0; });
    REQUIRE(fitout);
    REQUIRE(fitout->has_value());
    return **fitout;
}

const GlueUse& named(const std::vector<GlueUse>& all, const std::string& what) {
    const auto found = std::ranges::find_if(all, [&](const GlueUse& g) { return g.what == what; });
    REQUIRE(found != all.end());
    return *found;
}

} // namespace

TEST_CASE("a fillet's section: square, blunt and sharp corners") {
    CHECK(filletSection(10, pi / 2) == Approx(100 * (1 - pi / 4)));
    // a regular polygon less its circle, a corner's share: n r^2 tan(pi/n) - pi r^2
    for (const int n : {3, 6})
        CHECK(filletSection(10, pi * (n - 2) / n) == Approx(100 * (n * std::tan(pi / n) - pi) / n));
}

TEST_CASE("an edge is glued along its bead, or straight where it has none") {
    StripStock strip;
    strip.thickness = 6;
    strip.width = 18;
    strip.coverWidth = 15; // a bead half as deep as the strip is thick: half a circle
    CHECK(gluedEdge(strip) == Approx(3 * pi));
    strip.coverWidth = 18;
    CHECK(gluedEdge(strip) == 6);
    strip.coverWidth = 17; // chord 6, rise 1: radius (9 + 1) / 2
    CHECK(gluedEdge(strip) == Approx(2 * 5 * std::asin(3.0 / 5.0)));
}

TEST_CASE("strips are glued along their lower edges; a centre piece has none of its own") {
    Project project;
    project.strips.coverWidth = project.strips.width; // square edges
    Plan plan;
    plan.strips.resize(2);
    for (Strip& strip : plan.strips)
        strip.lowerEdge = {{0, 100, 50}, {1000, 100, 50}};
    plan.strips[1].side = Side::Centre;
    const auto glue = planGlue(project, plan, std::nullopt);
    REQUIRE(glue.size() == 1);
    CHECK(glue[0].area == Approx(1000 * 6.35));
    CHECK_FALSE(glue[0].epoxy);
    // 175 g/m2, 1.12 kg/L, 15 percent of waste
    CHECK(glue[0].litres == Approx(1000 * 6.35e-6 * 0.175 / 1.12 * 1.15));
    CHECK(glue[0].mass == Approx(1000 * 6.35e-6 * 0.175 / 2));
    CHECK(glue[0].centre.x() == Approx(500));
}

TEST_CASE("in a pipe bulkhead, fillets and gunwales take what their lengths say") {
    Project project = test::bareFitout();
    project.fitout->gunwales = GunwaleChoices{};
    project.fitout->gunwales->inner = project.fitout->gunwales->outer = {20, 18};
    project.fitout->bulkheads.resize(1);
    project.fitout->bulkheads[0].thickness = 10;
    const LoftedHull pipe = test::quarterPipe(400, 3000);
    const Fitout fitout = fitted(project, pipe);
    const auto glue = planGlue(project, Plan{}, fitout);
    // a half circle of 400; square all round, so two fillets of a quarter
    CHECK(named(glue, "bulkheads and decks").area == Approx(400 * pi * 10).epsilon(1e-4));
    const double volume = 2 * 400 * pi * 12.7 * 12.7 * (1 - pi / 4);
    CHECK(named(glue, "fillets").mass == Approx(volume / 1e6).epsilon(1e-4));
    CHECK(named(glue, "fillets").litres == Approx(1.15 * volume / 1e6).epsilon(1e-4));
    CHECK(named(glue, "fillets").centre.z() == Approx(-2 * 400 / pi).epsilon(1e-3)); // of the half circle
    double scarfs = 0.0;
    for (const Gunwale* g : {&fitout.gunwales->inner, &fitout.gunwales->outer})
        scarfs += 2 * static_cast<double>(g->scarfs.size()) * 18 * std::hypot(g->scarf, 20);
    CHECK(named(glue, "gunwales and scarfs").area == Approx(4 * 3000 * 18 + scarfs).epsilon(1e-4));

    project.covering.emplace().fillet = 0;
    CHECK(std::ranges::none_of(planGlue(project, Plan{}, fitout),
                               [](const GlueUse& g) { return g.what == "fillets"; }));
    project.covering->glueSpread = 350;
    CHECK(named(planGlue(project, Plan{}, fitout), "bulkheads and decks").mass ==
          Approx(2 * named(glue, "bulkheads and decks").mass));
}
