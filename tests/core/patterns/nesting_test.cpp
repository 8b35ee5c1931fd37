#include "core/patterns/nest_sheets.hpp"
#include "core/patterns/nesting.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <set>
#include <stdexcept>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

using Outline = std::vector<Vector2d>;

Outline rectangle(double a, double b) {
    return {{0, 0}, {a, 0}, {a, b}, {0, b}};
}

/// As many sheets of one size as are needed.
SheetGoods sheetsOf(double length, double width, double gap) {
    return {{SheetSize{length, width, {}}}, gap};
}

bool inside(const Outline& outline, const Vector2d& p) {
    bool in = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++)
        if ((outline[i].y() > p.y()) != (outline[j].y() > p.y()) &&
            p.x() < outline[i].x() + (p.y() - outline[i].y()) / (outline[j].y() - outline[i].y()) *
                                         (outline[j].x() - outline[i].x()))
            in = !in;
    return in;
}

double distance(const Vector2d& p, const Vector2d& a, const Vector2d& b) {
    const Vector2d d = b - a;
    const double t = std::clamp((p - a).dot(d) / d.squaredNorm(), 0.0, 1.0);
    return (a + t * d - p).norm();
}

/// Least distance between two outlines; 0 where a corner of one lies in the other. Corners are close together
/// or the outlines convex, so that crossing edges without a corner inside don't go unseen.
double apart(const Outline& a, const Outline& b) {
    double least = 1e9;
    for (const auto& [one, other] : {std::pair{&a, &b}, std::pair{&b, &a}})
        for (const Vector2d& p : *one) {
            if (inside(*other, p))
                return 0.0;
            for (std::size_t i = 0; i < other->size(); ++i)
                least = std::min(least, distance(p, (*other)[i], (*other)[(i + 1) % other->size()]));
        }
    return least;
}

/// Checks a nesting without any of its own code. @return in words what is wrong
std::string wrong(const Nesting& nesting, const std::vector<Outline>& parts, const SheetGoods& goods) {
    std::set<std::size_t> seen(nesting.tooLarge.begin(), nesting.tooLarge.end());
    seen.insert(nesting.left.begin(), nesting.left.end());
    std::vector<int> used(goods.sizes.size(), 0);
    for (const NestedSheet& sheet : nesting.sheets) {
        const SheetSize& size = goods.sizes.at(sheet.size);
        if (size.count && ++used[sheet.size] > *size.count)
            return "more sheets than there are";
        std::vector<Outline> placed;
        for (const NestedPart& part : sheet.parts) {
            if (!seen.insert(part.part).second)
                return "part " + std::to_string(part.part) + " twice";
            Outline at;
            for (const Vector2d& p : parts[part.part])
                at.push_back(part.onSheet(p));
            for (std::size_t i = 1; i < at.size(); ++i) // moved rigidly
                if (std::abs((at[i] - at[i - 1]).norm() -
                             (parts[part.part][i] - parts[part.part][i - 1]).norm()) > 1e-9)
                    return "part " + std::to_string(part.part) + " bent";
            for (const Vector2d& p : at)
                if (p.x() < -1e-6 || p.y() < -1e-6 || p.x() > size.length + 1e-6 || p.y() > size.width + 1e-6)
                    return "part " + std::to_string(part.part) + " past the sheet's edge";
            for (const Outline& other : placed)
                if (apart(at, other) < goods.gap - 1e-6)
                    return "part " + std::to_string(part.part) + " too near another";
            placed.push_back(std::move(at));
        }
    }
    return seen.size() == parts.size() ? "" : "a part is missing";
}

} // namespace

