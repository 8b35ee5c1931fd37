#include "core/patterns/fitout_pattern.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/pattern_set.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>
#include <set>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double radius = 400.0; // mm, of the pipe

/// A pipe with a bulkhead and a deck at the bow, a caned seat, a thwart and a yoke.
Fitout fitted() {
    Project p = test::bareFitout();
    FitoutChoices& f = *p.fitout;
    f.gunwales = GunwaleChoices{};
    f.gunwales->inner = {20, 18};
    f.bulkheads.resize(1);
    f.bulkheads[0].belowSheer = 30;
    f.decks.resize(1);
    f.decks[0].length = 500;
    f.seats.resize(1);
    f.seats[0].name = "Bow seat";
    f.seats[0].x = 1500;
    f.seats[0].belowSheer = 90;
    f.seats[0].caning = CaningChoice{};
    f.thwarts.resize(1);
    f.thwarts[0].name = "thwart";
    f.thwarts[0].x = 900;
    f.yoke = ThwartChoice{};
    f.yoke->name = "yoke";
    const auto fitout =
        planFitout(p, test::quarterPipe(radius, 3000), Plan{}, [](const Fitout&) { return 2100.0; });
    REQUIRE(fitout);
    REQUIRE(fitout->has_value());
    return **fitout;
}

const Pattern& named(const std::vector<Pattern>& patterns, const std::string& file) {
    const auto found = std::ranges::find_if(patterns, [&](const Pattern& p) { return p.file == file; });
    REQUIRE(found != patterns.end());
    return *found;
}

std::vector<PatternLine> cuts(const Pattern& pattern) {
    std::vector<PatternLine> lines;
    std::ranges::copy_if(pattern.lines, std::back_inserter(lines), [](const PatternLine& line) {
        return line.layer == Layer::Cut;
    });
    return lines;
}

} // namespace

TEST_CASE("each part has a pattern, none takes another's file") {
    const auto patterns = fitoutPatterns(fitted(), Units::Millimetres);
    std::set<std::string> files;
    for (const Pattern& p : patterns)
        files.insert(p.file);
    CHECK(files == std::set<std::string>{"bulkhead-bow",
                                         "deck-bow",
                                         "part-bow-seat",
                                         "part-thwart",
                                         "part-yoke",
                                         "gunwale-sections",
                                         "gunwale-joints"});
    Fitout twice = fitted();
    twice.seats.push_back(twice.seats[0]);
    const auto more = fitoutPatterns(twice, Units::Millimetres);
    CHECK(named(more, "part-bow-seat").title == named(more, "part-bow-seat-2").title);
    CHECK(fitoutPatterns(Fitout{}, Units::Inches).empty());
}

TEST_CASE("a bulkhead's line is the circle, a deck's the plate, both at true scale") {
    const Fitout fitout = fitted();
    const auto patterns = fitoutPatterns(fitout, Units::Millimetres);
    const Pattern& bulkhead = named(patterns, "bulkhead-bow");
    const auto outline = cuts(bulkhead);
    REQUIRE(outline.size() == 1);
    for (const Eigen::Vector2d& p : outline[0].points)
        CHECK((std::abs(p.norm() - radius) < 0.05 || std::abs(p.y() + 30) < 0.05)); // the top lies 30 lower
    // the edge of a pipe is square: there is no other line
    CHECK(std::ranges::none_of(bulkhead.lines,
                               [](const PatternLine& l) { return l.kind == LineKind::Hidden; }));
    const Box deck = extentOf(named(patterns, "deck-bow"));
    CHECK(deck.right - deck.left == Approx(2 * (radius - 20)).margin(0.05)); // to the gunwales
    CHECK(deck.top - deck.bottom == Approx(500).margin(0.05));
}

