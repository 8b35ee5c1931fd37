#include "core/planking/planking.hpp"
#include "core/planking/start_search.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// Issue 3: skiff and narrow hull within the figures of closing.md section 8. Those were computed on the
// formulas' own surfaces, ours on a loft of tables rounded to 1 mm, so edge bends agree to what rounding
// leaves open (planking.md section 2: 0.015 to 0.03 /m, here up to 0.05 where they are hardest). Not
// compared: twist, which is worst in the last hand's breadth of the stems, past the last stations; lengths,
// there "crude sums"; rows above the start, counted differently at the stem heads.

namespace {

constexpr double cover = 17.0;

struct Layout {
    std::string hull, start;
    int rowsDown = 0, over3 = 0, over2 = 0;
    double worst = 0, x = 0; // 1/m; mm from amidships
};

std::vector<Layout> layouts() {
    std::ifstream file(SHEERLAY_REFERENCE "/closing_hulls.csv");
    std::vector<Layout> list;
    bool header = true;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with('#'))
            continue;
        if (header) {
            header = false;
            continue;
        }
        std::vector<std::string> cells;
        std::stringstream cut(line);
        for (std::string cell; std::getline(cut, cell, ',');)
            cells.push_back(cell);
        list.push_back({cells.at(0),
                        cells.at(1),
                        std::stoi(cells.at(2)),
                        std::stoi(cells.at(7)),
                        std::stoi(cells.at(8)),
                        std::stod(cells.at(4)),
                        std::stod(cells.at(6))});
    }
    return list;
}

Project projectOf(const std::string& hull) {
    Project p = projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_" + hull + ".sheerlay");
    p.planking.layOn = LayOn::Moulds;
    p.planking.closing = ClosingMethod::RunOver; // no plank over both sides: plain rows to the end
    p.planking.taper = Taper::None;
    p.planking.shutter.reset();
    p.strips.coverWidth = cover;
    return p;
}

const LoftedHull& hullOf(const std::string& name) {
    static std::map<std::string, LoftedHull> hulls;
    if (!hulls.contains(name))
        hulls[name] = loft(projectOf(name)).value();
    return hulls[name];
}

/// Worst edge bend of every row's middles, and where the worst of all stands.
struct Bends {
    std::map<int, double> rows; // 1/m
    double worst = 0.0, x = 0.0;
    [[nodiscard]] int over(double limit) const {
        return static_cast<int>(
            std::count_if(rows.begin(), rows.end(), [&](const auto& row) { return row.second > limit; }));
    }
};

Bends bendsOf(const Plan& plan) {
    Bends bends;
    for (const Strip* s : stripsOf(plan, Side::Starboard)) {
        double& row = bends.rows[s->row];
        row = std::max(row, 1e3 * s->edgeBend.maxAbs);
        if (row > bends.worst) {
            bends.worst = row;
            bends.x = s->edgeBend.atX;
        }
    }
    return bends;
}

} // namespace

TEST_CASE("skiff and narrow hull: rows and their edge bends from the sheer and from geodesics") {
    const std::vector<Layout> all = layouts();
    REQUIRE(all.size() == 12);
    for (const Layout& there : all) {
        INFO(there.hull << " from " << there.start);
        Project p = projectOf(there.hull);
        const bool sheer = there.start == "sheer";
        if (!sheer) // "geodesic girth 353"
            p.planking.start = {
                StartLine::Kind::Geodesic, std::stod(there.start.substr(there.start.rfind(' '))), {}};
        const LoftedHull& hull = hullOf(there.hull);
        const Plan plan = plank(p, hull).value();
        const Bends here = bendsOf(plan);
        CHECK(std::abs(plan.lastRow - there.rowsDown) <= 1);
        CHECK_THAT(here.worst, WithinAbs(there.worst, std::max(0.03, 0.1 * there.worst)));
        CHECK(std::abs(here.over(0.3) - there.over3) <= (sheer ? 4 : 1));
        if (!sheer) // from the skiff's sheer all rows bend by about 0.2 somewhere
            CHECK(std::abs(here.over(0.2) - there.over2) <= 2);
        if (there.hull == "skiff" || sheer) { // elsewhere one place is as bad as another
            const double amidships = there.hull == "skiff" ? 3657.6 / 2 : 2590.8; // section 10
            const double x = there.hull == "skiff" ? amidships - there.x : amidships + std::abs(there.x);
            CHECK_THAT(here.x, WithinAbs(x, 100));
        }
    }
}

TEST_CASE("half girths of the skiff and the narrow hull are those of their formulas") {
    CHECK_THAT(hullOf("skiff").laid.halfGirthMax, WithinAbs(882, 2)); // closing.md section 10
    CHECK_THAT(hullOf("narrow").laid.halfGirthMax, WithinAbs(403, 2));
}

TEST_CASE("a strip that lands on the keel and reaches the transom runs into their corner") {
    const LoftedHull& hull = hullOf("skiff");
    const Plan plan = plank(projectOf("skiff"), hull).value();
    REQUIRE(hull.laid.trims.stern);
    const auto offTransom = [&](const Eigen::Vector3d& p) {
        return std::abs(p.x() - hull.laid.trims.stern->xAt(p.z()));
    };
    int strips = 0;
    for (const Strip* s : stripsOf(plan, Side::Starboard)) {
        if (offTransom(s->upperEdge.back()) > 0.05 || s->lowerEdge.back().y() > 0.05)
            continue;
        INFO(s->id);
        ++strips;
        CHECK(offTransom(s->lowerEdge.back()) < 0.05);
        CHECK(s->ends[1].on == EndsOn::Transom);
    }
    CHECK(strips == 1);
}

TEST_CASE("the skiff's easiest start lies in the bilge and halves the worst edge bend") {
    // closing.md section 8: 0.53 -> 0.24 at 0.40 of the half girth; bent lines 0.232 to 0.238 at 0.35 to 0.45
    const LoftedHull& hull = hullOf("skiff");
    const StartSearch search = searchStart(hull, projectOf("skiff").strips);
    REQUIRE_FALSE(search.candidates.empty());
    const StartCandidate& best = search.candidates[search.best];
    CHECK_FALSE(search.sheerWillDo);
    CHECK(best.worst <= 0.24e-3 + 0.03e-3);
    CHECK(best.worst < 0.5 * search.candidates.front().worst); // the sheer's
    CHECK(best.line.girth / hull.laid.halfGirthMax > 0.33);
    CHECK(best.line.girth / hull.laid.halfGirthMax < 0.47);
}
