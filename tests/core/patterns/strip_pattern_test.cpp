#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/strip_pattern.hpp"
#include "core/sheets/flat_strip.hpp"
#include "core/sheets/words.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>
#include <regex>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

const test::Planked& boat() {
    static const test::Planked made =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    return made;
}

std::vector<PatternLine> cutsOf(const Pattern& pattern) {
    std::vector<PatternLine> cuts;
    for (const PatternLine& line : pattern.lines)
        if (line.layer == Layer::Cut)
            cuts.push_back(line);
    return cuts;
}

/// Where a level of y crosses a pattern's cut lines at x: the height of wood there, mm.
double heightAt(const Pattern& pattern, double x, double low, double high) {
    double top = -1e9, bottom = 1e9;
    for (const PatternLine& line : cutsOf(pattern))
        for (std::size_t i = line.closed ? 0 : 1; i < line.points.size(); ++i) {
            const Vector2d& a = line.points[i == 0 ? line.points.size() - 1 : i - 1];
            const Vector2d& b = line.points[i];
            if ((a.x() - x) * (b.x() - x) > 0.0 || a.x() == b.x())
                continue;
            const double y = a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
            if (y < low || y > high)
                continue;
            top = std::max(top, y);
            bottom = std::min(bottom, y);
        }
    return top - bottom;
}

} // namespace

TEST_CASE("a straight strip's pattern is its outline in the plan, whole or cut behind the point") {
    test::FakeBoat fake = test::makeFakeBoat(2);
    for (const double length : {700.0, 4800.0}) {
        test::FakeStrip form;
        form.length = length;
        form.cut = 0.12; // a point of 132 mm
        fake.plan.strips = {test::makeFakeStrip(form)};
        const std::vector<Pattern> patterns =
            stripPatterns(fake.project, fake.hull, fake.plan, Units::Millimetres);
        REQUIRE(patterns.size() == 1);
        const std::vector<PatternLine> cuts = cutsOf(patterns.front());
        const std::vector<Vector2d> outline = layStraight(fake.plan.strips.front()).straight;
        const bool whole = length < 1000.0;
        REQUIRE(cuts.size() == (whole ? 1U : 2U)); // of the long one, a bow and a stern end
        CHECK(cuts.front().closed == whole);
        if (whole) {
            REQUIRE(cuts.front().points.size() == outline.size());
            for (std::size_t i = 1; i < outline.size(); ++i)
                CHECK(((cuts.front().points[i] - cuts.front().points[0]) - (outline[i] - outline[0])).norm() <
                      1e-9);
            continue;
        }
        for (const PatternLine& line : cuts) {
            double first = 1e9, last = -1e9;
            for (const Vector2d& p : line.points) {
                first = std::min(first, p.x());
                last = std::max(last, p.x());
            }
            // the point is the width over the tangent of the cut long, and 60 mm of full width follow
            CHECK(last - first == Approx(form.width / std::tan(form.cut) + 60.0).margin(0.5));
        }
    }
}

TEST_CASE("the last planks' patterns are as wide at their marks as the plan and the words say") {
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const double pitch = units == Units::Inches ? 6 * mmPerInch : 150.0;
        int measured = 0;
        for (const Pattern& pattern : stripPatterns(boat().project, boat().hull, boat().plan, units))
            for (const PatternText& title : pattern.texts) {
                const Strip* strip = nullptr;
                for (const Strip& s : boat().plan.strips)
                    if (s.kind == StripKind::Shutter && title.text.starts_with(s.id + ", marks from"))
                        strip = &s;
                if (strip == nullptr)
                    continue;
                const double low = title.at.y() - 40.0, high = title.at.y() - 2.0;
                for (const PatternLine& mark : pattern.lines) {
                    const bool upright = mark.layer == Layer::Mark && mark.points.size() == 2 &&
                                         mark.kind == LineKind::Thin &&
                                         std::abs(mark.points[0].x() - mark.points[1].x()) < 1e-9;
                    if (!upright || mark.points[0].y() < low || mark.points[0].y() > high)
                        continue;
                    const double x = mark.points[0].x();
                    const double s = std::round(x / pitch) * pitch;
                    INFO(strip->id << " at " << s);
                    CHECK_THAT(heightAt(pattern, mark.points[0].x(), low, high),
                               WithinAbs(widthAt(*strip, s), 0.2));
                    ++measured;
                }
            }
        CHECK(measured >= 5);
    }
}

TEST_CASE("every pointed strip is there, and every word stands on some page, inside its window") {
    const std::vector<Pattern> patterns =
        stripPatterns(boat().project, boat().hull, boat().plan, Units::Inches);
    std::string words;
    for (const Pattern& pattern : patterns) {
        for (const PatternText& text : pattern.texts)
            words += text.text + "\n";
        for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
            std::string printed;
            for (const PatternPage& page : pagesOf(pattern, pageOf(size), "Trial")) {
                CHECK(test::outside(page.sheet, pageMargin - 0.6) == "");
                printed += test::wordsOf(page.sheet);
            }
            for (const PatternText& text : pattern.texts) {
                INFO(pattern.title << ": " << text.text);
                CHECK(printed.find(text.text) != std::string::npos);
            }
        }
    }
    for (const Strip& strip : boat().plan.strips)
        for (const StripEnd& end : strip.ends) {
            constexpr double slant = 0.2; // rad: a point over four times the width long
            if (strip.side == Side::Port || end.cut > slant || strip.kind == StripKind::Shutter)
                continue;
            INFO(strip.id << " " << toText(end.end));
            CHECK(std::regex_search(
                words,
                std::regex("(^|\n)" + strip.id + "( P[0-9]+)?(, " + toText(end.end) + " end)?, marks from")));
        }
}