TEST_CASE("a seat's rails are as long as the circle is wide, its bolts under the gunwale's middle") {
    const Fitout fitout = fitted();
    const Pattern seat = named(fitoutPatterns(fitout, Units::Millimetres), "part-bow-seat");
    const auto lines = cuts(seat);
    const Seat& s = fitout.seats[0];
    // two rails from above, the holes, two faces; across the circle at 90 and at 90 + 19.05 below the axis
    REQUIRE(lines.size() == 4 + static_cast<std::size_t>(s.caning->holes));
    const double top = 2 * std::sqrt(radius * radius - 90 * 90);
    const double bottom = 2 * std::sqrt(radius * radius - std::pow(90 + 19.05, 2));
    for (const std::size_t i : {std::size_t{0}, std::size_t{1}}) {
        const auto& p = lines[i].points;
        CHECK((p[1] - p[0]).norm() == Approx(top).margin(0.3));
        CHECK(p[0].y() - p[3].y() == Approx(38.1));
    }
    CHECK(lines[0].points[0].y() - lines[1].points[3].y() == Approx(254)); // over both rails
    const auto& face = lines.back().points;
    CHECK((face[1] - face[0]).norm() == Approx(top).margin(0.3));
    CHECK((face[3] - face[2]).norm() == Approx(bottom).margin(0.3));
    int bolts = 0;
    for (const PatternLine& line : seat.lines) {
        if (line.layer != Layer::Mark || line.points.size() != 2 ||
            std::abs((line.points[1] - line.points[0]).norm() - 10) > 1e-6)
            continue;
        ++bolts; // arms of a cross; a gunwale 20 wide against the side at the sheer
        CHECK(std::abs(0.5 * (line.points[0].x() + line.points[1].x())) == Approx(radius - 10).margin(0.05));
    }
    CHECK(bolts == 8);
}

TEST_CASE("caning holes lie in the rails, as far apart as they are told") {
    const Fitout fitout = fitted();
    const Seat& s = fitout.seats[0];
    const auto lines = cuts(named(fitoutPatterns(fitout, Units::Millimetres), "part-bow-seat"));
    std::vector<Eigen::Vector2d> front;
    for (const PatternLine& line : lines) {
        if (line.points.size() < 10)
            continue;
        Eigen::Vector2d middle = Eigen::Vector2d::Zero();
        for (const Eigen::Vector2d& p : line.points)
            middle += p / static_cast<double>(line.points.size());
        if (std::abs(middle.y() + 38.1 - 12.7) < 1e-6)
            front.push_back(middle);
    }
    REQUIRE(front.size() == static_cast<std::size_t>(s.caning->front));
    for (std::size_t i = 1; i < front.size(); ++i)
        CHECK((front[i] - front[i - 1]).norm() == Approx(s.caning->spacingAcross));
    CHECK(front.front().x() == Approx(-front.back().x()));
}

TEST_CASE("a bulkhead in a cone shows its smaller face as a dashed line") {
    Project p = test::bareFitout();
    p.fitout->bulkheads.resize(1);
    p.fitout->bulkheads[0].thickness = 10;
    const auto fitout =
        planFitout(p, test::coneBoat(200, 0.2, 2000), Plan{}, [](const Fitout&) { return 900.0; });
    REQUIRE(fitout);
    const Pattern bulkhead = fitoutPatterns(**fitout, Units::Millimetres).at(0);
    const double larger = 200 + 0.2 * 304.8, smaller = 200 + 0.2 * (304.8 - 10);
    std::size_t dashed = 0;
    for (const PatternLine& line : bulkhead.lines) {
        if (line.kind != LineKind::Hidden)
            continue;
        ++dashed;
        for (const Eigen::Vector2d& q : line.points)
            CHECK(q.norm() == Approx(smaller).margin(0.05));
    }
    CHECK(dashed == 2); // port and starboard
    const auto outline = cuts(bulkhead);
    for (const Eigen::Vector2d& q : outline.at(0).points)
        CHECK((std::abs(q.norm() - larger) < 0.05 || std::abs(q.y()) < 0.05));
}

TEST_CASE("the parts on paper: inside the margins, no words over each other, either unit") {
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const auto patterns = fitoutPatterns(fitted(), units);
        CHECK(rollPages(patterns, "Pipe").size() == patterns.size()); // each whole
        auto pages = rollPages(patterns, "Pipe");
        for (Sheet& sheet :
             tiledPages(patterns, units == Units::Inches ? PageSize::Letter : PageSize::A4, "Pipe"))
            pages.push_back(std::move(sheet));
        for (const Sheet& sheet : pages) {
            INFO(sheet.title);
            CHECK(test::outside(sheet, pageMargin - 0.5) == "");
            CHECK(test::overlapping(sheet) == "");
        }
    }
}
