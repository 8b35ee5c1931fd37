#include "core/planking/row_layer.hpp"
#include "core/planking/start_line.hpp"
#include "core/project/wood.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

// Tapered rows on a quarter pipe: unrolled it is a rectangle, so every edge is a curve in a plane.

namespace {

constexpr double R = 400, length = 3000, w = 20;

Vector2d unrolled(const Vector3d& p) {
    return {p.x(), std::atan2(-p.z(), p.y()) * R};
}

/// Full at the ends, 5 mm narrower amidships.
double taper(double x) {
    const double c = std::sin(std::numbers::pi * x / length);
    return w - 5 * c * c;
}

RowWidth tapered() {
    std::vector<double> u, width;
    for (double x = -200; x <= length + 200; x += 25) {
        u.push_back(x);
        width.push_back(taper(x));
    }
    return RowWidth(u, width);
}

struct Laid {
    LoftedHull hull = quarterPipe(R, length);
    Project project;
    Plan plan;

    explicit Laid(const std::vector<RowWidth>& widths) {
        project.strips.coverWidth = w;
        project.planking.layOn = LayOn::Moulds;
        const Strength strength(*findWood(project.strips.wood), 6.35, 19);
        const LayingContext context{&project, &hull, &hull.laid, &strength, 305};
        RowLayer layer(context, plan);
        layer.rows({startLine(hull.laid, project.planking.start, columnSpacing).value(), columnSpacing},
                   geometry::FanSide::TowardKeel,
                   widths);
        layer.finish();
    }
    [[nodiscard]] const Strip& row(int row) const {
        return *std::find_if(plan.strips.begin(), plan.strips.end(), [row](const Strip& s) {
            return s.row == row && s.side == Side::Starboard;
        });
    }
};

/// Shortest distance from a point to a polyline, with the foot between vertices taken on a parabola's chord.
double distance(const Vector2d& p, const std::vector<Vector3d>& line) {
    double least = 1e300;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector2d a = unrolled(line[i - 1]);
        const Vector2d d = unrolled(line[i]) - a;
        const double f = std::clamp((p - a).dot(d) / d.squaredNorm(), 0.0, 1.0);
        least = std::min(least, (p - a - f * d).norm());
    }
    return least;
}

} // namespace

TEST_CASE("a tapered row's far edge lies where its widths say, and carries their bend") {
    const Laid laid({RowWidth(), tapered()});
    const Strip& second = laid.row(2);
    CHECK(second.kind == StripKind::Tapered);
    CHECK(second.planed == PlanedEdge::Lower);
    CHECK(laid.row(1).planed == PlanedEdge::None);
    for (const Vector3d& p : second.lowerEdge)
        CHECK_THAT(unrolled(p).y(), WithinAbs(w + taper(p.x()), 1e-3));
    for (const Vector3d& p : second.upperEdge)
        CHECK_THAT(unrolled(p).y(), WithinAbs(w, 1e-4));
    for (const StripSample& s : second.samples)
        CHECK_THAT(s.width, WithinAbs(taper(s.x), 5e-3));
    // a tapered strip lies to the edge that was not cut: straight here
    CHECK(second.edgeBend.maxAbs < 1e-8);
    // the next one lies parallel to the cut edge: curvature of w + taper(x) amidships, toward the keel
    const double amidships = 10 * std::pow(std::numbers::pi / length, 2);
    const Strip& third = laid.row(3);
    CHECK(third.kind == StripKind::Full);
    CHECK_THAT(third.edgeBend.signedMax, WithinRel(amidships, 5e-3));
}

TEST_CASE("full rows after a tapered one keep their width square to its cut edge") {
    const Laid laid({RowWidth(), tapered(), RowWidth(), RowWidth(), tapered()});
    for (const int row : {3, 4, 6, 7, 20}) {
        const Strip& s = laid.row(row);
        INFO("row " << row);
        for (std::size_t i = 2; i + 2 < s.lowerEdge.size(); i += 5)
            CHECK_THAT(distance(unrolled(s.lowerEdge[i]), s.upperEdge),
                       WithinAbs(w, 0.02)); // chords of 20 mm
        const Strip& above = laid.row(row - 1);
        for (std::size_t i = 2; i + 2 < s.upperEdge.size(); i += 5)
            CHECK(distance(unrolled(s.upperEdge[i]), above.lowerEdge) < 0.02); // neighbours meet
    }
    const auto& c = laid.plan.coverage;
    CHECK_THAT(c.stripsArea, WithinRel(c.hullArea, 1e-4));
    CHECK(c.largestGap < 0.05);
    CHECK(c.largestOverlap < 0.05);
}

TEST_CASE("a tapered strip laid flat has its uncut edge's length and its own widths") {
    const Laid laid({tapered()});
    const Strip& s = laid.row(1);
    REQUIRE(s.outlineUpperCount > 10);
    for (std::size_t i = 0; i < s.outlineUpperCount; ++i)
        CHECK_THAT(s.outline[i].y() - s.outline[0].y(), WithinAbs(0, 0.02)); // the sheer here is straight
    CHECK_THAT(s.outline[s.outlineUpperCount - 1].x() - s.outline[0].x(), WithinAbs(length, 0.02));
    for (std::size_t i = s.outlineUpperCount; i < s.outline.size(); ++i)
        CHECK_THAT(s.outline[i].y() - s.outline[0].y(), WithinAbs(taper(s.outline[i].x()), 0.02));
}
