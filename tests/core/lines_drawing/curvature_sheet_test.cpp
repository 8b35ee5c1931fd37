#include "core/lines_drawing/curvature_sheet.hpp"
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

TEST_CASE("read off the paper by its own axes, the keel bends as the formula's") {
    const Project p = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
    const Sheet sheet = curvatureSheet(p, loft(p).value(), Units::Inches);
    // the first panel's axis: labels at the left, told in 1/m, and the zero line
    std::vector<std::pair<double, double>> ticks; // value, y on paper
    for (const Text& t : textsOf(sheet))
        if (t.anchor == Anchor::Right && lineOf(t).find_first_not_of("-0123456789.") == std::string::npos)
            ticks.emplace_back(std::stod(lineOf(t)), t.at.y() - 0.35 * t.size);
    REQUIRE(ticks.size() >= 10);
    const auto [v0, y0] = ticks[0];
    const auto [v1, y1] = ticks[1];
    const double perMetre = (v1 - v0) / (y1 - y0);
    std::vector<Path> curves;
    double left = 0, right = 0;
    for (const Item& item : sheet.items)
        if (const auto* path = std::get_if<Path>(&item)) {
            if (path->line == LineKind::Centre && right == 0) {
                left = path->points[0].x();
                right = path->points[1].x();
            }
            if (path->line == LineKind::Thin && path->points.size() > 300 && curves.size() < 3)
                curves.push_back(*path); // sheer from above, from the side, keel
        }
    REQUIRE(curves.size() == 3);
    const FormulaHull f = formulaCanoe();
    const double scale = 2 * 2438.4 / (right - left);
    int points = 0;
    for (const Eigen::Vector2d& q : curves[2].points) {
        const double x = (q.x() - 0.5 * (left + right)) * scale;
        if (std::abs(x) > 1500)
            continue;
        const auto height = [&](double at) { return f.keel(at); };
        const double bend = 1000 * (height(x + 20) - 2 * height(x) + height(x - 20)) / 400;
        CHECK_THAT(v0 + (q.y() - y0) * perMetre, WithinAbs(bend, 0.08));
        ++points;
    }
    CHECK(points > 100);
}

TEST_CASE("the examples' plots keep their margins and their labels apart") {
    for (const char* path : {SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay",
                             SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay",
                             SHEERLAY_EXAMPLES "/marsh-hen/marsh-hen.sheerlay"}) {
        INFO(path);
        const Project p = readProject(path).value().project;
        const Sheet sheet = curvatureSheet(p, loft(p).value(), p.units);
        CHECK(outside(sheet, pageMargin - 0.5) == "");
        CHECK(overlapping(sheet) == "");
        for (const char* word :
             {"sheer and keel", "waterlines", "buttocks", "diagonals", "equal girth", "hollow"})
            CHECK(wordsOf(sheet).find(word) != std::string::npos);
    }
}
