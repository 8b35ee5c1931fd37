#include "core/planking/planking.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/taper_field.hpp"
#include "core/planking/taper_trade.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <stop_token>
#include <string>
#include <utility>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// Limits and touched strips of closing.md section 1, computed there by another program on another loft of the
// same hulls. Few strips is a heuristic on both sides: a sixth more is let pass.

namespace {

constexpr double cover = 17, narrowest = 11; // mm
constexpr auto down = geometry::FanSide::TowardKeel;
constexpr auto up = geometry::FanSide::TowardSheer;

const LoftedHull& hullOf(const std::string& name) {
    static std::map<std::string, LoftedHull> hulls;
    if (!hulls.contains(name))
        hulls[name] =
            loft(projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_" + name + ".sheerlay")).value();
    return hulls[name];
}

StartLine startOf(const std::string& kind, double girth = 0) {
    StartLine start;
    if (kind != "sheer") {
        start.kind = kind == "bilge" ? StartLine::Kind::Bent : StartLine::Kind::Geodesic;
        start.girth = girth;
    }
    if (kind == "bilge")
        start.edgeBend = {0.069, 0.112, -0.145}; // planking.md, reference hull
    return start;
}

TaperedField solved(const std::string& hull,
                    const StartLine& start,
                    double limit,
                    geometry::FanSide side,
                    Taper where = Taper::Anywhere) {
    const auto master = startLine(hullOf(hull).laid, start, taperSpacing).value();
    TaperWish wish;
    wish.coverWidth = cover;
    wish.narrowest = narrowest;
    wish.limit = limit * 1e-3;
    wish.where = where;
    wish.side = side;
    return taperField(hullOf(hull).laid, master, wish).value();
}

struct Reference {
    std::string hull, start, sides, taper;
    double girth = 0, limit = 0;
    int touched = 0, metFrom = 0;
};

std::vector<Reference> references() {
    std::ifstream file(std::string(SHEERLAY_REFERENCE) + "/closing_tapers.csv");
    std::vector<Reference> list;
    bool header = true;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with('#'))
            continue;
        if (std::exchange(header, false))
            continue;
        std::vector<std::string> cell(8);
        std::istringstream in(line);
        for (std::string& c : cell)
            std::getline(in, c, ',');
        list.push_back({cell[0],
                        cell[1],
                        cell[3],
                        cell[5],
                        std::stod(cell[2]),
                        std::stod(cell[4]),
                        std::stoi(cell[6]),
                        std::stoi(cell[7])});
    }
    return list;
}

Plan laid(const std::string& hull, const StartLine& start, double limit) {
    Project p = projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_" + hull + ".sheerlay");
    p.strips.coverWidth = cover;
    p.planking.start = start;
    p.planking.taper = Taper::Anywhere;
    p.planking.edgeBendRadius = 1000 / limit;
    p.planking.narrowest = narrowest;
    return plank(p, hullOf(hull)).value();
}

} // namespace

TEST_CASE("a limit the rows keep by themselves touches nothing") {
    const TaperedField f = solved("canoe", startOf("geodesic"), 0.40, down);
    CHECK(f.touched == 0);
    CHECK(f.rows.empty());
    CHECK(f.met());
    CHECK_THAT(f.plainWorst, WithinAbs(0.373e-3, 0.01e-3)); // planking.md section 4
}

TEST_CASE("the limits of the reference are met with as few touched strips") {
    const auto all = references();
    REQUIRE(all.size() == 18);
    for (const Reference& r : all) {
        INFO(r.hull << " " << r.start << " " << r.girth << ", limit " << r.limit << ", " << r.taper);
        const StartLine start = startOf(r.start, r.girth);
        int touched = 0;
        for (const auto side : {down, up}) {
            if (side == up && r.sides != "both")
                continue;
            const TaperedField f =
                solved(r.hull, start, r.limit, side, r.taper == "ends" ? Taper::Ends : Taper::Anywhere);
            touched += f.touched;
            CHECK(f.touched ==
                  std::count_if(f.rows.begin(), f.rows.end(), [](const RowWidth& w) { return !w.full(); }));
            CHECK(f.metFrom <= r.metFrom);
            if (r.metFrom == 1)
                CHECK(f.worst <= r.limit * 1e-3);
            CHECK(f.worst < f.plainWorst);
            CHECK(f.wood > 0);
        }
        CHECK(touched >= 1);
        CHECK(touched <= std::ceil(r.touched * 7 / 6.0));
    }
}

TEST_CASE("from the sheer the start's own bend stays, and it is said from which edge the limit is met") {
    const TaperedField f = solved("canoe", startOf("sheer"), 0.20, down);
    CHECK_FALSE(f.met());
    CHECK(f.metFrom >= 2);
    CHECK(f.worst > 0.3e-3); // the first edges: 0.43 in the start itself
}

