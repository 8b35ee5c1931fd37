#include "core/journal/what_was_laid.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double strip = 17.0; // mm

/// Ten stations of a pipe that 35.8 strips cover.
struct Pipe {
    Project project;
    LoftedHull hull;
    Plan plan;
    std::vector<std::string> names;

    Pipe() {
        project.strips.coverWidth = strip;
        project.planking.layOn = LayOn::Moulds;
        hull = quarterPipe(35.8 * strip * 2 / std::numbers::pi, 3000);
        hull.stationX.clear();
        hull.xShift = 100; // the table's datum lies 100 mm aft of the bow
        for (int i = 0; i < 10; ++i) {
            hull.stationX.push_back(150 + 300 * i);
            names.push_back(std::to_string(i + 1));
        }
        plan = plank(project, hull).value();
    }

    /// A round with the tape that finds `error(x)` mm less left than planned.
    template <class Error> RowReading round(int row, Error error) const {
        RowReading reading;
        reading.row = row;
        for (const double x : hull.stationX) {
            GirthLeft girth;
            girth.x = x - hull.xShift;
            girth.girth = plannedGirthLeft(plan, hull, row, x)->left - error(x);
            reading.girthLeft.push_back(girth);
        }
        return reading;
    }
};

const Pipe& pipe() {
    static const Pipe one;
    return one;
}

double none(double /*x*/) {
    return 0;
}

const Finding& findingOf(const std::vector<Finding>& findings, const std::string& code) {
    const auto found =
        std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; });
    REQUIRE(found != findings.end());
    return *found;
}

} // namespace

TEST_CASE("a sliver for a last plank is told with the strip before it") {
    Journal journal; // strips that cover a little less: a sliver is left after one more
    journal.readings = {pipe().round(0, none), pipe().round(20, [](double) { return -0.17 * strip; })};
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    REQUIRE(laid->lastPlank);
    INFO(laid->lastPlank->part);
    REQUIRE(laid->lastPlank->part < 0.25);
    const double cover = laid->lastPlank->width / laid->lastPlank->part;
    const auto findings = tellWhatWasLaid(*laid, pipe().hull, pipe().names);
    const std::string& text = findingOf(findings, "journal-last-plank").text;
    INFO(text);
    const std::string both = std::to_string(std::lround(cover + laid->lastPlank->width));
    CHECK(text.find("(with the strip before it " + both + " mm") != std::string::npos);
    CHECK(text.find("which two planks can share)") != std::string::npos);
}

TEST_CASE("readings as planned leave everything as planned") {
    Journal journal;
    journal.readings = {pipe().round(0, none), pipe().round(20, none)};
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    CHECK(laid->row == 20);
    CHECK(laid->stations == 10);
    CHECK_THAT(laid->offset.value, WithinAbs(0, 1e-6));
    CHECK_THAT(laid->excess.value, WithinAbs(0, 1e-6));
    CHECK_THAT(laid->lastPlank->width, WithinAbs(0.8 * strip, 0.02));
    CHECK(laid->correction.kind == Correction::Kind::None);
    for (double x = 0; x <= 3000; x += 100)
        CHECK_THAT(laid->edge.at(x), WithinAbs(0, 1e-6));

    const auto findings = tellWhatWasLaid(*laid, pipe().hull, pipe().names);
    CHECK(findings.size() == 3);
    CHECK(findingOf(findings, "journal-edge").text.find("where it was planned") != std::string::npos);
    CHECK(findingOf(findings, "journal-cover-width").text.find("as planned") != std::string::npos);
    const Finding& last = findingOf(findings, "journal-last-plank");
    CHECK(last.level == Level::Note);
    CHECK(last.text.find("14 mm (9/16\") wide") != std::string::npos); // 13.6
    CHECK(last.text.find("80 per cent of a strip; nothing need be done.") != std::string::npos);
}

