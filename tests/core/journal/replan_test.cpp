#include "core/journal/planned_girth.hpp"
#include "core/journal/replan.hpp"
#include "core/planking/landing.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

struct Canoe {
    Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    LoftedHull hull = loft(project).value();
    Plan plan = plank(project, hull).value();
};

const Canoe& canoe() {
    static const Canoe one;
    return one;
}

MeasuredEdge edgeAt(int row, double offset) {
    MeasuredEdge e;
    e.row = row;
    for (double x = 0; x <= 4900; x += 25) {
        e.x.push_back(x);
        e.offset.push_back(offset);
    }
    return e;
}

const Strip& starboard(const Plan& plan, int row) {
    return *std::find_if(plan.strips.begin(), plan.strips.end(), [row](const Strip& s) {
        return s.row == row && s.side != Side::Port;
    });
}

/// Distance from a point to the curve through a polyline's vertices (parabola through three of them).
double distance(const Vector3d& p, const std::vector<Vector3d>& line) {
    std::size_t nearest = 1;
    for (std::size_t i = 1; i + 1 < line.size(); ++i)
        if ((line[i] - p).norm() < (line[nearest] - p).norm())
            nearest = i;
    const Vector3d a = (line[nearest + 1] - line[nearest - 1]) / 2;
    const Vector3d b = (line[nearest + 1] - 2 * line[nearest] + line[nearest - 1]) / 2;
    const auto at = [&](double t) { return (line[nearest] + t * a + t * t * b - p).norm(); };
    double best = 0;
    for (double step = 0.1; step > 1e-6; step /= 10)
        for (double t = best - 10 * step; t <= best + 10 * step; t += step / 2)
            if (at(t) < at(best))
                best = t;
    const double least = at(best);
    return least;
}

/// The tape at every station, as if row `row` lay `low` mm nearer the keel than planned.
RowReading readingOf(const Plan& plan, int row, double low) {
    RowReading reading;
    reading.row = row;
    for (const double x : canoe().hull.stationX)
        if (const auto girth = plannedGirthLeft(plan, canoe().hull, row, x)) {
            GirthLeft left;
            left.x = x - canoe().hull.xShift;
            left.girth = girth->left - low;
            reading.girthLeft.push_back(left);
        }
    REQUIRE(reading.girthLeft.size() > 8);
    return reading;
}

double widestShutter(const Plan& plan) {
    double most = 0;
    for (const Strip& s : plan.strips)
        if (s.kind == StripKind::Shutter)
            most = std::max(most, widest(s));
    return most;
}

/// From the geodesic at the sheer with tapers for 0.25 /m.
Project taperedCanoe() {
    Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay");
    p.planking.taper = Taper::Anywhere;
    p.planking.edgeBendRadius = 4000;
    p.planking.narrowest = 11.0;
    return p;
}

} // namespace

TEST_CASE("planned anew from its own edges a plan reproduces itself within 0.01 mm") {
    const Canoe& c = canoe();
    for (const int row : {5, 20, 30}) {
        const Plan again = replan(c.project, c.hull, c.plan, edgeAt(row, 0.0), c.plan.coverWidth).value();
        REQUIRE(again.lastRow == c.plan.lastRow);
        REQUIRE(again.strips.size() == c.plan.strips.size());
        INFO("from row " << row);
        for (int r = row + 1; r < c.plan.lastRow; r += 3) {
            const Strip& a = starboard(c.plan, r);
            const Strip& b = starboard(again, r);
            CHECK_THAT(b.length, WithinAbs(a.length, 0.05));
            CHECK_THAT(b.edgeBend.maxAbs, WithinAbs(a.edgeBend.maxAbs, 2e-6));
            double worst = 0;
            for (std::size_t i = 4; i + 4 < b.lowerEdge.size(); i += 11) {
                const double d = distance(b.lowerEdge[i], a.lowerEdge);
                if (d < 1)
                    worst = std::max(worst, d);
            }
            CHECK(worst < 0.01);
        }
        CHECK_THAT(shutterRemainder(again), WithinAbs(shutterRemainder(c.plan), 0.01));
        CHECK(starboard(again, row).planed == PlanedEdge::None);
        CHECK(starboard(again, row).kind == StripKind::Full);
    }
}

