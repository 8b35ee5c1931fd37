#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/turned.hpp"

#include <algorithm>
#include <cmath>
#include <map>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// The same boat turned end for end must get the same planking, mirrored; and a boat twice the size, with
// strips twice the width, twice the planking.

namespace {

Project brindlewick() {
    return projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
}

std::map<std::string, const Strip*> byId(const Plan& plan) {
    std::map<std::string, const Strip*> map;
    for (const Strip& s : plan.strips)
        map[s.id] = &s;
    return map;
}

} // namespace

TEST_CASE("turned end for end: every strip is the mirror of its own") {
    const Project p = brindlewick();
    Project turned = turnedEndForEnd(p);
    std::swap(turned.planking.bowEnds, turned.planking.sternEnds);
    const Planked a = planked(p), b = planked(turned);
    CHECK_THAT(b.hull.laid.length, WithinAbs(a.hull.laid.length, 0.05));
    CHECK_THAT(b.hull.laid.halfArea, WithinRel(a.hull.laid.halfArea, 1e-5));
    CHECK(a.plan.lastRow == b.plan.lastRow);
    CHECK(a.plan.firstRow == b.plan.firstRow);
    CHECK(a.plan.marks.closingBow == b.plan.marks.closingStern);
    CHECK(a.plan.marks.closingStern == b.plan.marks.closingBow);
    // both plans count x from their own bow; a station and its mirror image tell the sum
    const double length = a.hull.stationX.front() + b.hull.stationX.back();
    const auto left = byId(a.plan), right = byId(b.plan);
    REQUIRE(left.size() == right.size());
    for (const auto& [id, s] : left) {
        if (!right.contains(id) || s->side != Side::Starboard)
            continue;
        const Strip& m = *right.at(id);
        INFO(id);
        // ends that run out along the keel at a few degrees move many times as far as the surface
        const double slack = s->ends[0].cut < 0.2 || s->ends[1].cut < 0.2 ? 0.5 : 0.05;
        CHECK_THAT(m.length, WithinAbs(s->length, slack));
        CHECK_THAT(length - m.ends[1].x, WithinAbs(s->ends[0].x, slack));
        CHECK_THAT(length - m.ends[0].x, WithinAbs(s->ends[1].x, slack));
        CHECK_THAT(m.ends[1].lap, WithinAbs(s->ends[0].lap, 0.05));
        CHECK_THAT(m.edgeBend.signedMin * 1e3, WithinAbs(s->edgeBend.signedMin * 1e3, 1e-3));
        CHECK_THAT(m.edgeBend.signedMax * 1e3, WithinAbs(s->edgeBend.signedMax * 1e3, 1e-3));
        CHECK_THAT(m.twistMax * 1e3, WithinAbs(s->twistMax * 1e3, 5e-3));
    }
}

TEST_CASE("a boat twice the size is planked alike with strips twice the width") {
    // on an exact surface, so that the loft's fixed margins do not enter
    Project small, large;
    small.strips = {3.0, 12.0, 10.0, "western-redcedar"};
    large.strips = {6.0, 24.0, 20.0, "western-redcedar"};
    small.planking.layOn = large.planking.layOn = LayOn::Moulds;
    small.planking.start = {StartLine::Kind::Geodesic, 120, {}};
    large.planking.start = {StartLine::Kind::Geodesic, 240, {}};
    const Plan a = plank(small, quarterSphere(600)).value(), b = plank(large, quarterSphere(1200)).value();
    const auto left = byId(a), right = byId(b);
    int compared = 0;
    for (const auto& [id, s] : left) {
        if (!right.contains(id) || s->kind != StripKind::Full)
            continue;
        ++compared;
        INFO(id);
        CHECK_THAT(right.at(id)->length, WithinAbs(2 * s->length, 0.3));
        CHECK_THAT(right.at(id)->edgeBend.signedMax, WithinAbs(s->edgeBend.signedMax / 2, 2e-6));
    }
    CHECK(compared > 40);
    CHECK(a.firstRow == b.firstRow);
}

TEST_CASE("laid at mid-thickness or outside, the same strips cover a little less of the hull") {
    Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    double before = 0, areaBefore = 0;
    for (const LayOn lay : {LayOn::Moulds, LayOn::MidThickness, LayOn::Outside}) {
        p.planking.layOn = lay;
        const Planked b = planked(p);
        // girth grows by about a quarter turn times the height (planking.md section 6: 614.9, 620.5, 626.0)
        if (before > 0)
            CHECK_THAT(b.hull.laid.halfGirthMax - before, WithinAbs(5.6, 0.5));
        before = b.hull.laid.halfGirthMax;
        CHECK(b.plan.coverage.hullArea > areaBefore);
        areaBefore = b.plan.coverage.hullArea;
        CHECK_THAT(b.plan.coverage.stripsArea, WithinRel(b.plan.coverage.hullArea, 5e-4));
        CHECK(b.plan.lastRow == static_cast<int>(std::ceil(before / p.strips.coverWidth)));
    }
}
