#include "core/patterns/mould_pattern.hpp"
#include "core/patterns/pattern_files.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_hull.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>
#include <sstream>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

/// A slanted line over 2 m and a wavy one, so that no joint is like another.
Pattern longPattern() {
    Pattern pattern;
    pattern.file = "long";
    pattern.title = "A long piece";
    PatternLine wave;
    for (int i = 0; i <= 2000; ++i)
        wave.points.emplace_back(i, 150 + 140 * std::sin(i * 0.007));
    pattern.lines = {{Layer::Cut, {{0, 0}, {2000, 310}}, false, LineKind::Visible, {}}, wave};
    return pattern;
}

double distanceTo(const std::vector<Vector2d>& line, const Vector2d& p) {
    double nearest = 1e300;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector2d d = line[i] - line[i - 1];
        const double t = std::clamp((p - line[i - 1]).dot(d) / d.squaredNorm(), 0.0, 1.0);
        nearest = std::min(nearest, (line[i - 1] + t * d - p).norm());
    }
    return nearest;
}

/// The cut lines of a page, back in the pattern's own frame.
std::vector<std::vector<Vector2d>> linesOf(const PatternPage& page) {
    std::vector<std::vector<Vector2d>> lines;
    for (const Item& item : page.sheet.items)
        if (const auto* path = std::get_if<Path>(&item); path != nullptr && path->line == LineKind::Visible) {
            lines.emplace_back();
            for (const Vector2d& p : path->points)
                lines.back().emplace_back(p.x() - page.origin.x(), page.origin.y() - p.y());
        }
    return lines;
}

} // namespace

TEST_CASE("pages glued cross on cross give the whole line back") {
    const Pattern pattern = longPattern();
    for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
        const std::vector<PatternPage> pages = pagesOf(pattern, pageOf(size), "Trial");
        REQUIRE(pages.size() > 10);
        for (const PatternLine& line : pattern.lines) {
            // every millimetre of it stands on some page
            for (std::size_t i = 0; i + 1 < line.points.size(); ++i) {
                const Vector2d middle = 0.5 * (line.points[i] + line.points[i + 1]);
                double nearest = 1e300;
                for (const PatternPage& page : pages)
                    for (const auto& part : linesOf(page))
                        nearest = std::min(nearest, distanceTo(part, middle));
                REQUIRE(nearest < 1e-6);
                if (line.points.size() > 2)
                    i += 37;
            }
        }
        // and nothing stands on a page that is not in the pattern, nor outside the window
        for (const PatternPage& page : pages) {
            for (const auto& part : linesOf(page))
                for (const Vector2d& p : part) {
                    const double off = std::min(distanceTo(pattern.lines[0].points, p),
                                                distanceTo(pattern.lines[1].points, p));
                    REQUIRE(off < 1e-6);
                    const double x = p.x() + page.origin.x();
                    REQUIRE(x > page.window.left - 1e-6);
                    REQUIRE(x < page.window.right + 1e-6);
                }
            CHECK(test::outside(page.sheet, pageMargin - 0.6).empty());
        }
    }
}

TEST_CASE("a page that shows no more than a neighbour's band is left out, and no letter asks for it") {
    Pattern pattern;
    pattern.title = "A knee"; // on A4 its corner reaches 5 mm past the first window, within the shared band
    const auto firstWindow = pagesOf(longPattern(), pageOf(PageSize::A4), "Trial").front().window;
    const double wide = firstWindow.right - firstWindow.left, high = firstWindow.bottom - firstWindow.top;
    PatternLine knee;
    knee.points = {{0, 0}, {wide - 10.0, -60.0}, {0, -2 * high + 100.0}};
    knee.closed = true;
    pattern.lines = {knee};
    const std::vector<PatternPage> pages = pagesOf(pattern, pageOf(PageSize::A4), "Trial");
    REQUIRE(pages.size() == 2);
    CHECK(pages[0].column == 0);
    CHECK(pages[1].column == 0);
    for (const PatternPage& page : pages) {
        int letters = 0;
        for (const Text& text : test::textsOf(page.sheet))
            letters += text.weight == Weight::Bold ? 1 : 0;
        CHECK(letters == 1);
    }
}

