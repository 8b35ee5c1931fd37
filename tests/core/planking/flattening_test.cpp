#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;

namespace {

double along(const std::vector<Vector2d>& line, std::size_t from, std::size_t to) {
    double sum = 0;
    for (std::size_t i = from + 1; i < to; ++i)
        sum += (line[i] - line[i - 1]).norm();
    return sum;
}

const Planked& boat(const std::string& path) {
    static std::map<std::string, Planked> boats;
    const auto it = boats.find(path);
    return it != boats.end() ? it->second : boats.emplace(path, planked(projectAt(path))).first->second;
}

double signedArea(const std::vector<Vector2d>& p) {
    double sum = 0;
    for (std::size_t i = 0, k = p.size() - 1; i < p.size(); k = i++)
        sum += p[k].x() * p[i].y() - p[i].x() * p[k].y();
    return sum / 2;
}

} // namespace

TEST_CASE("laid flat, both edges keep their true length") {
    const std::string path = GENERATE(as<std::string>{},
                                      SHEERLAY_REFERENCE "/formula_canoe.sheerlay",
                                      SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay",
                                      SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    INFO(path);
    for (const Strip& s : boat(path).plan.strips) {
        if (s.side == Side::Centre)
            continue;
        INFO(s.id);
        REQUIRE(s.outlineUpperCount == s.upperEdge.size());
        REQUIRE(s.outline.size() == s.upperEdge.size() + s.lowerEdge.size());
        CHECK_THAT(along(s.outline, 0, s.outlineUpperCount), WithinAbs(lengthOf(s.upperEdge), 0.3));
        CHECK_THAT(along(s.outline, s.outlineUpperCount, s.outline.size()),
                   WithinAbs(lengthOf(s.lowerEdge), 0.3));
        // the ends too: from edge to edge across the strip
        CHECK_THAT((s.outline.front() - s.outline.back()).norm(),
                   WithinAbs((s.upperEdge.front() - s.lowerEdge.front()).norm(), 0.3));
        CHECK_THAT((s.outline[s.outlineUpperCount - 1] - s.outline[s.outlineUpperCount]).norm(),
                   WithinAbs((s.upperEdge.back() - s.lowerEdge.back()).norm(), 0.3));
    }
}

TEST_CASE("laid flat, a hard taper's edges keep their length too") {
    // along one edge alone the far one of this canoe's is off by 0.43 mm, the integral of K w^2 / 2
    Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay");
    p.planking.taper = Taper::Anywhere;
    p.planking.edgeBendRadius = 1000 / 0.15;
    p.planking.narrowest = 11.0;
    const Plan plan = planked(std::move(p)).plan;
    int planed = 0;
    for (const Strip& s : plan.strips) {
        if (s.side == Side::Centre)
            continue;
        INFO(s.id);
        planed += s.planed != PlanedEdge::None;
        CHECK_THAT(along(s.outline, 0, s.outlineUpperCount), WithinAbs(lengthOf(s.upperEdge), 0.15));
        CHECK_THAT(along(s.outline, s.outlineUpperCount, s.outline.size()),
                   WithinAbs(lengthOf(s.lowerEdge), 0.15));
    }
    CHECK(planed > 20); // both sides
}

TEST_CASE("the outline lies along its chord, bow to the left, keel side positive on starboard") {
    for (const Strip& s : boat(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").plan.strips) {
        if (s.side == Side::Centre)
            continue;
        INFO(s.id);
        const double sign = s.side == Side::Starboard ? 1 : -1;
        const double area = signedArea(s.outline);
        CHECK(sign * area >
              0); // upper edge first, then back along the lower one, which lies at the larger second
        // area of a strip: what its width covers
        if (s.kind == StripKind::Full && s.row < 20)
            CHECK_THAT(std::abs(area), WithinRel(17.0 * s.length, 2e-3));
        CHECK(s.outline.front().x() < s.outline[s.outlineUpperCount - 1].x());
    }
}

TEST_CASE("a flat strip bends as its edge bend says") {
    // sagitta of the flat middle over its chord: integral of the bend, here from the samples by Simpson-like
    // double integration, against the outline's own middle
    const Planked& b = boat(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    for (const Strip* s : stripsOf(b.plan, Side::Starboard)) {
        if (s->kind != StripKind::Full || s->row > 20 || s->row % 3 != 1)
            continue;
        INFO(s->id);
        Vector2d at(0, 0);
        double heading = 0;
        std::vector<Vector2d> flat = {at};
        for (std::size_t i = 1; i < s->samples.size(); ++i) {
            const double h = s->samples[i].s - s->samples[i - 1].s;
            const double turn = 0.5 * h * (s->samples[i].edgeBend + s->samples[i - 1].edgeBend);
            const double mid = heading + 0.5 * turn;
            at += h * Vector2d(std::cos(mid), std::sin(mid));
            heading += turn;
            flat.push_back(at);
        }
        const Vector2d chord = at.normalized();
        double lowest = 0, highest = 0;
        for (const Vector2d& p : flat) {
            const double off = chord.x() * p.y() - chord.y() * p.x();
            lowest = std::min(lowest, off);
            highest = std::max(highest, off);
        }
        double outLow = 1e9, outHigh = -1e9;
        for (std::size_t i = 0; i < s->outline.size(); ++i) {
            // edges lie half a width off the middle
            const double off = s->outline[i].y() + (i < s->outlineUpperCount ? 8.5 : -8.5);
            outLow = std::min(outLow, off);
            outHigh = std::max(outHigh, off);
        }
        CHECK_THAT(outHigh - outLow, WithinAbs(highest - lowest, 0.01 * (highest - lowest) + 2.0));
    }
}