TEST_CASE("squares that just go on a sheet do, the ninth takes a second, one too large is told") {
    const SheetGoods goods = sheetsOf(2440.0, 1220.0, 8.0);
    std::vector<Outline> parts(8, rectangle(600.0, 600.0)); // 4 x 600 + 3 x 8 and 2 x 600 + 8
    CHECK(nest(parts, goods).sheets.size() == 1);
    CHECK(wrong(nest(parts, goods), parts, goods) == "");
    parts.push_back(rectangle(600.0, 600.0));
    CHECK(nest(parts, goods).sheets.size() == 2);
    parts.push_back(rectangle(2500.0, 100.0));
    const Nesting nesting = nest(parts, goods);
    CHECK(nesting.tooLarge == std::vector<std::size_t>{9});
    CHECK(wrong(nesting, parts, goods) == "");
    CHECK(nesting.leastByArea == 2); // 9 x 0.36 m2 on 2.98 m2
    // standing upright it wouldn't go on; turned it does
    CHECK(nest({rectangle(300.0, 2400.0)}, goods).sheets.size() == 1);
    // a part that goes into the hollow of another needs no second sheet
    const SheetGoods small = sheetsOf(800.0, 800.0, 8.0);
    const Outline angle{{0, 0}, {800, 0}, {800, 200}, {200, 200}, {200, 800}, {0, 800}};
    CHECK(nest({angle, rectangle(560.0, 560.0)}, small).sheets.size() == 1);
    CHECK_THROWS_AS(nest({{{0, 0}, {1, 1}}}, goods), std::invalid_argument);
    CHECK_THROWS_AS(nest({rectangle(10, 10)}, sheetsOf(2440.0, 1220.0, 0.0)), std::invalid_argument);
    CHECK_THROWS_AS(nest({rectangle(10, 10)}, sheetsOf(2440.0, 0.0, 8.0)), std::invalid_argument);
    CHECK_THROWS_AS(nest({rectangle(10, 10)}, SheetGoods{{}, 8.0}), std::invalid_argument);
}

TEST_CASE("sheets of several sizes are begun in their order, those that are few only so often") {
    SheetGoods goods;
    goods.sizes = {SheetSize{1200, 800, 1}, SheetSize{2440, 1220, 2}};
    goods.gap = 8.0;
    std::vector<Outline> parts(3, rectangle(1150.0, 780.0)); // two on a large sheet, one on the small
    parts.push_back(rectangle(2400.0, 400.0));               // beside those two
    Nesting nesting = nest(parts, goods);
    CHECK(wrong(nesting, parts, goods) == "");
    CHECK(nesting.left.empty());
    CHECK(std::ranges::count(nesting.sheets, std::size_t{0}, &NestedSheet::size) == 1);
    for (int more = 0; more < 4; ++more)
        parts.push_back(rectangle(1150.0, 780.0));
    nesting = nest(parts, goods);
    CHECK(wrong(nesting, parts, goods) == "");
    CHECK(nesting.left.size() == 1); // three more on the second large one: 3 x 780 + 2 x 8 of 2440
    goods.sizes[1].count.reset();
    nesting = nest(parts, goods);
    CHECK(wrong(nesting, parts, goods) == "");
    CHECK(nesting.left.empty());
}

TEST_CASE("a mould larger than the sheets, or without one, is told by name with what would do") {
    const Project project = test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    const auto hull = loft(project);
    REQUIRE(hull);
    const auto set = mouldsOf(project, *hull);
    REQUIRE(set);
    const std::size_t all = sawnParts(*set).size();
    CHECK(nestingFindings(nestMoulds(*set, project.moulds), Units::Inches).empty());

    MouldChoices small;
    small.sheets = {SheetSize{600.0, 600.0, {}}};
    const NestedBoards tight = nestMoulds(*set, small);
    REQUIRE_FALSE(tight.nesting.tooLarge.empty());
    const auto larger = nestingFindings(tight, Units::Millimetres);
    REQUIRE(larger.size() == tight.nesting.tooLarge.size());
    for (std::size_t i = 0; i < larger.size(); ++i) {
        CHECK(larger[i].code == "mould-larger-than-sheet");
        CHECK(larger[i].level == Level::Caution);
        std::string name = tight.parts[tight.nesting.tooLarge[i]].name;
        CHECK(larger[i].text.find(name.substr(1)) != std::string::npos); // its first letter may be a capital
        CHECK(larger[i].text.find("would do") != std::string::npos);
    }

    MouldChoices few;
    few.sheets = {SheetSize{2438.4, 1219.2, 1}};
    const NestedBoards short_ = nestMoulds(*set, few);
    REQUIRE_FALSE(short_.nesting.left.empty());
    const auto out = nestingFindings(short_, Units::Millimetres);
    REQUIRE(out.size() == 1);
    CHECK(out.front().code == "sheets-run-out");
    CHECK(out.front().text.find(short_.parts[short_.nesting.left.front()].name) != std::string::npos);
    CHECK(short_.nesting.sheets.size() == 1);

    for (const NestedBoards* boards : {&tight, &short_}) { // the page says the same and keeps its margins
        std::size_t laid = 0;
        for (const NestedSheet& sheet : boards->nesting.sheets)
            laid += sheet.parts.size();
        CHECK(laid + boards->nesting.tooLarge.size() + boards->nesting.left.size() == all);
        std::string words;
        for (const Sheet& sheet : nestedPages(project, *boards, Units::Millimetres, PageSize::A4)) {
            CHECK(test::outside(sheet, 8.0) == "");
            CHECK(test::overlapping(sheet) == "");
            words += test::wordsOf(sheet);
        }
        CHECK(words.find("would do") != std::string::npos);
    }
}

