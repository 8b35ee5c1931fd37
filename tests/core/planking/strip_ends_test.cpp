#include "core/planking/strip_ends.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <Eigen/Geometry>

#include <cmath>
#include <map>
#include <numbers>
#include <string>

using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

constexpr double degrees = std::numbers::pi / 180, t = 6.35;

/// How far along `direction` from `from` the plane (point, normal) is met.
double reach(const Vector3d& from, const Vector3d& direction, const Vector3d& point, const Vector3d& normal) {
    return (point - from).dot(normal) / direction.dot(normal);
}

} // namespace

TEST_CASE("laps of the table in planking.md section 7, on the moulds") {
    struct Line {
        double dihedral, beta, lap;
    };
    // angles there are rounded to a degree
    for (const Line& l : {Line{45.4136, 52.1246, 11.2956}, // formula_canoe_rows.csv, rows 0, 9, 18 and 22
                          Line{46.6146, 45.1874, 12.3165},
                          Line{49.9483, 25.3010, 19.4107},
                          Line{77.6752, 9.0946, 41.1209}})
        CHECK_THAT(weaveLap({l.dihedral * degrees, l.beta * degrees, t, 0}).inner, WithinRel(l.lap, 1e-4));
    // section 1: 19 mm outer against 11 mm inner at the stem head
    CHECK_THAT(weaveLap({45.4136 * degrees, 52.1246 * degrees, t, 0}).outer, WithinAbs(19, 0.5));
}

TEST_CASE("two slabs that cross: both sides' laps by intersecting lines with the other side's faces") {
    for (const double dihedral : {30.0, 46.0, 75.0, 90.0})
        for (const double beta : {9.0, 25.0, 52.0, 90.0})
            for (const double height : {0.0, t / 2, t}) {
                // the stem is the z axis where the inner faces meet; sides run from it toward +x
                const double half = 0.5 * dihedral * degrees;
                const Vector3d inA(std::cos(half), std::sin(half), 0),
                    outA(-std::sin(half), std::cos(half), 0);
                const Vector3d outB(-std::sin(half), -std::cos(half), 0);
                const double b = beta * degrees;
                const Vector3d along = std::cos(b) * Vector3d::UnitZ() - std::sin(b) * inA; // past the stem
                // the laid surface of A ends on the centreplane; laps count along the strip from there
                Vector3d end = height * outA + 100 * inA;
                end += along * reach(end, along, Vector3d::Zero(), Vector3d::UnitY());
                const Vector3d inner = end - height * outA, outer = end + (t - height) * outA;
                const StemCorner corner{dihedral * degrees, b, t, height};
                INFO("dihedral " << dihedral << ", beta " << beta << ", laid " << height << " mm out");
                const WeaveLap lap = weaveLap(corner);
                CHECK_THAT(lap.inner, WithinAbs(reach(inner, along, t * outB, outB), 1e-9));
                CHECK_THAT(lap.outer, WithinAbs(reach(outer, along, t * outB, outB), 1e-9));
                // were A the side that is fitted, B's inner face would stop it
                const WeaveLap fitted = fittedLap(corner);
                CHECK_THAT(fitted.inner, WithinAbs(reach(inner, along, Vector3d::Zero(), outB), 1e-9));
                CHECK_THAT(fitted.outer, WithinAbs(reach(outer, along, Vector3d::Zero(), outB), 1e-9));
            }
}