TEST_CASE("strips 0.15 mm wider show in the edge, the width and the last plank") {
    Journal journal;
    for (const int row : {0, 5, 10, 15, 20})
        journal.readings.push_back(pipe().round(row, [row](double) { return 0.15 * row; }));
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    CHECK_THAT(laid->edge.at(1500), WithinAbs(3.0, 0.01)); // nearer the keel
    CHECK_THAT(laid->excess.value, WithinAbs(0.15, 0.015));
    CHECK(laid->excess.sd < 0.03);
    REQUIRE(laid->lastPlank);
    CHECK_THAT(laid->lastPlank->width, WithinAbs(0.8 * strip - 35 * 0.15, 1.0));
    REQUIRE(laid->correction.kind == Correction::Kind::MillNarrower);
    CHECK(laid->correction.firstRow == 21);
    CHECK(laid->correction.lastRow == 35);

    const auto findings = tellWhatWasLaid(*laid, pipe().hull, pipe().names);
    CHECK(findingOf(findings, "journal-edge").text.find("3.0 mm (0.12\") nearer the keel than planned") !=
          std::string::npos);
    const std::string cover = findingOf(findings, "journal-cover-width").text;
    CHECK(cover.find("really cover 17.1") != std::string::npos);
    CHECK(cover.find("more than planned") != std::string::npos);
    const Finding& last = findingOf(findings, "journal-last-plank");
    CHECK(last.level == Level::Caution);
    CHECK(last.text.find("mill the strips for rows 21 to 35 0.3") != std::string::npos);
    CHECK(last.text.find("from end to end") != std::string::npos); // a saw has no stations
    CHECK(last.text.find("between stations") == std::string::npos);
}

TEST_CASE("a little too wide: plane the strips still to come, between named stations") {
    Journal journal;
    journal.readings = {pipe().round(0, none), pipe().round(20, [](double) { return 2.0; })};
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    REQUIRE(laid->correction.kind == Correction::Kind::Plane);
    const std::string text =
        findingOf(tellWhatWasLaid(*laid, pipe().hull, pipe().names), "journal-last-plank").text;
    INFO(text);
    CHECK(text.find("; plane 0.2") != std::string::npos);
    CHECK(
        text.find("off each strip of rows 21 to 35 between stations 3 and 8, fading to nothing over the last "
                  "610 mm (2' 0\") of each end; the last plank is then 14 mm (9/16\") wide.") !=
        std::string::npos);
}

TEST_CASE("a mould that is short is told from wide strips by the bare reading") {
    // all moulds 3 mm short in girth: the edge of row 20 seems 3 mm nearer the keel, but no strip is wider
    Journal journal;
    journal.readings = {pipe().round(0, [](double) { return 3.0; }),
                        pipe().round(20, [](double) { return 3.0; })};
    const auto bare = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    journal.readings.erase(journal.readings.begin());
    const auto blind = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(bare);
    REQUIRE(blind);
    CHECK_THAT(bare->excess.value, WithinAbs(0, 1e-6));
    CHECK(blind->excess.value > 0.1);
    CHECK(blind->excess.sd > bare->excess.sd); // and says so
    CHECK_THAT(bare->lastPlank->width, WithinAbs(0.8 * strip - 3.0, 0.05));
}

TEST_CASE("moulds that differ among themselves don't bend the edge") {
    // the girth of every mould is off by 1 mm, the tape by 0.5 mm; the strips lie fair and as planned
    std::mt19937 random(7);
    std::normal_distribution<double> normal;
    double bumpy = 0, fair = 0;
    for (int boat = 0; boat < 60; ++boat) {
        std::vector<double> mould;
        for (int i = 0; i < 10; ++i)
            mould.push_back(normal(random));
        const auto tape = [&](double x) {
            return mould[static_cast<std::size_t>(x / 300)] + 0.5 * normal(random);
        };
        Journal journal;
        journal.readings = {pipe().round(20, tape)};
        const auto blind = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
        journal.readings.push_back(pipe().round(0, tape));
        const auto seeing = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
        REQUIRE(blind);
        REQUIRE(seeing);
        const auto bendOf = [](const WhatWasLaid& laid) {
            double most = 0;
            for (double x = 300; x <= 2700; x += 50)
                most = std::max(
                    most, std::abs(laid.edge.at(x - 50) - 2 * laid.edge.at(x) + laid.edge.at(x + 50)) / 2500);
            return 1000 * most;
        };
        bumpy += bendOf(*blind) / 60;
        fair += bendOf(*seeing) / 60;
    }
    INFO("edge bend per metre: " << bumpy << " without, " << fair << " with the bare moulds read");
    CHECK(fair < 0.4 * bumpy);
    CHECK(fair < 0.01);
}

