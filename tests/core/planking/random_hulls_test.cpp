#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/random_hull.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// Issue 3: what must hold on any plausible boat. 200 seeds in four cases, so that they run side by side.

namespace {

double lengthOf(const std::vector<Vector3d>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum += (line[i] - line[i - 1]).norm();
    return sum;
}

/// Line through the vertices with four times as many, by the cubic through four neighbours.
std::vector<Vector3d> finer(const std::vector<Vector3d>& line) {
    std::vector<Vector3d> fine;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Vector3d& a = line[i];
        const Vector3d& b = line[i + 1];
        const double h = (b - a).norm();
        const auto slope = [&](std::size_t k) -> Vector3d {
            if (k == 0 || k + 1 == line.size())
                return (b - a) / h;
            const double h0 = (line[k] - line[k - 1]).norm(), h1 = (line[k + 1] - line[k]).norm();
            return ((line[k] - line[k - 1]) / h0 * h1 + (line[k + 1] - line[k]) / h1 * h0) / (h0 + h1);
        };
        const Vector3d sa = slope(i) * h, sb = slope(i + 1) * h;
        for (int j = 0; j < 4; ++j) {
            const double t = j / 4.0, t2 = t * t, t3 = t2 * t;
            fine.push_back((2 * t3 - 3 * t2 + 1) * a + (t3 - 2 * t2 + t) * sa + (3 * t2 - 2 * t3) * b +
                           (t3 - t2) * sb);
        }
    }
    fine.push_back(line.back());
    return fine;
}

double distance(const Vector3d& p, const std::vector<Vector3d>& line) {
    double least = 1e300;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector3d d = line[i] - line[i - 1];
        const double f =
            d.squaredNorm() > 0 ? std::clamp((p - line[i - 1]).dot(d) / d.squaredNorm(), 0.0, 1.0) : 0.0;
        least = std::min(least, (p - line[i - 1] - f * d).norm());
    }
    return least;
}

bool has(const Plan& plan, const std::string& code) {
    return std::any_of(
        plan.findings.begin(), plan.findings.end(), [&](const Finding& f) { return f.code == code; });
}

void checkStrip(const Strip& s, const Project& p, const LoftedHull& hull, const Plan& plan, bool whole) {
    INFO(s.id);
    const double w = plan.coverWidth;
    REQUIRE(s.upperEdge.size() >= 2);
    REQUIRE(s.lowerEdge.size() >= 2);
    double widest = 0;
    bool finite = true;
    for (const StripSample& sample : s.samples) {
        finite = finite && std::isfinite(sample.edgeBend) && std::isfinite(sample.twist);
        widest = std::max(widest, sample.width);
    }
    CHECK(finite);
    CHECK(widest <= (s.side == Side::Centre ? 1.001 * w : w + 0.01));
    // flat it has the edges it has on the hull, but for what double curvature stretches: K w^2 / 8 of the
    // length
    if (s.side != Side::Centre && s.outlineUpperCount > 1) {
        double flat = 0;
        for (std::size_t i = 1; i < s.outlineUpperCount; ++i)
            flat += (s.outline[i] - s.outline[i - 1]).norm();
        // where the edge above a split bottom lands close to the corner of keel and transom, tips are off by
        // up to 4 mm
        const bool corner = plan.splitRow && s.row >= *plan.splitRow && !p.hull.transoms.empty();
        CHECK_THAT(flat, WithinAbs(lengthOf(s.upperEdge), 0.3 + 2.5e-4 * flat + (corner ? 4 : 0)));
    }
    for (const StripEnd& e : s.ends) {
        const Vector3d& tip = e.end == End::Bow ? s.middle.front() : s.middle.back();
        if (whole && (e.on == EndsOn::Stem || e.on == EndsOn::Keel))
            CHECK_THAT(std::abs(tip.y()), WithinAbs(hull.laid.trims.siding.at(tip.x()), 0.05));
        if (e.on == EndsOn::Transom) {
            const auto& plane = e.end == End::Bow ? hull.laid.trims.bow : hull.laid.trims.stern;
            REQUIRE(plane.has_value());
            CHECK_THAT(tip.x(), WithinAbs(plane->xAt(tip.z()), 0.05));
        }
        CHECK(e.cut >= 0);
        CHECK(e.cut <= 1.5708);
    }
    if (p.planking.taper != Taper::None && s.edgeBend.maxAbs > 1.02 * plan.edgeBendLimit)
        CHECK((has(plan, "edge-bend-over-limit")));
}

