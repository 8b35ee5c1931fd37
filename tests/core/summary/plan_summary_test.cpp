#include "core/planking/plan_findings.hpp"
#include "core/summary/plan_summary.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cstdlib>
#include <string>
#include <utility>

namespace {

using namespace sheerlay::core;

Strip piece(std::string id, Side side, int row, StripKind kind) {
    Strip strip;
    strip.id = std::move(id);
    strip.side = side;
    strip.row = row;
    strip.kind = kind;
    return strip;
}

/// Two rows below the start, one above it, and a shutter over both sides: seven pieces.
Plan smallPlan() {
    Plan plan;
    plan.coverWidth = StripStock{}.coverWidth;
    plan.firstRow = -1;
    plan.lastRow = 3;
    for (const int row : {-1, 1, 2}) {
        const std::string number = std::string(row < 0 ? "-0" : "0") + std::to_string(std::abs(row));
        for (const Side side : {Side::Starboard, Side::Port}) {
            Strip strip =
                piece(std::string(side == Side::Starboard ? "S" : "P") + number, side, row, StripKind::Full);
            strip.cutLength = 4000.0;
            strip.edgeBend.maxAbs = 0.0001 * (row + 2);
            strip.edgeBend.atX = 1000.0;
            strip.edgeBend.force = 61.7;
            plan.strips.push_back(strip);
        }
    }
    Strip shutter = piece("C03", Side::Centre, 3, StripKind::Shutter);
    shutter.cutLength = 2400.0;
    shutter.length = 2398.0;
    shutter.widths = {{0.0, 0.0}, {1200.0, 13.2}, {2398.0, 0.0}};
    plan.strips.push_back(shutter);
    plan.marks.weaveBow = RowRange{-1, 2};
    plan.marks.closingStern = 3;
    plan.findings = {{Level::Note, "a-note", std::nullopt, std::nullopt, "First."},
                     {Level::Caution, "edge-bend", "S02", 1000.0, "Second."}};
    return plan;
}

LoftedHull smallHull() {
    LoftedHull hull;
    hull.laid.length = 15.5 * 304.8;
    hull.laid.beam = 844.55;
    hull.laid.halfGirthMax = 614.9;
    hull.laid.halfGirthMaxX = 2360.0;
    hull.findings = {{Level::Stop, "cell", std::nullopt, std::nullopt, "Third."},
                     {Level::Note, "b-note", std::nullopt, std::nullopt, "Fourth."}};
    return hull;
}

Project smallProject() {
    Project project;
    project.name = "Grey Teal";
    return project;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("findings of loft and plan stand heaviest first and keep their order among equals") {
    const auto all = allFindings(smallHull(), smallPlan());
    REQUIRE(all.size() == 4);
    CHECK(all[0].code == "cell");
    CHECK(all[1].code == "edge-bend");
    CHECK(all[2].code == "b-note"); // the loft's come first
    CHECK(all[3].code == "a-note");
}

TEST_CASE("a summary adds up the pieces of the plan") {
    const PlanSummary s = summarize(smallProject(), smallHull(), smallPlan());
    CHECK(s.rowsBelow == 3);
    CHECK(s.rowsAbove == 1);
    CHECK(s.pieces == 7);
    CHECK_THAT(s.cutLength, WithinAbs(6 * 4000.0 + 2400.0, 1e-9));
    REQUIRE(s.worst);
    CHECK(s.worst->strip == "S02"); // the first of the pair that is bent most
    CHECK_THAT(s.worst->edgeBend, WithinAbs(0.0004, 1e-12));
    REQUIRE(s.shutters.size() == 1);
    CHECK_THAT(s.shutters[0].widest, WithinAbs(13.2, 1e-12));
    CHECK(s.findings == std::array<int, 3>{2, 1, 1});
}

TEST_CASE("a plan without bent strips, shutter or rows has no worst strip") {
    const PlanSummary s = summarize(smallProject(), LoftedHull{}, Plan{});
    CHECK_FALSE(s.worst);
    CHECK(s.shutters.empty());
    CHECK(s.rowsBelow == 0);
    CHECK(s.pieces == 0);
    CHECK(has(toText(s, Units::Millimetres), "no ends are woven"));
}

TEST_CASE("the summary's text says what a plan can know and no more") {
    const PlanSummary s = summarize(smallProject(), smallHull(), smallPlan());

    SECTION("in millimetres") {
        const std::string text = toText(s, Units::Millimetres);
        CHECK(has(text, "Grey Teal\n"));
        CHECK(has(text, "4724 mm long, 845 mm wide")); // 15.5 ft, 844.55 mm
        CHECK(has(text, "6.35 mm by 19.05 mm western redcedar, each covering 15.88 mm"));
        CHECK(has(text, "4 rows a side (3 from the start down, 1 above it), 7 pieces in all"));
        CHECK(has(text, "about 26 m to cut")); // 26.4 m
        // 0.0004 /mm: sag over 2 m is 0.0004 * 2000^2 / 8 = 200 mm, radius 2.5 m; 61.7 N is 13.87 lb
        CHECK(has(text, "hardest in S02, 1000 mm from the bow (hard): a sag of 200 mm over 2 m"));
        CHECK(has(text, "radius 2.5 m, 0.40 per metre"));
        CHECK(has(text, "62 N (14 lb)"));
        CHECK(has(text, "ends lap in rows -1 to 2 at the bow, in no row at the stern"));
        CHECK(has(text, "strips end on the keel nowhere at the bow, from row 3 at the stern"));
        CHECK(has(text, "C03, 13 mm at its widest, 2400 mm long"));
        CHECK(has(text, "1 stop, 1 caution, 2 notes"));
    }
    SECTION("in inches") {
        const std::string text = toText(s, Units::Inches);
        CHECK(has(text, "15' 6\" long"));
        CHECK(has(text, "1/4\" by 3/4\" western redcedar, each covering 5/8\""));
        CHECK(has(text, "about 87 ft to cut")); // 86.6 ft
        // 0.0004 * 2438.4^2 / 8 = 297.3 mm = 11.70 in, to the quarter inch
        CHECK(has(text, "a sag of 11 3/4\" over 8 ft"));
        CHECK(has(text, "radius 8.2 ft")); // 2500 / 304.8
        CHECK(has(text, "C03, 1/2\" at its widest, 7' 10 1/2\" long"));
    }
    SECTION("with the rounding of the table, no figure finer than its +/-") {
        Plan plan = smallPlan();
        PlanUncertainty u;
        u.edgeBend = 0.035e-3; // over 2 m a sag of 17.5 mm, printed +/- 35
        u.length = 17;
        u.lengthTypical = 2.6;
        u.halfGirth = 0.5;
        u.shutterWidth = 1.0;
        u.rows = {{3, 0, 0, 30}};
        plan.uncertainty = u;
        plan.strips.front().edgeBend.maxAbs = 0.00043; // a sag of 215 mm
        const std::string text = toText(summarize(smallProject(), smallHull(), plan), Units::Millimetres);
        CHECK(has(text, "a sag of 220 mm over 2 m"));
        CHECK(has(text, "C03, 13 mm at its widest, 2400 mm long")); // 2398 to 50 mm
        INFO(text);
        CHECK(
            has(text,
                "  rounding   Rounding of the table moves edge bend by +/- 0.07 per metre (35 mm over 2\n"));
        CHECK(has(text, "             m), twist by +/- 1 degree in a metre"));
        CHECK_FALSE(has(text, "+/-\n")); // a sign stays with its figure
        for (std::size_t at = text.find("  rounding"), end = 0; at < text.find("  findings"); at = end + 1) {
            end = text.find('\n', at);
            CHECK(end - at <= 90);
        }
        CHECK_FALSE(has(toText(s, Units::Millimetres), "+/-")); // unknown is not told as nought
    }
    SECTION("on one screen") {
        const std::string text = toText(s, Units::Millimetres);
        CHECK(std::ranges::count(text, '\n') <= 12);
        CHECK(text.back() == '\n');
    }
}
