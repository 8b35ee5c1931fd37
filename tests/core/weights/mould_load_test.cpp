#include "core/weights/mould_load.hpp"
#include "tests/support/catch.hpp"

#include <string>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

/// A strip of even width from 0 to 3000, sampled every 10 mm, on four moulds; one of them stands further off.
struct Straight {
    Project project;
    Plan plan;
    MouldSet moulds;

    Straight() {
        project.strips.thickness = 6;
        project.strips.wood = "western-redcedar";
        Strip strip;
        strip.row = 1;
        for (int i = 0; i <= 300; ++i) {
            StripSample sample;
            sample.s = 10.0 * i;
            sample.width = 20;
            strip.samples.push_back(sample);
            strip.middle.push_back({10.0 * i, 100, 50});
        }
        plan.strips = {strip};
        for (const double x : {500.0, 1000.0, 2000.0, 2500.0}) {
            Mould m;
            m.name = std::to_string(static_cast<int>(x));
            m.x = x;
            m.thickness = 18;
            m.outline = {{0, 0}, {300, 0}, {300, 200}, {0, 200}};
            moulds.moulds.push_back(m);
        }
    }
};

} // namespace

TEST_CASE("each mould carries half of the bays beside it, the last ones what stands out beyond") {
    const Straight s;
    const OnMoulds on = weighOnMoulds(s.project, s.plan, s.moulds, {}, std::nullopt);
    const double perMm = on.hull.mass / 3000;
    CHECK(on.hull.mass == Approx(plankingWeight(s.project, s.plan).mass));
    REQUIRE(on.loads.size() == 4);
    CHECK(on.loads[0].hull == Approx(perMm * (500 + 250)).epsilon(1e-3));
    CHECK(on.loads[1].hull == Approx(perMm * (250 + 500)).epsilon(1e-3));
    CHECK(on.loads[2].hull == Approx(perMm * (500 + 250)).epsilon(1e-3));
    CHECK(on.loads[3].hull == Approx(perMm * (250 + 500)).epsilon(1e-3));
    double all = 0.0;
    for (const MouldLoad& m : on.loads)
        all += m.hull;
    CHECK(all == Approx(on.hull.mass));
    CHECK(on.hull.centre.x() == Approx(1500));
    // a mould is sawn twice the half outline: 2 x 0.3 x 0.2 x 0.018 m of plywood at 550 kg/m3 (from memory)
    CHECK(on.loads[0].board == Approx(2 * 0.3 * 0.2 * 0.018 * 550));
    CHECK(on.boards == Approx(4 * on.loads[0].board));
    CHECK(on.strongback() == Approx(on.boards + on.hull.mass));
}

TEST_CASE("the strips' glue and what covers the outside are on her, the inside and the fit-out are not") {
    const Straight s;
    GlueUse strips, gunwales;
    strips.epoxy = false;
    strips.mass = 0.4;
    strips.centre = {1500, 0, 50};
    gunwales.mass = 0.7;
    CoveringPlan covering;
    covering.faces.resize(2);
    covering.faces[0].name = "outside";
    covering.faces[0].glassMass = 1.0;
    covering.faces[0].resinMass = 2.0;
    covering.faces[0].varnishMass = 9.0;
    covering.faces[0].face.centre = {2100, 0, 50};
    covering.faces[1].name = "inside";
    covering.faces[1].resinMass = 9.0;
    const double bare = plankingWeight(s.project, s.plan).mass;
    const OnMoulds on = weighOnMoulds(s.project, s.plan, s.moulds, {strips, gunwales}, covering);
    CHECK(on.hull.mass == Approx(bare + 0.4 + 3.0));
    CHECK(on.hull.centre.x() == Approx((1500 * (bare + 0.4) + 2100 * 3.0) / on.hull.mass));
    double all = 0.0;
    for (const MouldLoad& m : on.loads)
        all += m.hull;
    CHECK(all == Approx(on.hull.mass));
}

TEST_CASE("nothing laid, nothing carried") {
    const OnMoulds on = weighOnMoulds(Project{}, Plan{}, MouldSet{}, {}, std::nullopt);
    CHECK(on.hull.mass == 0.0);
    CHECK(on.loads.empty());
}
