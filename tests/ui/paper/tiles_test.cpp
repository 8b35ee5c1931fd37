#include "core/patterns/pattern_pages.hpp"
#include "tests/support/catch.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

using namespace sheerlay;
using Eigen::Vector2d;

// What a builder does with the pages: lays crosses over crosses and has the whole line. From the PDF alone.

namespace {

constexpr double length = 2000.0;

/// A wave over 2 m, so that no joint is like another.
core::Pattern wave() {
    core::Pattern pattern;
    pattern.file = "wave";
    pattern.title = "A wave";
    core::PatternLine line;
    for (int i = 0; i <= 1000; ++i)
        line.points.emplace_back(i * length / 1000, 120 + 100 * std::sin(i * 0.014));
    pattern.lines = {line};
    return pattern;
}

/// Middles of the crosses on a page: a level and an upright stroke of one length over one middle.
std::vector<Vector2d> crossesOf(const std::vector<std::vector<Vector2d>>& lines) {
    std::vector<Vector2d> middles;
    for (const auto& level : lines)
        for (const auto& upright : lines) {
            if (level.size() != 2 || upright.size() != 2)
                continue;
            const Vector2d along = level[1] - level[0], across = upright[1] - upright[0];
            const Vector2d middle = (level[0] + level[1]) / 2;
            if (std::abs(along.y()) < 0.01 && std::abs(across.x()) < 0.01 &&
                std::abs(along.norm() - across.norm()) < 0.01 &&
                ((upright[0] + upright[1]) / 2 - middle).norm() < 0.01)
                middles.push_back(middle);
        }
    std::ranges::sort(middles, {}, [](const Vector2d& p) { return p.y(); });
    return middles;
}

/// The two crosses of the upright joint at one side of a page.
std::vector<Vector2d> jointAt(const std::vector<Vector2d>& crosses, double x) {
    std::vector<Vector2d> two;
    std::ranges::copy_if(
        crosses, std::back_inserter(two), [&](const Vector2d& p) { return std::abs(p.x() - x) < 10.0; });
    return two;
}

} // namespace

TEST_CASE("tiles laid cross over cross give 2 m back within 0.1 mm") {
    const core::Pattern pattern = wave();
    for (const core::PageSize size : {core::PageSize::A4, core::PageSize::Letter}) {
        const test::Folder folder;
        const std::string path = folder.file("tiles.pdf");
        std::vector<core::Sheet> sheets;
        const std::vector<core::PatternPage> pages = core::pagesOf(pattern, core::pageOf(size), "Trial");
        for (const core::PatternPage& page : pages)
            sheets.push_back(page.sheet);
        REQUIRE(ui::writePdf(sheets, path));
        REQUIRE(pages.size() > 8);
        std::vector<Vector2d> whole, joint; // on the first page's paper; the crosses on the page before
        Vector2d moved(0, 0);
        for (std::size_t i = 0; i < pages.size(); ++i) {
            REQUIRE(pages[i].row == 0); // one row of pages
            const auto lines = test::polylines(test::svgOf(path, static_cast<int>(i) + 1));
            const std::vector<Vector2d> crosses = crossesOf(lines);
            if (i > 0) {
                const auto here = jointAt(crosses, pages[i].window.left + core::pageOverlap / 2);
                REQUIRE(here.size() == 2);
                REQUIRE(joint.size() == 2);
                moved += (joint[0] + joint[1] - here[0] - here[1]) / 2;
                CHECK((joint[1] - joint[0] - here[1] + here[0]).norm() < 0.02); // both lie over both
            }
            joint = jointAt(crosses, pages[i].window.right - core::pageOverlap / 2);
            const auto& longest = *std::ranges::max_element(
                lines, {}, [](const std::vector<Vector2d>& line) { return line.size(); });
            for (const Vector2d& p : longest)
                whole.push_back(p + moved);
        }
        double worst = 0.0;
        for (const Vector2d& p : whole) {
            const double x = p.x() - pages.front().origin.x(), y = pages.front().origin.y() - p.y();
            worst = std::max(worst, std::abs(y - (120 + 100 * std::sin(x / length * 14.0))));
        }
        const auto [first, last] = std::ranges::minmax(whole, {}, [](const Vector2d& p) { return p.x(); });
        UNSCOPED_INFO("worst " << worst << ", length " << last.x() - first.x());
        CHECK(worst < 0.1);
        CHECK(last.x() - first.x() == Approx(length).margin(0.1));
    }
}