TEST_CASE("ends of the canoe's strips: angles from the surface, and a length that covers them") {
    const Planked boat = planked(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    for (const Strip& s : boat.plan.strips) {
        INFO(s.id);
        double needed = s.length;
        for (std::size_t k = 0; k < 2; ++k) {
            const StripEnd& e = s.ends[k];
            CHECK(e.end == (k == 0 ? End::Bow : End::Stern));
            CHECK(e.cut >= 0);
            CHECK(e.cut <= 90 * degrees + 1e-9);
            CHECK(e.lap == std::max(e.lapInner, e.lapOuter));
            CHECK((e.on == EndsOn::Stem || e.on == EndsOn::Keel));
            CHECK((e.on == EndsOn::Stem) == (e.dihedral <= 90 * degrees));
            CHECK((e.lap > 0) == (e.on == EndsOn::Stem));
            CHECK((e.weave != Weave::None) == (e.lap > 0));
            CHECK(e.landing == 0.0);
            needed += std::max({e.runInner, e.runOuter, 0.0});
            if (s.side == Side::Centre)
                continue;
            const Vector3d& p = k == 0 ? s.middle.front() : s.middle.back();
            CHECK_THAT(e.x, WithinAbs(p.x(), 1e-6));
            CHECK_THAT(e.z, WithinAbs(p.z(), 1e-6));
            // the sides meet at 180 degrees less twice the normal's angle to the centreplane
            const Vector3d n = k == 0 ? s.middleNormal.front() : s.middleNormal.back();
            CHECK_THAT(e.dihedral, WithinAbs(180 * degrees - 2 * std::asin(std::abs(n.y())), 1e-6));
        }
        CHECK(s.cutLength > needed);
        CHECK(s.cutLength < needed + 900); // low angles need run-out, but not a boat's length
    }
}

TEST_CASE("in a woven row the side laid first passes at both ends, and the other is fitted and shorter") {
    for (const LayOn layOn : {LayOn::Moulds, LayOn::MidThickness}) {
        Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay");
        project.planking.layOn = layOn;
        const Planked boat = planked(project);
        std::map<std::string, const Strip*> port;
        for (const Strip* p : stripsOf(boat.plan, Side::Port))
            port[p->id.substr(1)] = p;
        int woven = 0;
        for (const Strip* s : stripsOf(boat.plan, Side::Starboard)) {
            const Strip& p = *port.at(s->id.substr(1));
            const Strip& first = p.order < s->order ? p : *s;
            const Strip& second = p.order < s->order ? *s : p;
            INFO(s->id);
            double differ = 0;
            for (std::size_t k = 0; k < 2; ++k) {
                const StripEnd &a = first.ends[k], &b = second.ends[k];
                CHECK(a.lap == b.lap);
                if (a.weave == Weave::None) {
                    CHECK(b.weave == Weave::None);
                    CHECK(a.runOuter == b.runOuter);
                    continue;
                }
                ++woven;
                CHECK(first.side == (s->row % 2 == 0 ? Side::Port : Side::Starboard));
                CHECK(a.weave == Weave::Passes);
                CHECK(b.weave == Weave::Fitted);
                CHECK(a.runInner == a.lapInner);
                CHECK(a.runOuter == a.lapOuter);
                // inner face against inner face: what is gained is the other side's thickness, slantwise
                CHECK_THAT(a.runInner - b.runInner,
                           WithinRel(t / std::sin(a.dihedral) / std::sin(a.cut), 1e-9));
                CHECK_THAT(a.runOuter - b.runOuter,
                           WithinRel(t / std::sin(a.dihedral) / std::sin(a.cut), 1e-9));
                differ += std::max({a.runInner, a.runOuter, 0.0}) - std::max({b.runInner, b.runOuter, 0.0});
            }
            CHECK_THAT(first.cutLength - second.cutLength, WithinAbs(differ, 1e-9));
        }
        CHECK(woven > 40);
    }
}

TEST_CASE("sin(half the strips' angle) = sin(half the dihedral) sin(beta)") {
    const Planked boat = planked(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    for (const Strip* s : stripsOf(boat.plan, Side::Starboard)) {
        if (s->row > 20)
            continue;
        // the strip's own direction at the bow, from its first two points, extrapolated half a step
        const Vector3d a = (s->middle[1] - s->middle[0]).normalized(),
                       b = (s->middle[2] - s->middle[1]).normalized();
        const double d0 = (s->middle[1] - s->middle[0]).norm(), d1 = (s->middle[2] - s->middle[1]).norm();
        const Vector3d tangent = (a - (b - a) * d0 / (d0 + d1)).normalized();
        INFO(s->id);
        CHECK_THAT(std::abs(tangent.y()),
                   WithinAbs(std::sin(s->ends[0].dihedral / 2) * std::sin(s->ends[0].cut), 2e-3));
    }
}

TEST_CASE(
    "where port runs over the keel line, its strips stay so far past it that their whole width reaches it") {
    Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    project.planking.closing = ClosingMethod::RunOver;
    const Plan plan = planked(project).plan;
    int port = 0, starboard = 0;
    for (const Strip& s : plan.strips)
        for (const StripEnd& e : s.ends) {
            INFO(s.id);
            if (e.on != EndsOn::Keel || s.kind == StripKind::Shutter || s.planedBack)
                continue;
            if (!e.crossing) { // rows still woven at the other end go to the line side by side
                CHECK(s.row <= std::max(plan.marks.weaveBow->last, plan.marks.weaveStern->last));
                continue;
            }
            CHECK_FALSE(e.crossing->fixed);
            CHECK(e.crossing->first == (s.side == Side::Port));
            CHECK_THAT(e.crossing->past,
                       WithinAbs(17.0 / (2 * std::tan(e.cut)) + 10, 1e-9)); // closing.md 4 (a)
            CHECK(s.cutLength >= s.length + e.crossing->past - 0.1);
            ++(s.side == Side::Port ? port : starboard);
        }
    CHECK(port > 20); // closing.md: 22 fitted points on the sheer-started canoe, both ends
    CHECK(port == starboard);
}