TEST_CASE("an edge that lies lower leaves that much less for the last plank; wider strips leave less still") {
    const Canoe& c = canoe();
    const double before = shutterRemainder(c.plan);
    const Plan lower = replan(c.project, c.hull, c.plan, edgeAt(20, 1.5), c.plan.coverWidth).value();
    CHECK_THAT(before - shutterRemainder(lower), WithinAbs(1.5, 0.05)); // dr/dv0 = -1
    CHECK_THAT(lower.coverage.stripsArea, WithinRel(lower.coverage.hullArea, 1e-3));
    const int left = c.plan.lastRow - 1 - 20; // whole rows still to lay
    const Plan wider = replan(c.project, c.hull, c.plan, edgeAt(20, 0), c.plan.coverWidth + 0.05).value();
    CHECK_THAT(before - shutterRemainder(wider), WithinAbs(0.05 * left, 0.05)); // dr/dw = -n
    for (const StripSample& s : starboard(wider, 25).samples)
        CHECK_THAT(s.width, WithinAbs(c.plan.coverWidth + 0.05, 1e-6));
}

TEST_CASE("a bottom planked by itself is split off anew below the measured edge") {
    const Canoe& c = canoe();
    Project p = c.project;
    p.planking.closing = ClosingMethod::SplitBottom;
    const Plan plan = plank(p, c.hull).value();
    REQUIRE(plan.splitRow.has_value());
    const Plan same = replan(p, c.hull, plan, edgeAt(10, 0.0), plan.coverWidth).value();
    REQUIRE(same.splitRow == plan.splitRow);
    REQUIRE(same.strips.size() == plan.strips.size());
    for (int r = 11; r < *plan.splitRow; r += 3)
        CHECK_THAT(starboard(same, r).length, WithinAbs(starboard(plan, r).length, 0.05));
    // 3 mm lower: the crescent at the split is so much narrower, the strips along the centreline stay
    const Plan lower = replan(p, c.hull, plan, edgeAt(10, 3.0), plan.coverWidth).value();
    REQUIRE(lower.splitRow == plan.splitRow);
    CHECK_THAT(lower.coverage.stripsArea, WithinRel(lower.coverage.hullArea, 1e-3));
    const Strip& keelStrip = starboard(plan, plan.lastRow);
    const Strip& keelStripAfter = starboard(lower, lower.lastRow);
    CHECK(keelStripAfter.length < keelStrip.length); // pointed earlier against the row that came lower
    // a row of the bottom itself changes nothing
    const Plan late = replan(p, c.hull, plan, edgeAt(*plan.splitRow + 1, 3.0), plan.coverWidth).value();
    CHECK(late.strips.size() == plan.strips.size());
    CHECK(starboard(late, *plan.splitRow - 1).length == starboard(plan, *plan.splitRow - 1).length);
}

TEST_CASE("readings in the journal change the plan, and the findings say so") {
    const Canoe& c = canoe();
    Project p = c.project;
    p.journal.readings = {readingOf(c.plan, 0, 0.0), readingOf(c.plan, 20, 2.0)};
    const PlanAsLaid asLaid = plankAsLaid(p, c.hull).value();
    REQUIRE(asLaid.laid.has_value());
    CHECK(asLaid.laid->row == 20);
    // 2 mm lower, and the strips are found to cover a little more: so much less is left below row 20
    const double cover = c.plan.coverWidth + asLaid.laid->ahead.value;
    CHECK(asLaid.laid->excess.value > 0.03);
    CHECK(asLaid.laid->excess.value < 0.1); // 2 mm over 20 rows, drawn toward nothing
    const double planned = (c.plan.lastRow - 21) * c.plan.coverWidth + shutterRemainder(c.plan);
    const double anew = (asLaid.plan.lastRow - 21) * cover + shutterRemainder(asLaid.plan);
    CHECK_THAT(planned - anew, WithinAbs(2.0, 0.1));
    // what is laid out for the last plank is what the journal forecasts
    REQUIRE(asLaid.laid->lastPlank.has_value());
    CHECK_THAT(asLaid.laid->lastPlank->width, WithinAbs(widestShutter(asLaid.plan), 0.5));
    CHECK(std::count_if(asLaid.plan.findings.begin(), asLaid.plan.findings.end(), [](const Finding& f) {
              return f.code.starts_with("journal-");
          }) >= 3);
    const PlanAsLaid plain = plankAsLaid(c.project, c.hull).value();
    CHECK_FALSE(plain.laid.has_value());
    CHECK(plain.plan.strips.size() == c.plan.strips.size());
}