TEST_CASE("both sides are taken together") {
    Journal journal;
    RowReading port = pipe().round(12, [](double) { return 2.0; });
    port.side = ReadSide::Port;
    RowReading starboard = pipe().round(12, [](double) { return 1.0; });
    starboard.side = ReadSide::Starboard;
    journal.readings = {port, starboard};
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    CHECK(laid->stations == 20);
    CHECK_THAT(laid->edge.at(1500), WithinAbs(1.5, 0.01));
}

TEST_CASE("a misread tape is left out and named") {
    Journal journal;
    RowReading round = pipe().round(20, none);
    round.girthLeft[4].girth += 25.4; // an inch
    GirthLeft beyond;
    beyond.x = 9000;
    beyond.girth = 100;
    round.girthLeft.push_back(beyond);
    journal.readings = {round};
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    CHECK(laid->stations == 9);
    REQUIRE(laid->leftOut.size() == 2);
    CHECK_THAT(laid->edge.at(1350), WithinAbs(0, 1e-6));
    int told = 0;
    for (const Finding& f : tellWhatWasLaid(*laid, pipe().hull, pipe().names))
        if (f.code == "journal-left-out") {
            ++told;
            const bool inch = f.text.find("at station 5 was left out") != std::string::npos;
            const bool past =
                f.text.find("a place 9100 mm (29' 10 1/4\") from the bow was left out, since the row "
                            "does not pass there") != std::string::npos;
            CHECK(inch != past);
        }
    CHECK(told == 2);
}

TEST_CASE("a reading is checked against the one before it, the first against the plan") {
    const auto one = [](int row, double off) {
        RowReading reading = pipe().round(row, [off](double) { return off; });
        reading.girthLeft = {reading.girthLeft[4]};
        return reading;
    };
    const auto laidOf = [](std::vector<RowReading> readings) {
        Journal journal;
        journal.readings = std::move(readings);
        return whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    };
    // an inch off the plan: a slip of the tape at row 5 as at row 20
    CHECK_FALSE(laidOf({one(5, 25.4)}));
    CHECK_FALSE(laidOf({one(20, 25.4)}));
    // what follows on from a reading that was taken is taken too, however far off the plan both are
    for (const double sign : {1.0, -1.0}) {
        const auto drifted = laidOf({one(18, sign * 17.0), one(19, sign * 17.4), one(30, sign * 22.0)});
        REQUIRE(drifted);
        CHECK(drifted->row == 30);
        CHECK(drifted->leftOut.empty());
    }
    // and an inch off that one is not, though it lies as planned but for a strip's half
    const auto jumped = laidOf({one(18, 17.0), one(19, -8.4)});
    REQUIRE(jumped);
    CHECK(jumped->row == 18);
    REQUIRE(jumped->leftOut.size() == 1);
    CHECK(jumped->leftOut.front().since == 18);
    const auto told = tellWhatWasLaid(*jumped, pipe().hull, pipe().names);
    const LeftOutReading& out = jumped->leftOut.front();
    const auto why = [&](int row, double x, double read) {
        return leftOutFinding(told, row, x, read, pipe().hull, pipe().names);
    };
    REQUIRE(why(19, out.x, out.read) != nullptr);
    CHECK(why(19, out.x, out.read)->code == "journal-left-out");
    CHECK(why(18, out.x, out.read) == nullptr);
    CHECK(why(19, out.x, out.read + 5.0) == nullptr);
    CHECK(why(19, out.x + 300.0, out.read) == nullptr);
    CHECK(findingOf(told, "journal-left-out").text.find("after row 18 as it was read") != std::string::npos);
    // a round that agrees in itself is no slip: the first strip may have been laid too low, by less than one
    for (const auto& [off, taken] : {std::pair(15.0, true), std::pair(25.4, false)}) {
        Journal journal;
        journal.readings = {pipe().round(5, [off = off](double) { return off; })};
        CHECK(whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan).has_value() == taken);
    }
}

