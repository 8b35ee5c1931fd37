#include "core/hull/hull.hpp"
#include "core/hull/likely_slip.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/suspect_cells.hpp"
#include "core/project/diagonal.hpp"
#include "core/project/project_file.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/formula_tables.hpp"
#include "tests/support/misprints.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// The finder against seeded single misprints (issue 4, "What it must show"): of those of three units or more
// outside stem cells at least 90 percent named first and 94 within the first three. The whole experiment
// takes minutes and is hidden behind [.slow]; a small part of it runs always.

namespace {

struct Counts {
    int cases = 0, first = 0, three = 0, flagged = 0, wrongly = 0, guessed = 0;
    double slowest = 0.0;

    [[nodiscard]] double percent(int n) const { return 100.0 * n / std::max(cases, 1); }
    [[nodiscard]] std::string text() const {
        return std::to_string(cases) + " misprints: first " + std::to_string(percent(first)) +
               ", first three " + std::to_string(percent(three)) + ", flagged " +
               std::to_string(percent(flagged)) + " percent, other numbers flagged " +
               std::to_string(wrongly) + ", of the flagged the right number guessed " +
               std::to_string(100.0 * guessed / std::max(flagged, 1)) + " percent";
    }
};

/// Misprints of three units and more outside stem cells; smaller ones are drawn and passed over.
Counts seeded(const HullTable& clean, unsigned seed, int cases) {
    Counts counts;
    Misprinter printer(clean, seed);
    while (counts.cases < cases) {
        const Misprint m = printer.next();
        if (onStem(clean, m.cell) || std::abs(m.wrong - m.right) < 2.95 * clean.roundedTo)
            continue;
        HullTable table = withMisprint(clean, m);
        LoftData data = prepareLoft(table).value();
        const CellSearch found = searchCells(table, data);
        const TablePoint* cell = &pointOf(table, m.cell);
        const auto is = [&](const SuspectCell& s) {
            return data.points[s.point].cell == cell && s.height == m.cell.height;
        };
        const auto at = std::find_if(found.ranked.begin(), found.ranked.end(), is) - found.ranked.begin();
        ++counts.cases;
        counts.first += at < 1;
        counts.three += at < 3 && at < static_cast<std::ptrdiff_t>(found.ranked.size());
        for (const SuspectCell& s : found.suspects) {
            if (!is(s)) {
                ++counts.wrongly;
                continue;
            }
            ++counts.flagged;
            const auto slip = likelySlip(table, data, s);
            counts.guessed += slip && std::abs(slip->value - m.right) < 0.6 * table.roundedTo;
        }
    }
    return counts;
}

void checkSeeded(const HullTable& clean, unsigned seed, int cases) {
    const Counts c = seeded(clean, seed, cases);
    UNSCOPED_INFO(c.text());
    const bool whole = cases >= 200; // a few cases scatter by some percent
    CHECK(c.percent(c.first) >= (whole ? 90 : 80));
    CHECK(c.percent(c.three) >= (whole ? 94 : 90));
    CHECK(c.wrongly <= cases / 10);
    if (whole)
        WARN(c.text());
}

/// Numbers flagged in roundings of exact values of a clean table.
std::size_t flags(const HullTable& exact, int draws) {
    std::size_t flagged = 0;
    for (int k = 1; k <= draws; ++k) {
        const HullTable table = roundedAnew(exact, 100U + static_cast<unsigned>(k));
        LoftData data = prepareLoft(table).value();
        flagged += findSuspectCells(table, data).size();
    }
    return flagged;
}

HullTable stephens() {
    return readProject(SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay").value().project.hull;
}

HullTable canoe() {
    return readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project.hull;
}

HullTable exactly(HullTable exact) {
    exact.roundedTo = sixteenth;
    return exact;
}

/// No formula stands behind the 1889 table, so the lines it lofts to are read off again where they can be: at
/// every cell but the stems'.
HullTable readOffLoft(const Project& project) {
    const LoftedHull hull = loft(project).value();
    HullTable table = project.hull;
    const geometry::TensorSurface& s = hull.drawn.surface;
    for (const TableCell& c : cellsOf(table)) {
        const double x = table.stations[c.station].x + hull.xShift;
        if (onStem(project.hull, c))
            continue;
        const auto along = [&](const Eigen::Vector3d& p) { return c.height ? p.z() : p.y(); };
        const auto across = [&](const Eigen::Vector3d& p) { return c.height ? p.y() : p.z(); };
        if (c.point == TableCell::sheer) {
            valueOf(table, c) = along(s.point(x, 0));
            continue;
        }
        const double want =
            c.point == TableCell::keel ? hull.drawn.trims.siding.at(x) : pointOf(table, c).height;
        double low = 0;
        double high = s.knotsV().last();
        for (double v = 0; v < s.knotsV().last(); v += 5)
            if (across(s.point(x, v)) > want)
                low = v;
            else {
                high = v;
                break;
            }
        for (int k = 0; k < 50; ++k)
            (across(s.point(x, 0.5 * (low + high))) > want ? low : high) = 0.5 * (low + high);
        valueOf(table, c) = along(s.point(x, low));
    }
    return table;
}

} // namespace

TEST_CASE("a few seeded misprints in the table of 1889 are named") {
    checkSeeded(stephens(), 3, 20);
}

TEST_CASE("a few seeded misprints in the canoe's table are named") {
    checkSeeded(canoe(), 3, 10);
}

TEST_CASE("a knuckle's height of some inches off is named, not the sound ones beside it") {
    const HullTable clean = skiffProject().hull;
    for (const std::size_t station : {3, 5, 8, 10}) {
        for (const double off : {-60.0, 90.0}) { // 90: the lowest waterline of the side comes to lie below it
            const TableCell cell{station, TableCell::knuckle, true};
            const double right = clean.stations[station].knuckle->height;
            const HullTable table = withMisprint(clean, {cell, right, right + off, "inch"});
            LoftData data = prepareLoft(table).value();
            const std::vector<SuspectCell> found = findSuspectCells(table, data);
            INFO("station " << station << ", off by " << off);
            REQUIRE(found.size() == 1);
            const LoftPoint& p = data.points[found[0].point];
            CHECK(p.kind == LoftPoint::Kind::Knuckle);
            CHECK(p.station == static_cast<int>(station));
            CHECK(found[0].height);
            CHECK(found[0].setAside);
            // the spread is rounding's alone; what 600 mm without a number leave open comes on top
            CHECK_THAT(found[0].fair, WithinAbs(right, 6));
        }
    }
}

TEST_CASE("two hundred misprints in a knuckled skiff's table, one in five in the knuckle", "[.slow]") {
    checkSeeded(skiffProject().hull, 18893, 200);
}

TEST_CASE("clean tables stay without a flag") {
    LoftData data;
    for (HullTable table : {stephens(), canoe(), skiffTable(sixteenth, 50.8).hull, skiffProject().hull}) {
        data = prepareLoft(table).value();
        CHECK(findSuspectCells(table, data).empty());
    }
}

TEST_CASE("two hundred misprints in the table of 1889", "[.slow]") {
    checkSeeded(stephens(), 18890, 200);
}

TEST_CASE("two hundred misprints in the canoe's table", "[.slow]") {
    checkSeeded(canoe(), 18891, 200);
}

TEST_CASE("two hundred misprints in the skiff's table", "[.slow]") {
    HullTable table = skiffTable(sixteenth, 50.8).hull;
    checkSeeded(table, 18892, 200);
}

TEST_CASE("ten clean roundings of each table stay without a flag", "[.slow]") {
    const Project p = readProject(SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay").value().project;
    CHECK(flags(readOffLoft(p), 10) == 0);
    CHECK(flags(exactly(footStations(formulaCanoe(), 0, 50.8).hull), 10) == 0);
    CHECK(flags(exactly(skiffTable(0, 50.8).hull), 10) == 0);
}

namespace {

/// Where a diagonal meets the hull: distance from the centreplane, by halving.
double alongDiagonal(const FormulaHull& f, double x, double height, double slope) {
    double in = 0, out = 1000;
    for (int k = 0; k < 60; ++k) {
        const double d = 0.5 * (in + out);
        const double z = height - d * std::sin(slope);
        (z > f.keel(x) && d * std::cos(slope) < f.halfBreadth(x, z) ? in : out) = d;
    }
    return in;
}

/// The canoe's table with diagonals in place of its waterlines.
Project diagonalCanoe() {
    const FormulaHull f = formulaCanoe();
    Project p = footStations(f, sixteenth, 50.8);
    for (Station& s : p.hull.stations) {
        std::erase_if(s.points, [](const TablePoint& q) { return q.kind == PointKind::Waterline; });
        for (const double height : {320.0, 260.0, 200.0, 140.0}) {
            DiagonalReading d;
            d.height = height;
            d.printedHeight = toFeetInchesEighths(height);
            d.angle = 35;
            if (height < f.keel(s.x) + 60)
                continue;
            d.distance = rounded(alongDiagonal(f, s.x, height, *slopeOf(d)), sixteenth);
            d.printedDistance = toFeetInchesEighths(d.distance);
            s.points.push_back(pointOnDiagonal(d, Units::Inches).value());
        }
    }
    return p;
}

} // namespace

TEST_CASE("a misprint on a diagonal is told by the distance that is printed, and by no number that is not") {
    Project p = diagonalCanoe();
    std::vector<Finding> findings = loft(p).value().findings;
    const auto doubted = [](const Finding& f) { return f.code == "doubtful-cell"; };
    CHECK(std::none_of(findings.begin(), findings.end(), doubted));

    TablePoint& cell =
        *std::find_if(p.hull.stations[8].points.begin(),
                      p.hull.stations[8].points.end(),
                      [](const TablePoint& q) { return q.diagonal && q.diagonal->height == 260; });
    const std::string right = cell.diagonal->printedDistance;
    DiagonalReading wrong = *cell.diagonal;
    wrong.distance += 25.4;
    wrong.printedDistance = toFeetInchesEighths(wrong.distance);
    cell = pointOnDiagonal(wrong, Units::Inches).value();
    findings = loft(p).value().findings;
    REQUIRE(std::count_if(findings.begin(), findings.end(), doubted) == 1);
    const std::string text = std::find_if(findings.begin(), findings.end(), doubted)->text;
    INFO(text);
    CHECK(text.find("distance along the diagonal from height " + wrong.printedHeight + ": " +
                    wrong.printedDistance + " is printed") != std::string::npos);
    CHECK(text.find("an inch too much (" + right + " meant)") != std::string::npos);
    CHECK(text.find(cell.printedHalfBreadth) == std::string::npos);
}