void checkBoat(unsigned seed) {
    const auto project = randomBoat(seed);
    if (!project)
        return;
    const auto hull = loft(*project);
    if (!hull) {
        CHECK_FALSE(hull.error().text.empty()); // refused in words
        return;
    }
    const auto laid = plank(*project, *hull);
    if (!laid) {
        CHECK_FALSE(laid.error().text.empty());
        return;
    }
    const Plan& plan = *laid;
    const bool whole = !has(plan, "rows-fold") && !has(plan, "uncovered");
    INFO("seed " << seed << ", rows " << plan.firstRow << " to " << plan.lastRow);
    std::map<int, std::vector<const Strip*>> rows;
    std::map<std::string, const Strip*> byId;
    for (const Strip& s : plan.strips) {
        byId[s.id] = &s;
        if (s.side != Side::Port)
            rows[s.row].push_back(&s);
        checkStrip(s, *project, *hull, plan, whole);
    }
    if (whole)
        CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-3));
    CHECK(plan.coverage.largestOverlap < 0.05);
    CHECK(plan.coverage.largestGap < 0.5); // less than half a millimetre is no wood, and is left out
    for (const Strip& s : plan.strips) {
        if (s.side != Side::Starboard)
            continue;
        std::string mirror = s.id;
        mirror.front() = 'P';
        const auto port = byId.find(mirror);
        REQUIRE(port != byId.end());
        double unlike = 0;
        for (std::size_t i = 0; i < s.upperEdge.size(); ++i)
            unlike = std::max(unlike,
                              (port->second->upperEdge[i] -
                               Vector3d(s.upperEdge[i].x(), -s.upperEdge[i].y(), s.upperEdge[i].z()))
                                  .norm());
        CHECK(unlike < 1e-9);
        // its upper edge lies on the one above
        const int above = s.row - 1 == 0 ? -1 : s.row - 1;
        if (s.row == 1 || !rows.contains(above) || (plan.splitRow && s.row >= *plan.splitRow))
            continue;
        std::vector<std::vector<Vector3d>> lower;
        for (const Strip* q : rows[above])
            lower.push_back(finer(q->lowerEdge));
        if (s.kind != StripKind::Stealer) // or on the stealer of its own row
            for (const Strip* q : rows[s.row])
                if (q->kind == StripKind::Stealer)
                    lower.push_back(finer(q->lowerEdge));
        if (s.kind == StripKind::Filler)
            continue; // its upper edge is the sheer in part
        for (std::size_t i = 3; i + 3 < s.upperEdge.size(); i += 7) {
            double least = 1e300;
            for (const auto& line : lower)
                least = std::min(least, distance(s.upperEdge[i], line));
            INFO(s.id << " at x " << s.upperEdge[i].x());
            CHECK(least < 0.05);
        }
    }
}

} // namespace

TEST_CASE("random boats 0 to 49 keep what must hold on any boat") {
    for (unsigned seed = 0; seed < 50; ++seed)
        checkBoat(seed);
}
TEST_CASE("random boats 50 to 99 keep what must hold on any boat") {
    for (unsigned seed = 50; seed < 100; ++seed)
        checkBoat(seed);
}
TEST_CASE("random boats 100 to 149 keep what must hold on any boat") {
    for (unsigned seed = 100; seed < 150; ++seed)
        checkBoat(seed);
}
TEST_CASE("random boats 150 to 199 keep what must hold on any boat") {
    for (unsigned seed = 150; seed < 200; ++seed)
        checkBoat(seed);
}
