#include "core/project/laid_strips.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("strips are marked as laid once, with their day, and unmarked") {
    Journal journal = markLaid({}, "S01", "2026-05-01");
    journal = markLaid(journal, "P01", "2026-05-02");
    journal = markLaid(journal, "S01", "2026-05-03");
    REQUIRE(journal.laid.size() == 2);
    CHECK(laidEntry(journal, "S01")->date == "2026-05-01");
    CHECK(laidEntry(journal, "S02") == nullptr);
    journal = unmarkLaid(journal, "S01");
    CHECK(laidEntry(journal, "S01") == nullptr);
    CHECK(laidEntry(journal, "P01") != nullptr);
}

TEST_CASE("a note stands on a strip that is laid") {
    Journal journal = noteOn(markLaid({}, "S01", "2026-05-01"), "S01", "a knot at the bow");
    CHECK(laidEntry(journal, "S01")->note == "a knot at the bow");
    CHECK(noteOn(journal, "S02", "none") == journal);
    CHECK(noteOn(journal, "S01", "") == markLaid({}, "S01", "2026-05-01"));
}

TEST_CASE("what is laid changes no plan, a reading does") {
    Project a;
    Project b = a;
    b.journal = markLaid(b.journal, "S01", "");
    CHECK(plansAlike(a, b));
    b.language = Language::German;
    b.paper = {PageSize::A3, true};
    CHECK(plansAlike(a, b));
    b.journal.readings.push_back({5, ReadSide::Both, {}, 0.5, "", 0});
    CHECK(!plansAlike(a, b));
    Project c = a;
    c.planking.taper = Taper::Ends;
    CHECK(!plansAlike(a, c));
}

TEST_CASE(
    "strips stay where only boards, moulds or what is put aside change; the hull where only strips do") {
    Project a;
    Project b = a;
    b.moulds.thickness += 1.0;
    b.stock = Stock{};
    b.fitout = FitoutChoices{};
    CHECK(stripsAlike(a, b));
    CHECK_FALSE(plansAlike(a, b));

    Project other = a;
    other.planking.start.girth += 1.0;
    CHECK_FALSE(stripsAlike(a, other));
    CHECK(hullsAlike(a, other));

    Project measured = a;
    measured.journal.readings.emplace_back();
    CHECK_FALSE(stripsAlike(a, measured));

    Project thicker = a;
    thicker.strips.thickness += 1.0;
    CHECK_FALSE(hullsAlike(a, thicker));
    CHECK_FALSE(stripsAlike(a, thicker));
}
