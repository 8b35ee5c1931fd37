#include "core/fairness/station_bumps.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_tables.hpp"
#include "tests/support/misprints.hpp"
#include "tests/support/turned.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// A formula hull's table before it is rounded, told to be in sixteenths.
Project exactly(Project p) {
    p.hull.roundedTo = sixteenth;
    return p;
}

struct Hull {
    std::string name;
    Project exact;
};

std::vector<Hull> formulaTables() {
    return {{"canoe", exactly(footStations(formulaCanoe(), 0, 50.8))},
            {"skiff", exactly(skiffTable(0, 50.8))},
            {"narrow double-ender", exactly(footStations(formulaNarrow(), 0, 50.8))},
            {"recurved stems", exactly(footStations(formulaRecurved(), 0, 50.8))}};
}

/// Moves the station's numbers so that its section lies `by` mm outside, along the normal of the chord
/// between each point's neighbours; the keel stays. Cells that lie too flat to their own line are left.
void addHump(Station& s, double by) {
    std::vector<TablePoint*> line{&s.sheer};
    for (TablePoint& p : s.points)
        line.push_back(&p);
    std::stable_sort(line.begin() + 1, line.end(), [](const TablePoint* a, const TablePoint* b) {
        return a->height != b->height ? a->height > b->height : a->halfBreadth > b->halfBreadth;
    });
    if (s.keel)
        line.push_back(&*s.keel);
    std::vector<std::array<double, 2>> normals;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const TablePoint& a = *line[i > 0 ? i - 1 : 0];
        const TablePoint& b = *line[std::min(i + 1, line.size() - 1)];
        const double dy = b.halfBreadth - a.halfBreadth;
        const double dz = b.height - a.height;
        normals.push_back({-dz / std::hypot(dy, dz), dy / std::hypot(dy, dz)});
    }
    for (std::size_t i = 0; i < line.size(); ++i) {
        const auto [ny, nz] = normals[i];
        TablePoint& p = *line[i];
        if (p.kind == PointKind::Sheer) {
            p.halfBreadth += by * ny;
            p.height += by * nz;
        } else if (p.kind == PointKind::Waterline && ny > 0.2)
            p.halfBreadth += by / ny;
        else if (p.kind == PointKind::Buttock && nz < -0.2)
            p.height += by / nz;
    }
}

std::vector<StationBump> bumpsOf(const Project& p) {
    const auto hull = loft(p);
    REQUIRE(hull.has_value());
    const auto bumps = stationBumps(p, *hull);
    REQUIRE(bumps.has_value());
    REQUIRE(bumps->size() == p.hull.stations.size());
    return *bumps;
}

} // namespace

namespace {

void checkFair(unsigned roundings) {
    for (const Hull& h : formulaTables()) {
        INFO(h.name);
        unsigned judged = 0;
        for (unsigned k = 0; k < roundings; ++k) {
            Project p = h.exact;
            p.hull = roundedAnew(p.hull, 100 + k);
            for (const StationBump& b : bumpsOf(p)) {
                judged += b.judged;
                INFO("rounding " << k << ", x " << b.x << ": " << b.bump << " mm, " << b.spreads());
                CHECK_FALSE(b.unfair);
            }
        }
        CHECK(judged >= 6 * roundings); // six stations at least have the say
    }
}

void checkHumps(const std::vector<std::ptrdiff_t>& fromMiddle, int mayMiss) {
    int planted = 0;
    int named = 0;
    for (const Hull& h : formulaTables())
        for (const std::ptrdiff_t off : fromMiddle)
            for (const double by : {3.0, -3.0}) {
                const auto at = h.exact.hull.stations.size() / 2 + static_cast<std::size_t>(off);
                INFO(h.name << ", station " << at << ", " << by << " mm");
                Project p = h.exact;
                addHump(p.hull.stations[at], by);
                p.hull = roundedAnew(p.hull, 300 + static_cast<unsigned>(planted));
                const std::vector<StationBump> bumps = bumpsOf(p);
                ++planted;
                INFO("told " << bumps[at].bump << " mm, give or take " << bumps[at].spread);
                CHECK(std::abs(bumps[at].bump - by) < 2.5 * bumps[at].spread);
                CHECK(bumps[at].spread < 1.0);
                named += bumps[at].unfair;
                for (std::size_t i = 0; i < bumps.size(); ++i)
                    if (i != at)
                        CHECK_FALSE(bumps[i].unfair);
            }
    INFO(named << " of " << planted << " named");
    CHECK(named >= planted - mayMiss);
}

} // namespace

TEST_CASE("fair tables are not called unfair, however they were rounded") {
    checkFair(2);
}

TEST_CASE("ten roundings of each formula's table", "[.slow]") {
    checkFair(10);
}

TEST_CASE("a hump of 3 mm at one station is found there and sized within its rounding") {
    checkHumps({0}, 0);
}

TEST_CASE("humps at the stations beside the middle too", "[.slow]") {
    checkHumps({-1, 0, 1}, 2);
}

TEST_CASE("the estimate follows a hump in proportion") {
    // without rounding, the estimate with a hump less that without is the hump: the test is linear
    const Project fair = exactly(footStations(formulaCanoe(), 0, 50.8));
    const std::size_t at = fair.hull.stations.size() / 2;
    const double before = bumpsOf(fair)[at].bump;
    CHECK(std::abs(before) < 0.3);
    for (const double by : {-6.0, -1.0, 1.0, 4.0}) {
        Project p = fair;
        addHump(p.hull.stations[at], by);
        CHECK_THAT(bumpsOf(p)[at].bump - before, WithinAbs(by, 0.25 * std::abs(by)));
    }
}

TEST_CASE("mirrored fore and aft, the bumps are mirrored") {
    Project p = exactly(footStations(formulaCanoe(), 0, 50.8));
    addHump(p.hull.stations[7], 3.0);
    const Project turned = turnedEndForEnd(p);
    const std::vector<StationBump> a = bumpsOf(p), b = bumpsOf(turned);
    for (std::size_t i = 0; i < a.size(); ++i) {
        CHECK_THAT(b[a.size() - 1 - i].bump, WithinAbs(a[i].bump, 0.05));
        CHECK(b[a.size() - 1 - i].unfair == a[i].unfair);
    }
    CHECK(a[7].unfair);
}

TEST_CASE("the examples are fair, and the corrected table of 1889 too") {
    for (const char* path : {SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay",
                             SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay",
                             SHEERLAY_EXAMPLES "/marsh-hen/marsh-hen.sheerlay",
                             SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay"}) {
        INFO(path);
        for (const StationBump& b : bumpsOf(readProject(path).value().project)) {
            INFO("station " << b.station << ": " << b.bump << " mm, " << b.spreads());
            CHECK_FALSE(b.unfair);
        }
    }
}
