#include "core/afloat/afloat.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/pattern_set.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

using namespace sheerlay;
using Eigen::Vector2d;

// Every page of every pattern of every example, measured from the PDF alone (pdftocairo).

namespace {

constexpr double tolerance = 0.05; // mm, issue 6

/// What of a segment lies in a box; none where nothing does. Liang and Barsky, from memory.
std::optional<std::pair<Vector2d, Vector2d>>
clipped(const Vector2d& from, const Vector2d& to, const core::Box& box) {
    double begin = 0.0, end = 1.0;
    const Vector2d run = to - from;
    const std::array<std::pair<double, double>, 4> sides{{{-run.x(), from.x() - box.left},
                                                          {run.x(), box.right - from.x()},
                                                          {-run.y(), from.y() - box.top},
                                                          {run.y(), box.bottom - from.y()}}};
    for (const auto& [rate, room] : sides) {
        if (rate == 0.0 && room < 0.0)
            return std::nullopt;
        if (rate < 0.0)
            begin = std::max(begin, room / rate);
        if (rate > 0.0)
            end = std::min(end, room / rate);
    }
    if (begin >= end)
        return std::nullopt;
    return std::pair(Vector2d(from + begin * run), Vector2d(from + end * run));
}

/// Where ends and corners of a pattern's lines stand on a page, mm on paper.
std::vector<Vector2d> wantedOn(const core::PatternPage& page, const core::Pattern& pattern) {
    std::vector<Vector2d> wanted;
    for (const core::PatternLine& line : pattern.lines) {
        const std::size_t count = line.points.size(), segments = line.closed ? count : count - 1;
        for (std::size_t i = 0; i < segments; ++i) {
            const auto at = [&](std::size_t k) {
                const Vector2d& p = line.points[k % count];
                return Vector2d(page.origin.x() + p.x(), page.origin.y() - p.y());
            };
            if (const auto part = clipped(at(i), at(i + 1), page.window)) {
                wanted.push_back(part->first);
                wanted.push_back(part->second);
            }
        }
    }
    return wanted;
}

bool hasBar(const std::vector<std::vector<Vector2d>>& lines, double length, int axis) {
    return std::ranges::any_of(lines, [&](const std::vector<Vector2d>& line) {
        return line.size() == 2 && std::abs(std::abs((line[1] - line[0])[axis]) - length) <= tolerance &&
               std::abs((line[1] - line[0])[1 - axis]) < 0.01;
    });
}

struct Measured {
    int pages = 0;
    int distances = 0;
    double worst = 0.0; ///< mm, of a distance
};

/// Three distances between points of the pattern that lie far apart on the page.
void measure(const core::PatternPage& page,
             const core::Pattern& pattern,
             const std::vector<std::vector<Vector2d>>& lines,
             Measured& all) {
    for (const double length : {100.0, 101.6})
        for (const int axis : {0, 1})
            CHECK(hasBar(lines, length, axis));
    const std::vector<Vector2d> wanted = wantedOn(page, pattern);
    REQUIRE(wanted.size() >= 2);
    // a vertex of a straight run may be left out of the file: then its place on that run
    const auto onPaper = [&](const Vector2d& at) {
        Vector2d nearest = at + Vector2d(1e3, 1e3);
        for (const auto& line : lines)
            for (std::size_t i = 1; i < line.size(); ++i) {
                const Vector2d run = line[i] - line[i - 1];
                const double part =
                    run.squaredNorm() > 0 ? (at - line[i - 1]).dot(run) / run.squaredNorm() : 0.0;
                const Vector2d p = line[i - 1] + std::clamp(part, 0.0, 1.0) * run;
                if ((p - at).norm() < (nearest - at).norm())
                    nearest = p;
            }
        return nearest;
    };
    const auto farthest = [&](const Vector2d& from) {
        return *std::ranges::max_element(wanted, {}, [&](const Vector2d& p) { return (p - from).norm(); });
    };
    const Vector2d a = farthest(wanted.front()), b = farthest(a);
    const Vector2d c = *std::ranges::max_element(
        wanted, {}, [&](const Vector2d& p) { return std::min((p - a).norm(), (p - b).norm()); });
    for (const auto& [one, other] : {std::pair{a, b}, {b, c}, {c, a}}) {
        if ((one - other).norm() < 1.0)
            continue; // a page that a single stroke crosses
        const double off = std::abs((onPaper(one) - onPaper(other)).norm() - (one - other).norm());
        CHECK(off <= tolerance);
        CHECK((onPaper(one) - one).norm() <= tolerance);
        all.worst = std::max(all.worst, off);
        ++all.distances;
    }
    ++all.pages;
}

} // namespace

TEST_CASE("check bars and three distances on every page of every example's patterns are true") {
    Measured all;
    for (const char* name : {"brindlewick", "marsh-hen", "sedgewren", "tanglepike"}) {
        const test::Planked boat = test::planked(
            test::projectAt(std::string(SHEERLAY_EXAMPLES "/") + name + "/" + name + ".sheerlay"));
        const auto after = core::afterPlanking(boat.project, boat.hull, boat.plan);
        const auto set =
            core::patternSet(boat.project, boat.hull, boat.plan, core::Units::Millimetres, after.fitout);
        REQUIRE(set);
        std::vector<core::PatternPage> pages;
        std::vector<const core::Pattern*> of;
        for (const auto* patterns : {&set->moulds, &set->strips, &set->parts})
            for (const core::Pattern& pattern : *patterns)
                for (const core::Page& paper : {core::pageOf(core::PageSize::A4), core::rollPageFor(pattern)})
                    for (core::PatternPage& page : core::pagesOf(pattern, paper, boat.project.name)) {
                        pages.push_back(std::move(page));
                        of.push_back(&pattern);
                    }
        std::vector<core::Sheet> sheets;
        for (const core::PatternPage& page : pages)
            sheets.push_back(page.sheet);
        const test::Folder folder;
        const std::string path = folder.file("patterns.pdf");
        REQUIRE(ui::writePdf(sheets, path));
        for (std::size_t i = 0; i < pages.size(); ++i) {
            INFO(name << ", " << of[i]->title << ", page " << i + 1);
            measure(pages[i], *of[i], test::polylines(test::svgOf(path, static_cast<int>(i) + 1)), all);
        }
    }
    WARN(all.pages << " pages, " << all.distances << " distances, " << all.worst << " mm off at most");
    CHECK(all.pages > 500);
    CHECK(all.distances > 2 * all.pages);
}