TEST_CASE("readings that can't be this boat's change nothing, and that is said") {
    const Canoe& c = canoe();
    const auto has = [](const Plan& plan, const char* code) {
        return std::any_of(plan.findings.begin(), plan.findings.end(), [&](const Finding& f) {
            return f.code == code && f.level == Level::Caution;
        });
    };
    const auto planned = [&](int row, const std::vector<std::pair<double, double>>& girths) {
        Project p = c.project;
        RowReading reading;
        reading.row = row;
        for (const auto& [x, girth] : girths) {
            GirthLeft left;
            left.x = x - c.hull.xShift;
            left.girth = girth;
            reading.girthLeft.push_back(left);
        }
        p.journal.readings.push_back(reading);
        return plankAsLaid(p, c.hull).value();
    };
    // girths that no strips leave, a row that is none, one that is the last plank, stations past the ends
    for (const auto& boat : {planned(10, {{1000, 100}, {2438, 1440}, {3900, 5}}),
                             planned(60, {{2438, 100}}),
                             planned(c.plan.lastRow, {{2438, 3}}),
                             planned(10, {{-500, 300}, {9000, 300}})}) {
        CHECK_FALSE(boat.laid.has_value());
        CHECK(has(boat.plan, "journal-not-used"));
        CHECK(has(boat.plan, "journal-left-out")); // each by its row and station
        CHECK(boat.plan.lastRow == c.plan.lastRow);
        CHECK(starboard(boat.plan, 10).length == starboard(c.plan, 10).length);
    }
    // before any strip lies, the bare moulds are no mistake
    const auto girth = plannedGirthLeft(c.plan, c.hull, 0, 2438);
    REQUIRE(girth);
    const auto bare = planned(0, {{2438, girth->left + 5}});
    CHECK_FALSE(has(bare.plan, "journal-not-used"));
    CHECK(std::ranges::count_if(bare.plan.findings, [](const Finding& f) {
              return f.code == "journal-bare-moulds" && f.level == Level::Note &&
                     f.text.find("5 mm (3/16\") more than lofted") != std::string::npos;
          }) == 1);
    // a round of which nothing is written down yet is no mistake either
    CHECK_FALSE(has(planned(20, {}).plan, "journal-not-used"));
    Project p = c.project;
    p.journal.laid.push_back({"S99", "2026-02-03", "", 412});
    const Plan unknown = plankAsLaid(p, c.hull).value().plan;
    REQUIRE(has(unknown, "journal-unknown-strip"));
    for (const Finding& f : unknown.findings)
        if (f.code == "journal-unknown-strip")
            CHECK(f.text.find("412") != std::string::npos);
}

TEST_CASE("one reading far off is left out, and the others are believed") {
    const Canoe& c = canoe();
    Project p = c.project;
    RowReading reading;
    reading.row = 20;
    for (const double x : c.hull.stationX)
        if (const auto girth = plannedGirthLeft(c.plan, c.hull, 20, x)) {
            GirthLeft left;
            left.x = x - c.hull.xShift;
            left.girth = girth->left - (reading.girthLeft.size() == 4 ? 60.0 : 1.0);
            reading.girthLeft.push_back(left);
        }
    p.journal.readings.push_back(reading);
    const PlanAsLaid boat = plankAsLaid(p, c.hull).value();
    REQUIRE(boat.laid.has_value());
    REQUIRE(boat.laid->leftOut.size() == 1);
    CHECK(boat.laid->leftOut.front().farOff);
    CHECK_THAT(boat.laid->offset.value, WithinAbs(1.0, 0.3));
}