TEST_CASE("a round under way is doubted as it will be once it is in the journal") {
    const auto of = [](double first, double second, double third) {
        RowReading reading = pipe().round(20, none);
        reading.girthLeft.resize(3);
        reading.girthLeft[0].girth -= first;
        reading.girthLeft[1].girth -= second;
        reading.girthLeft[2].girth -= third;
        return reading;
    };
    const auto doubts = [](const RowReading& round, const Journal& before) {
        return doubtsAbout(round, before, pipe().hull, pipe().plan);
    };
    RowReading alone = of(220, 0, 0); // 12" for 20 5/8"
    alone.girthLeft.resize(1);
    const auto first = doubts(alone, {});
    REQUIRE(first.size() == 1);
    CHECK(first[0].farOff);
    CHECK_THAT(first[0].planned - first[0].read, WithinAbs(220.0, 1e-9));
    CHECK(doubts(of(1, -1, 2), {}).empty());
    REQUIRE(doubts(of(12, 0, 0), {}).size() == 1); // two bear each other out, the third does not agree
    CHECK_FALSE(doubts(of(12, 0, 0), {}).front().farOff);
    // 20 rows drift by 10 mm, the two since row 18 by 1, and a slip is half a strip: 8.5
    RowReading drifted = of(15, 0, 0);
    drifted.girthLeft.resize(1);
    CHECK(doubts(drifted, {}).empty());
    Journal before;
    before.readings = {pipe().round(18, none)};
    REQUIRE(doubts(drifted, before).size() == 1);
    CHECK(doubts(drifted, before).front().since == 18);
    before.readings = {pipe().round(25, none)}; // read further down already
    CHECK(doubts(drifted, before).empty());
}

TEST_CASE("readings that bear each other out go together when some go") {
    RowReading far = pipe().round(25, none);
    far.girthLeft.resize(3);
    // five rows drift by 2.5 mm at most, and a strip is 17: the first alone is within 19.5 mm
    for (std::size_t i = 0; i < 3; ++i)
        far.girthLeft[i].girth -= std::array{19.2, 19.8, 19.9}[i];
    Journal journal;
    journal.readings = {pipe().round(20, none), far};
    const auto laid = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(laid);
    CHECK(laid->row == 20);
    CHECK(laid->leftOut.size() == 3);
}

TEST_CASE("without a reading below a laid row there is nothing to say") {
    Journal journal;
    CHECK_FALSE(whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan));
    journal.readings = {pipe().round(0, none)};
    CHECK_FALSE(whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan));
    RowReading none60;
    none60.row = 60; // the plan has no such row
    none60.girthLeft = {{500, 100, "", "", 0}};
    journal.readings = {none60};
    CHECK_FALSE(whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan));
}

TEST_CASE("late, or too much: the last plank is fitted as it comes") {
    Journal journal;
    journal.readings = {pipe().round(0, none), pipe().round(35, [](double) { return 8.0; })};
    const auto late = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(late);
    CHECK(late->correction.kind == Correction::Kind::AsItComes);
    CHECK(findingOf(tellWhatWasLaid(*late, pipe().hull, pipe().names), "journal-last-plank")
              .text.find("too late to change that") != std::string::npos);

    journal.readings[1] = pipe().round(34, [](double) { return 8.0; });
    const auto much = whatWasLaid(journal, pipe().project, pipe().hull, pipe().plan);
    REQUIRE(much);
    CHECK(much->correction.kind == Correction::Kind::AsItComes);
    CHECK(findingOf(tellWhatWasLaid(*much, pipe().hull, pipe().names), "journal-last-plank")
              .text.find("share its width with the strip before it") != std::string::npos);
}
