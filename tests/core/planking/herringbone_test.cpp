#include "core/planking/herringbone.hpp"
#include "core/planking/laying_order.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;

namespace {

/// Where the line through p along d meets the line through q along e.
Vector2d crossing(const Vector2d& p, const Vector2d& d, const Vector2d& q, const Vector2d& e) {
    const auto cross = [](const Vector2d& a, const Vector2d& b) { return a.x() * b.y() - a.y() * b.x(); };
    return p + d * (cross(q - p, e) / cross(d, e));
}

bool has(const Plan& plan, const std::string& code) {
    return std::any_of(
        plan.findings.begin(), plan.findings.end(), [&](const Finding& f) { return f.code == code; });
}

Plan canoe(ClosingMethod method) {
    Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    p.planking.closing = method;
    return planked(std::move(p)).plan;
}

} // namespace

TEST_CASE("runs and cuts of crossing strips are those of lines drawn on a flat bottom") {
    const double w = 17;
    for (const double beta : {0.06, 0.12, 0.25, 0.5}) {
        // centreline along x; both sides' lower edges meet at the origin, the strips lie ahead of it
        const Vector2d starboard(std::cos(beta), std::sin(beta)), port(std::cos(beta), -std::sin(beta));
        const Vector2d aside(-std::sin(beta), std::cos(beta)); // square to starboard, outward
        const Vector2d middle = 0.5 * w * aside;
        const Vector2d onLine = crossing(middle, starboard, {0, 0}, {1, 0});
        const Vector2d onPort = crossing(middle, starboard, {0, 0}, port); // cut along port's lower edge
        const Vector2d upper = crossing(w * aside, starboard, {0, 0}, port);
        const HerringboneEnd h = herringboneEnd(w, beta, std::numbers::pi);
        CHECK_THAT((onPort - onLine).norm(), WithinRel(h.run, 1e-9));
        CHECK((onPort - onLine).dot(starboard) > 0); // short of the centreline, which lies ahead
        CHECK_THAT(upper.norm(), WithinRel(w / std::sin(2 * beta), 1e-9)); // length of the cut
        CHECK_THAT(h.cut, WithinAbs(2 * beta, 1e-12));
        CHECK_THAT(h.standOff, WithinAbs(0, 1e-12));
        // the side laid first runs past, to starboard's edge one strip up, mirrored
        const Vector2d past = crossing({middle.x(), -middle.y()}, port, w * aside, starboard);
        const Vector2d portOnLine(onLine.x(), 0);
        CHECK_THAT((past - portOnLine).norm(), WithinRel(h.run, 1e-9));
    }
    // closing.md section 4: 8 mm at a dihedral of about 70 degrees from flat
    CHECK_THAT(herringboneEnd(17, 0.1, std::numbers::pi - 1.22).standOff, WithinAbs(8, 0.05));
}

TEST_CASE("only the flat of the bottom is laid in herringbone, and the rest is refused with the reason") {
    const Plan plain = canoe(ClosingMethod::BothSides);
    const Plan plan = canoe(ClosingMethod::Herringbone);
    REQUIRE(plan.herringboneFrom.has_value());
    CHECK(*plan.herringboneFrom >=
          plan.lastRow - 4); // closing.md: only the last two or three rows of the canoe
    CHECK(has(plan, "herringbone"));
    CHECK_FALSE(has(plan, "closing-not-laid"));
    for (std::size_t i = 0; i < plan.strips.size(); ++i) {
        const Strip& s = plan.strips[i];
        const auto before = std::find_if(
            plain.strips.begin(), plain.strips.end(), [&](const Strip& q) { return q.id == s.id; });
        if (before == plain.strips.end())
            continue;
        INFO(s.id);
        const bool crossing = s.row >= *plan.herringboneFrom && s.kind != StripKind::Shutter;
        CHECK((s.ends[0].on == EndsOn::Strip) == crossing);
        REQUIRE(s.ends[0].crossing.has_value() == crossing);
        if (crossing) {
            CHECK(s.ends[0].crossing->fixed);
            CHECK(s.ends[0].crossing->first == (s.side == firstSide(s.row)));
            CHECK(s.ends[0].runInner == (s.ends[0].crossing->first ? 1 : -1) * s.ends[0].crossing->past);
        }
        if (!crossing)
            CHECK_THAT(s.cutLength, WithinAbs(before->cutLength, 1e-9));
        else if (s.side == firstSide(s.row))
            CHECK(s.cutLength > before->cutLength + 10);
        else
            CHECK(s.cutLength < before->cutLength - 10);
    }
}

TEST_CASE("a V bottom gets no herringbone at all") {
    Plan plan;
    plan.coverWidth = 17;
    Strip s;
    s.id = "S09";
    s.row = 9;
    for (StripEnd& e : s.ends) {
        e.on = EndsOn::Keel;
        e.cut = 0.2;
        e.dihedral = 2.2;
    }
    plan.strips.push_back(s);
    layHerringbone(plan, Project{});
    CHECK_FALSE(plan.herringboneFrom.has_value());
    CHECK(has(plan, "herringbone-refused"));
    CHECK(plan.strips[0].ends[0].on == EndsOn::Keel);
}
