#include "core/planking/start_line.hpp"
#include "core/planking/taper_field.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// Limits and touched strips of closing.md section 1 (w 17, narrowest 11), computed there by another program
// on another loft of the same hulls; few strips is a heuristic, so a fifth more is let pass where strips are
// many.

namespace {

const LoftedHull& hullOf(const std::string& name) {
    static std::map<std::string, LoftedHull> hulls;
    if (!hulls.contains(name))
        hulls[name] = loft(projectAt(std::string(SHEERLAY_REFERENCE) + "/" + name + ".sheerlay")).value();
    return hulls[name];
}

TaperedField solved(const std::string& hull,
                    double girth,
                    double limit,
                    geometry::FanSide side,
                    Taper where = Taper::Anywhere) {
    StartLine start;
    if (girth >= 0) {
        start.kind = StartLine::Kind::Geodesic;
        start.girth = girth;
    }
    const auto master = startLine(hullOf(hull).laid, start, taperSpacing).value();
    return taperField(hullOf(hull).laid, master, {17, 11, limit * 1e-3, where, side}).value();
}

constexpr auto down = geometry::FanSide::TowardKeel;
constexpr auto up = geometry::FanSide::TowardSheer;

Plan laid(const std::string& hull, double girth, double limit) {
    Project p = projectAt(std::string(SHEERLAY_REFERENCE) + "/" + hull + ".sheerlay");
    p.strips.coverWidth = 17;
    if (girth >= 0) {
        p.planking.start.kind = StartLine::Kind::Geodesic;
        p.planking.start.girth = girth;
    }
    p.planking.taper = Taper::Anywhere;
    p.planking.edgeBendRadius = 1000 / limit;
    p.planking.narrowest = 11;
    return plank(p, hullOf(hull)).value();
}

} // namespace

TEST_CASE("a limit the rows keep by themselves touches nothing") {
    const TaperedField f = solved("formula_canoe", 0, 0.40, down);
    CHECK(f.touched == 0);
    CHECK(f.rows.empty());
    CHECK_THAT(f.plainWorst, WithinAbs(0.373e-3, 0.01e-3)); // planking.md section 4
}

TEST_CASE("the canoe from a geodesic start meets its limits with few touched strips") {
    struct Case {
        double limit;
        int most;
    };
    const auto c = GENERATE(Case{0.30, 2}, Case{0.25, 4}, Case{0.20, 7}, Case{0.15, 20});
    const TaperedField f = solved("formula_canoe", 0, c.limit, down);
    INFO("limit " << c.limit << ", touched " << f.touched << ", worst " << f.worst * 1e3);
    CHECK(f.touched <= c.most);
    CHECK(f.touched >= 1);
    CHECK(f.worst <= c.limit * 1.01e-3);
    CHECK(f.metFrom == 1);
    for (const RowWidth& row : f.rows)
        for (const double w : row.width())
            CHECK(w <= 17.0001 * 1.2); // outside the hull the program has no say
}

TEST_CASE("from the sheer the start's own bend stays, and it is said from which edge the limit is met") {
    const TaperedField f = solved("formula_canoe", -1, 0.30, down);
    CHECK(f.metFrom == 2); // closing.md: met from edge 2 at 0.30, from edge 6 at 0.20
    CHECK(f.touched <= 9);
    CHECK(solved("formula_canoe", -1, 0.20, down).metFrom == 6);
}

TEST_CASE("the skiff meets its limits from the sheer and from the bilge") {
    struct Case {
        double girth, limit;
        int most;
    };
    const auto c = GENERATE(Case{-1, 0.40, 4},
                            Case{-1, 0.30, 7},
                            Case{-1, 0.25, 11},
                            Case{-1, 0.20, 22},
                            Case{353, 0.20, 4},
                            Case{353, 0.15, 9});
    TaperedField f = solved("formula_skiff", c.girth, c.limit, down);
    int touched = f.touched;
    CHECK(f.worst <= c.limit * 1.01e-3);
    if (c.girth >= 0) {
        f = solved("formula_skiff", c.girth, c.limit, up);
        CHECK(f.worst <= c.limit * 1.01e-3);
        touched += f.touched;
    }
    INFO("girth " << c.girth << ", limit " << c.limit << ", touched " << touched);
    CHECK(touched <= c.most);
}

TEST_CASE("ends only: no strip widens again toward its ends") {
    const TaperedField f = solved("formula_canoe", 0, 0.25, down, Taper::Ends);
    CHECK(f.worst <= 0.2525e-3);
    const double middle = 2438;
    for (const RowWidth& row : f.rows)
        for (std::size_t i = 1; i < row.u().size(); ++i) {
            if (std::abs(row.u()[i] - middle) < 200)
                continue; // the widest coefficient lies within a knot of the middle
            const double growth = row.width()[i] - row.width()[i - 1];
            CHECK((row.u()[i] > middle ? growth : -growth) < 0.02);
        }
}

TEST_CASE("the laid boat keeps the limit, the narrowest strip, and its seams") {
    struct Case {
        std::string hull;
        double girth, limit;
    };
    const auto c = GENERATE(
        Case{"formula_canoe", 0, 0.25}, Case{"formula_canoe", 261, 0.15}, Case{"formula_skiff", 353, 0.20});
    const Plan plan = laid(c.hull, c.girth, c.limit);
    INFO(c.hull << " " << c.girth << " " << c.limit);
    REQUIRE(plan.tapers.has_value());
    std::set<int> planed;
    for (const Strip& s : plan.strips) {
        if (s.side == Side::Port)
            continue;
        INFO(s.id);
        CHECK(s.edgeBend.maxAbs <= c.limit * 1.025e-3); // closing.md: up to 2 percent over when laid
        if (s.planed == PlanedEdge::None)
            continue;
        planed.insert(s.row);
        CHECK(s.planed == (s.row > 0 ? PlanedEdge::Lower : PlanedEdge::Upper));
        if (s.kind == StripKind::Tapered)
            for (const StripSample& sample : s.samples) {
                CHECK(sample.width <= 17.001);
                if (s.ends[0].on == EndsOn::Stem && s.ends[1].on == EndsOn::Stem)
                    CHECK(sample.width >= 10.9);
            }
    }
    CHECK(static_cast<int>(planed.size()) == plan.tapers->touched);
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-3));
    CHECK(plan.coverage.largestOverlap < 0.05);
}

TEST_CASE("solving twice gives the same widths") {
    const TaperedField a = solved("formula_canoe", 0, 0.25, down);
    const TaperedField b = solved("formula_canoe", 0, 0.25, down);
    REQUIRE(a.rows.size() == b.rows.size());
    for (std::size_t i = 0; i < a.rows.size(); ++i)
        CHECK(a.rows[i].width() == b.rows[i].width());
}