TEST_CASE("two readings of one place that disagree are told, and their mean is used") {
    const Canoe& c = canoe();
    const auto boat = [&](double difference, bool alone = false) {
        Project p = c.project;
        RowReading reading;
        reading.row = 20;
        for (const double x : c.hull.stationX)
            if (alone && x != c.hull.stationX[8])
                continue;
            else if (const auto girth = plannedGirthLeft(c.plan, c.hull, 20, x))
                for (const double side : {-0.5, 0.5}) {
                    GirthLeft left;
                    left.x = x - c.hull.xShift;
                    left.girth = girth->left + (x == c.hull.stationX[8] ? side * difference : 0.0);
                    reading.girthLeft.push_back(left);
                }
        p.journal.readings.push_back(reading);
        return plankAsLaid(p, c.hull).value();
    };
    const PlanAsLaid alike = boat(2.0), apart = boat(8.0);
    REQUIRE(alike.laid);
    REQUIRE(apart.laid);
    CHECK(alike.laid->apart.empty());
    REQUIRE(apart.laid->apart.size() == 1);
    CHECK(apart.laid->apart.front().x == c.hull.stationX[8]);
    CHECK_THAT(apart.laid->apart.front().most - apart.laid->apart.front().least, WithinAbs(8.0, 1e-9));
    CHECK_THAT(apart.laid->offset.value, WithinAbs(0.0, 0.1));
    // one station alone, read twice 8 mm apart: either may be right, so the edge is known to some mm
    CHECK(boat(8.0, true).laid->offset.sd > 3.0);
    CHECK(boat(0.0, true).laid->offset.sd < 1.0);
    CHECK(std::ranges::count(apart.plan.findings, "journal-readings-apart", &Finding::code) == 1);
}

TEST_CASE("an accent row keeps its width when the rows below a measured edge are tapered anew") {
    Project p = taperedCanoe();
    Accent accent;
    accent.at = 190.0; // of girth
    p.planking.accents = {accent};
    const Canoe& c = canoe();
    const Plan plan = plank(p, c.hull).value();
    REQUIRE_FALSE(plan.accentRows.empty());
    const int row = plan.accentRows.front();
    REQUIRE(row > 4);
    const Plan again = replan(p, c.hull, plan, edgeAt(4, 0.0), plan.coverWidth).value();
    REQUIRE(starboard(again, row).kind == StripKind::Full);
    CHECK(starboard(again, row).planed == PlanedEdge::None);
    std::set<int> planed;
    for (const Strip& s : again.strips)
        if (s.planed != PlanedEdge::None)
            planed.insert(s.row);
    CHECK_FALSE(planed.empty());
    CHECK(again.tapers->touched == static_cast<int>(planed.size())); // no stealers here
}

TEST_CASE("where the rows below a measured edge get other tapers, the last plank is forecast with them") {
    const Canoe& c = canoe();
    Project p = taperedCanoe();
    const Plan plan = plank(p, c.hull).value();
    p.journal.readings = {readingOf(plan, 0, 0.0), readingOf(plan, 5, 1.0)};
    const PlanAsLaid asLaid = plankAsLaid(p, c.hull).value();
    REQUIRE(asLaid.laid.has_value());
    REQUIRE(asLaid.laid->lastPlank.has_value());
    CHECK_THAT(asLaid.laid->lastPlank->width, WithinAbs(widestShutter(asLaid.plan), 0.2));
    CHECK(asLaid.laid->lastPlank->lastRow == asLaid.plan.lastRow - 1);
    CHECK_THAT(asLaid.laid->lastPlank->part,
               WithinAbs(asLaid.laid->lastPlank->width / (plan.coverWidth + asLaid.laid->ahead.value), 1e-2));
}
