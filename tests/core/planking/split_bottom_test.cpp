#include "core/planking/planking.hpp"
#include "core/planking/split_bottom.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

double distance(const Vector3d& p, const std::vector<Vector3d>& line) {
    double least = 1e300;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector3d d = line[i] - line[i - 1];
        const double f = std::clamp((p - line[i - 1]).dot(d) / d.squaredNorm(), 0.0, 1.0);
        least = std::min(least, (p - line[i - 1] - f * d).norm());
    }
    return least;
}

Plan split(Project p, double cover) {
    p.planking.closing = ClosingMethod::SplitBottom;
    p.strips.coverWidth = cover;
    return planked(std::move(p)).plan;
}

} // namespace

TEST_CASE("a split bottom fills the hull below its row with strips along the centreline") {
    for (const char* file : {"/formula_canoe.sheerlay", "/formula_canoe_geodesic.sheerlay"}) {
        const Plan plan = split(projectAt(std::string(SHEERLAY_REFERENCE) + file), 17);
        REQUIRE(plan.splitRow.has_value());
        const int m = *plan.splitRow;
        INFO(file << ", split at row " << m << " of " << plan.lastRow);
        CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 5e-4));
        CHECK(plan.coverage.largestGap < 0.5); // a piece at the sheer too thin to be wood
        std::map<int, std::vector<const Strip*>> rows;
        for (const Strip& s : plan.strips)
            if (s.side != Side::Port)
                rows[s.row].push_back(&s);
        for (int row = m; row <= plan.lastRow; ++row)
            REQUIRE(rows.contains(row));
        const Strip& above = *rows[m - 1].front();
        for (int row = m; row <= plan.lastRow; ++row)
            for (const Strip* s : rows[row]) {
                INFO(s->id);
                CHECK(s->kind != StripKind::Filler);
                CHECK(s->edgeBend.maxAbs <= plan.edgeBendLimit);
                for (const StripEnd& e : s->ends)
                    CHECK(e.on == EndsOn::Strip);
                // it lies against row m - 1 or against its neighbour above, never loose; chords of 20 mm
                for (const Vector3d& p : s->upperEdge) {
                    double least = distance(p, above.lowerEdge);
                    if (row > m)
                        for (const Strip* q : rows[row - 1])
                            least = std::min(least, distance(p, q->lowerEdge));
                    CHECK(least < 0.06);
                }
            }
        for (const Vector3d& p : rows[plan.lastRow].front()->lowerEdge)
            CHECK_THAT(p.y(), WithinAbs(0, 0.02)); // the last row runs along the centreline
        const auto shutters = std::count_if(plan.strips.begin(), plan.strips.end(), [](const Strip& s) {
            return s.kind == StripKind::Shutter;
        });
        CHECK(shutters >= 2);
    }
}

TEST_CASE("the row to split at is the first whose bottom bends no harder than the limit allows") {
    // closing.md section 4, sheer start at 17.2: below edge 24 the bottom's worst is 0.089 /m, below edge 23
    // 0.237, below edge 22 about 0.5. Ours counts the last centimetres before the points too, where the keel
    // line turns up fastest, so that it comes out harder and edge 23 is past the limit of 0.32.
    const Plan plan = split(projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay"), 17.2);
    REQUIRE(plan.splitRow.has_value());
    CHECK(*plan.splitRow == 25); // the table's edge 24 is the upper edge of row 25
    double worst = 0;
    for (const Strip& s : plan.strips)
        if (s.row >= *plan.splitRow)
            worst = std::max(worst, s.edgeBend.maxAbs);
    CHECK_THAT(worst, WithinAbs(0.089e-3, 0.06e-3));
}

TEST_CASE("where no row lands on a keel nothing is split off, and that is said") {
    Project p;
    p.strips.coverWidth = 20;
    p.planking.layOn = LayOn::Moulds;
    p.planking.closing = ClosingMethod::SplitBottom;
    const Plan plan = plank(p, quarterPipe(400, 3000)).value();
    CHECK_FALSE(plan.splitRow.has_value());
    CHECK(std::any_of(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
        return f.code == "bottom-not-split";
    }));
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-4));
}