TEST_CASE("ends only: no strip widens again toward its ends") {
    const TaperedField f = solved("canoe", startOf("geodesic"), 0.25, down, Taper::Ends);
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
        StartLine start;
        double limit;
    };
    const std::vector<Case> cases = {{"canoe", startOf("geodesic"), 0.25},
                                     {"canoe", startOf("geodesic"), 0.20},
                                     {"canoe", startOf("geodesic", 261), 0.15},
                                     {"canoe", startOf("bilge", 261), 0.12},
                                     {"skiff", startOf("geodesic", 353), 0.20}};
    for (const Case& c : cases) {
        const Plan plan = laid(c.hull, c.start, c.limit);
        INFO(c.hull << " " << c.start.girth << " " << c.limit);
        REQUIRE(plan.tapers.has_value());
        std::set<int> planed;
        for (const Strip& s : plan.strips) {
            if (s.side == Side::Port)
                continue;
            INFO(s.id);
            CHECK(s.edgeBend.maxAbs <= c.limit * 1.03e-3); // closing.md: 0.154 laid for 0.15
            if (s.planed == PlanedEdge::None)
                continue;
            planed.insert(s.row);
            CHECK(s.planed == (s.row > 0 ? PlanedEdge::Lower : PlanedEdge::Upper));
            if (s.kind == StripKind::Tapered)
                for (const StripSample& sample : s.samples) {
                    CHECK(sample.width <= cover + 0.001);
                    if (s.ends[0].on == EndsOn::Stem && s.ends[1].on == EndsOn::Stem)
                        CHECK(sample.width >= narrowest - 0.03);
                }
        }
        CHECK(static_cast<int>(planed.size()) == plan.tapers->touched);
        CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-3));
        CHECK(plan.coverage.largestOverlap < 0.05);
    }
}

TEST_CASE("the trade: a lower limit costs more wood, and each point is the field itself") {
    const StartLine start = startOf("bilge", 261);
    const auto master = startLine(hullOf("canoe").laid, start, taperSpacing).value();
    TaperWish wish;
    wish.coverWidth = cover;
    wish.narrowest = narrowest;
    const std::vector<double> limits = {0.20e-3, 0.15e-3, 0.12e-3};
    const auto trade = taperTrade(hullOf("canoe").laid, master, wish, limits, {down, up}, 2);
    REQUIRE(trade.size() == limits.size());
    CHECK(trade[0].touched == 0); // the line's own worst is 0.187
    CHECK(trade[0].wood == 0.0);
    for (std::size_t i = 0; i < trade.size(); ++i) {
        CHECK(trade[i].limit == limits[i]);
        CHECK(trade[i].worst <= limits[i]);
        CHECK(trade[i].metFrom == 1);
        if (i > 0)
            CHECK(trade[i].wood > trade[i - 1].wood);
    }
    const TaperedField below = solved("canoe", start, 0.15, down);
    const TaperedField above = solved("canoe", start, 0.15, up);
    CHECK(trade[1].touched == below.touched + above.touched);
    CHECK(trade[1].wood == below.wood + above.wood);
    const auto alone = taperTrade(hullOf("canoe").laid, master, wish, limits, {down, up}, 1);
    for (std::size_t i = 0; i < trade.size(); ++i)
        CHECK(alone[i].wood == trade[i].wood);

    std::stop_source stop;
    stop.request_stop();
    CHECK(taperTrade(hullOf("canoe").laid, master, wish, {0.15e-3}, {down}, 1, stop.get_token()).empty());
}

TEST_CASE("another limit, solved from the last solution, is kept as well as when solved anew") {
    const auto master = startLine(hullOf("canoe").laid, startOf("geodesic"), taperSpacing).value();
    TaperWish wish;
    wish.coverWidth = cover;
    wish.narrowest = narrowest;
    wish.limit = 0.25e-3;
    wish.side = down;
    const TaperedField before = taperField(hullOf("canoe").laid, master, wish).value();
    wish.limit = 0.24e-3;
    const TaperedField again = taperField(hullOf("canoe").laid, master, wish, {}, &before).value();
    const TaperedField anew = taperField(hullOf("canoe").laid, master, wish).value();
    CHECK(again.met());
    CHECK(again.worst <= 1.02 * wish.limit);
    CHECK(again.plainWorst == anew.plainWorst);
    CHECK(again.touched <= anew.touched + 1);
    CHECK_THAT(again.wood, WithinRel(anew.wood, 0.2)); // few strips is a heuristic
    CHECK(again.wood > before.wood);
}

TEST_CASE("solving twice gives the same widths") {
    const TaperedField a = solved("canoe", startOf("geodesic"), 0.25, down);
    const TaperedField b = solved("canoe", startOf("geodesic"), 0.25, down);
    REQUIRE(a.rows.size() == b.rows.size());
    for (std::size_t i = 0; i < a.rows.size(); ++i)
        CHECK(a.rows[i].width() == b.rows[i].width());
}

TEST_CASE("where no tapers can be found the boat is laid at full width, and that is said") {
    Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    p.planking.taper = Taper::Anywhere;
    p.planking.narrowest = p.strips.coverWidth + 1; // no strip is as wide as that
    const Plan plan = plank(p, hullOf("canoe")).value();
    const auto has = [&](const char* code) {
        return std::any_of(
            plan.findings.begin(), plan.findings.end(), [&](const Finding& f) { return f.code == code; });
    };
    CHECK(has("taper-not-found"));
    CHECK_FALSE(has("no-taper-needed"));
    CHECK_FALSE(plan.tapers.has_value());
    CHECK(std::none_of(plan.strips.begin(), plan.strips.end(), [](const Strip& strip) {
        return strip.planed != PlanedEdge::None;
    }));
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-3));
}