TEST_CASE("neighbours share a band of the overlap's width, and a letter") {
    const std::vector<PatternPage> pages = pagesOf(longPattern(), pageOf(PageSize::A4), "Trial");
    for (const PatternPage& a : pages)
        for (const PatternPage& b : pages) {
            if (a.row != b.row || b.column != a.column + 1)
                continue;
            const double shared = (a.window.right - a.origin.x()) - (b.window.left - b.origin.x());
            CHECK(shared == Approx(pageOverlap));
            const auto letterNear = [](const PatternPage& page, double x) {
                for (const Text& text : test::textsOf(page.sheet))
                    if (text.weight == Weight::Bold && std::abs(text.at.x() - x) < 0.01)
                        return test::lineOf(text);
                return std::string("none");
            };
            const std::string letter = letterNear(a, a.window.right - pageOverlap / 2);
            CHECK(letter != "none");
            CHECK(letter == letterNear(b, b.window.left + pageOverlap / 2));
        }
}

TEST_CASE("a mould's DXF and SVG hold its outline to the ten-thousandth") {
    Project project = test::doubleEnder(test::formulaCanoe(), 0.1);
    const auto hull = loft(project);
    REQUIRE(hull);
    const auto set = mouldsOf(project, *hull);
    REQUIRE(set);
    const std::vector<Pattern> patterns = mouldPatterns(project, *set, Units::Millimetres);
    REQUIRE(patterns.size() == set->moulds.size() + set->stemForms.size());
    const std::size_t at = set->moulds.size() / 2;
    const Mould& mould = set->moulds[at];
    std::vector<Vector2d> read;
    std::istringstream dxf(toDxf(patterns[at]));
    std::string code, value, kind, layer;
    double x = 0;
    while (std::getline(dxf, code) && std::getline(dxf, value)) {
        if (code == "0")
            kind = value;
        else if (code == "8")
            layer = value;
        else if (code == "10" && kind == "VERTEX" && layer == "cut")
            x = std::stod(value);
        else if (code == "20" && kind == "VERTEX" && layer == "cut")
            read.emplace_back(x, std::stod(value));
    }
    REQUIRE(read.size() == mould.outline.size());
    for (std::size_t i = 0; i < read.size(); ++i)
        CHECK((read[i] - mould.outline[i]).norm() < 1e-4);
    CHECK(toDxf(patterns[at]).find("units: millimetres") != std::string::npos);
    CHECK(toSvg(patterns[at]).find(", millimetres</title>") != std::string::npos);
    Pattern german = patterns[at];
    german.language = Language::German;
    CHECK(toDxf(german).find("Einheit: Millimeter\n") != std::string::npos);
    CHECK(toSvg(german).find(", Millimeter</title>") != std::string::npos);

    // the whole mould is the half one and its mirror image
    project.moulds.shape = MouldChoices::Shape::Whole;
    const Pattern whole = mouldPatterns(project, *set, Units::Millimetres)[at];
    const Box half = extentOf(patterns[at]), both = extentOf(whole);
    CHECK(both.right == Approx(half.right));
    CHECK(both.left == Approx(-half.right));
    for (const Vector2d& p : whole.lines.front().points)
        CHECK(distanceTo(mould.outline, {std::abs(p.x()), p.y()}) < 1e-9);

    const std::string svg = toSvg(patterns[at]);
    const double width = half.right - half.left + 20;
    const std::size_t found = svg.find("width=\"") + 7;
    CHECK(std::stod(svg.substr(found)) == Approx(width).margin(1e-4));
    CHECK(svg.compare(svg.find_first_not_of("0123456789.", found), 3, "mm\"") == 0);
}

TEST_CASE(
    "on the pages of a cut mould every long level is named wherever it shows, and covers no other word") {
    const Project project = test::doubleEnder(test::formulaCanoe(), 0.1);
    const auto hull = loft(project);
    REQUIRE(hull);
    const auto set = mouldsOf(project, *hull);
    REQUIRE(set);
    const double longEnough = 90.0; // mm, over half a page's window
    int named = 0;
    for (const Pattern& pattern : mouldPatterns(project, *set, Units::Millimetres))
        for (const PatternPage& page : pagesOf(pattern, pageOf(PageSize::A4), "Trial"))
            for (const PatternLine& line : pattern.lines) {
                if (line.name.empty())
                    continue;
                const double y = page.origin.y() - line.points[0].y();
                const double left = std::max(page.window.left, page.origin.x() + line.points[0].x());
                const double right = std::min(page.window.right, page.origin.x() + line.points[1].x());
                if (y < page.window.top + 6 || y > page.window.bottom - 6 || right - left < longEnough)
                    continue;
                INFO(pattern.title << ": " << line.name);
                const std::vector<Text> texts = test::textsOf(page.sheet);
                CHECK(std::ranges::any_of(texts, [&](const Text& text) {
                    return test::lineOf(text) == line.name && std::abs(text.at.y() - y) < 2.0;
                }));
                ++named;
            }
    CHECK(named > 20);
}
