#include "core/lines_drawing/lines_sheet.hpp"
#include "core/project/project_file.hpp"
#include "core/sheets/page.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_hull.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

struct Drawn {
    Project project;
    Sheet sheet;
};

Drawn drawn(const std::string& path, Units units) {
    Project project = readProject(path).value().project;
    const LoftedHull hull = loft(project).value();
    return {project, linesSheet(project, hull, units)};
}

std::vector<Path> pathsOf(const Sheet& sheet, LineKind kind, Colour colour, std::size_t least) {
    std::vector<Path> paths;
    for (const Item& item : sheet.items)
        if (const auto* path = std::get_if<Path>(&item);
            path && path->line == kind && path->colour == colour && path->points.size() >= least)
            paths.push_back(*path);
    return paths;
}

/// What comes after "1:" in the heading.
double scaleOf(const Sheet& sheet, const std::string& after) {
    const std::string words = wordsOf(sheet);
    return std::stod(words.substr(words.find(after) + after.size()));
}

} // namespace

TEST_CASE("measured off the paper at its scale, the waterlines are the formula's") {
    const Drawn d = drawn(SHEERLAY_REFERENCE "/formula_canoe.sheerlay", Units::Inches);
    const double scale = scaleOf(d.sheet, "Lines, 1:");
    CHECK(scale >= 10);
    CHECK(scale <= 16);
    // the second centreline from above is that of the half-breadth plan; the first is the base line
    const auto straight = pathsOf(d.sheet, LineKind::Centre, colours::ink, 2);
    REQUIRE(straight.size() >= 4);
    const double middle = 0.5 * (straight[1].points[0].x() + straight[1].points[1].x());
    const double centreline = straight[1].points[0].y();
    CHECK_THAT((straight[1].points[1] - straight[1].points[0]).norm() * scale, WithinAbs(2 * 2438.4, 3));
    const FormulaHull f = formulaCanoe();
    const auto curves = pathsOf(d.sheet, LineKind::Thin, colours::lineBlue, 20);
    CHECK(curves.size() >= 4);
    std::vector<double> heights; // of the straight blue lines in the profile, above the base line
    for (const Path& p : pathsOf(d.sheet, LineKind::Thin, colours::lineBlue, 2))
        if (p.points.size() == 2 && p.points[0].y() < straight[0].points[0].y())
            heights.push_back((straight[0].points[0].y() - p.points[0].y()) * scale);
    REQUIRE(heights.size() == curves.size());
    for (std::size_t i = 0; i < curves.size(); ++i) {
        CHECK_THAT(heights[i] / 25.4, WithinAbs(std::round(heights[i] / 25.4), 1e-6));
        int points = 0;
        for (const Eigen::Vector2d& p : curves[i].points) {
            const double x = (p.x() - middle) * scale;
            if (std::abs(x) < 1800) {
                CHECK_THAT((centreline - p.y()) * scale, WithinAbs(f.halfBreadth(x, heights[i]), 3.0));
                ++points;
            }
        }
        CHECK(points > 100);
    }
}

TEST_CASE("the examples' drawings keep their margins, their labels apart and their scale in words") {
    for (const char* path : {SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay",
                             SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay",
                             SHEERLAY_EXAMPLES "/marsh-hen/marsh-hen.sheerlay"})
        for (const Units units : {Units::Millimetres, Units::Inches}) {
            INFO(path);
            const Drawn d = drawn(path, units);
            CHECK(outside(d.sheet, pageMargin - 0.5) == "");
            CHECK(overlapping(d.sheet) == "");
            const std::string words = wordsOf(d.sheet);
            CHECK(words.find(d.project.name) == 0);
            for (const char* part :
                 {"base line", "centreline", "diagonal A", "Diagonal B leaves", "inside of the"})
                CHECK(words.find(part) != std::string::npos);
            CHECK(scaleOf(d.sheet, "body plan 1:") < scaleOf(d.sheet, "Lines, 1:"));
            CHECK((words.find("edge of the transom") != std::string::npos) ==
                  !d.project.hull.transoms.empty());
        }
}

TEST_CASE("the body plan's sections are those of the stations, forward ones to the right") {
    const Drawn d = drawn(SHEERLAY_REFERENCE "/formula_canoe.sheerlay", Units::Millimetres);
    const double scale = scaleOf(d.sheet, "body plan 1:");
    const auto centre = pathsOf(d.sheet, LineKind::Centre, colours::ink, 2).back(); // upright
    REQUIRE(std::abs(centre.points[0].x() - centre.points[1].x()) < 1e-9);
    const double base = std::max(centre.points[0].y(), centre.points[1].y());
    const FormulaHull f = formulaCanoe();
    int right = 0, left = 0;
    for (const Path& p : pathsOf(d.sheet, LineKind::Visible, colours::ink, 10)) {
        if (p.points.front().y() < base - 600 / scale || p.points.back().y() > base + 1)
            continue; // in another view
        const double side = p.points.front().x() > centre.points[0].x() ? 1 : -1;
        (side > 0 ? right : left)++;
        // which station: the one whose sheer is there
        const double breadth = side * (p.points.front().x() - centre.points[0].x()) * scale;
        double best = 1e9, station = 0;
        for (double x = -2340; x <= 2340; x += 10)
            if (const double off = std::abs(f.halfBreadth(x, f.sheer(x)) - breadth); off < best) {
                best = off;
                station = x;
            }
        for (const Eigen::Vector2d& q : p.points) {
            const double z = (base - q.y()) * scale;
            if (std::abs(station) < 1800 && z > f.keel(station) + 30 && z < f.sheer(station) - 30)
                CHECK_THAT(side * (q.x() - centre.points[0].x()) * scale,
                           WithinAbs(f.halfBreadth(station, z), 6.0));
        }
    }
    CHECK(right >= 8);
    CHECK(left >= 7);
    CHECK(right + left == 17);
}