TEST_CASE("random round-edged parts never come nearer than the gap, nor past the edge") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> size(60.0, 420.0);
    for (int round = 0; round < 12; ++round) {
        std::vector<Outline> parts;
        for (int i = 0; i < 14; ++i) {
            const double a = size(random), b = size(random);
            Outline ellipse;
            for (int k = 0; k < 90; ++k) {
                const double t = 2 * 3.14159265358979 * k / 90;
                ellipse.emplace_back(a / 2 * std::cos(t) + 37.3 * i, b / 2 * std::sin(t) - 11.1 * round);
            }
            parts.push_back(ellipse);
        }
        const SheetGoods goods = sheetsOf(1500.0, 900.0, 4.0 + round);
        INFO("round " << round);
        CHECK(wrong(nest(parts, goods), parts, goods) == "");
    }
}

TEST_CASE("the examples' moulds go on few sheets, every one, and their pages are clean") {
    for (const std::string name : {"brindlewick", "marsh-hen", "sedgewren"}) {
        const Project project =
            test::projectAt(std::string(SHEERLAY_EXAMPLES) + "/" + name + "/" + name + ".sheerlay");
        const auto hull = loft(project);
        REQUIRE(hull);
        const auto set = mouldsOf(project, *hull);
        REQUIRE(set);
        const NestedBoards boards = nestMoulds(*set, project.moulds);
        std::vector<Outline> outlines;
        for (const SawnPart& part : boards.parts)
            outlines.push_back(part.outline);
        INFO(name);
        CHECK(wrong(boards.nesting, outlines, boards.goods) == "");
        CHECK(boards.nesting.tooLarge.empty());
        CHECK(static_cast<int>(boards.nesting.sheets.size()) <= 2 * boards.nesting.leastByArea);
        CHECK(nestedPatterns(boards).size() == boards.nesting.sheets.size());
        std::string words;
        for (const Sheet& sheet : nestedPages(project, boards, Units::Millimetres, PageSize::A4)) {
            CHECK(test::outside(sheet, 8.0) == "");
            CHECK(test::overlapping(sheet) == "");
            words += test::wordsOf(sheet);
        }
        for (const SawnPart& part : boards.parts)
            CHECK(words.find(part.name) != std::string::npos);
        const char* usual = project.units == Units::Inches ? "Sheet 1, 2438 mm by 1219 mm" // 8 by 4 ft
                                                           : "Sheet 1, 2440 mm by 1220 mm";
        CHECK(words.find(usual) != std::string::npos);
        for (const Pattern& pattern : nestedPatterns(boards)) {
            REQUIRE(pattern.lines.size() == pattern.texts.size() + 1); // the sheet's edge comes first
            for (std::size_t i = 0; i < pattern.texts.size(); ++i) {
                INFO(pattern.texts[i].text);
                CHECK(inside(pattern.lines[i + 1].points, pattern.texts[i].at));
            }
        }
    }
}
