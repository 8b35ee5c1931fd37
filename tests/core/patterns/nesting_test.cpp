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
    for (const auto& sheet : nesting.sheets) {
        std::vector<Outline> placed;
        for (const NestedPart& part : sheet) {
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
                if (p.x() < -1e-6 || p.y() < -1e-6 || p.x() > goods.length + 1e-6 ||
                    p.y() > goods.width + 1e-6)
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
    const SheetGoods goods{2440.0, 1220.0, 8.0};
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
    const SheetGoods small{800.0, 800.0, 8.0};
    const Outline angle{{0, 0}, {800, 0}, {800, 200}, {200, 200}, {200, 800}, {0, 800}};
    CHECK(nest({angle, rectangle(560.0, 560.0)}, small).sheets.size() == 1);
    CHECK_THROWS_AS(nest({{{0, 0}, {1, 1}}}, goods), std::invalid_argument);
    CHECK_THROWS_AS(nest({rectangle(10, 10)}, SheetGoods{2440.0, 1220.0, 0.0}), std::invalid_argument);
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
        const SheetGoods goods{1500.0, 900.0, 4.0 + round};
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
        const NestedBoards boards = nestMoulds(*set);
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
    }
}
