#include "core/sheets/fitout_sheets.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"
#include "tests/support/sheet_reading.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

/// A pipe of 400 mm with gunwales, a bulkhead, a deck, a seat and a thwart.
Project wanted() {
    Project p = test::bareFitout();
    p.name = "Pipe";
    p.fitout->gunwales = GunwaleChoices{};
    p.fitout->gunwales->inner = {20, 18};
    p.fitout->bulkheads.resize(1);
    p.fitout->decks.resize(1);
    p.fitout->seats.resize(1);
    p.fitout->seats[0].name = "seat";
    p.fitout->seats[0].x = 1500;
    p.fitout->seats[0].belowSheer = 90;
    p.fitout->thwarts.resize(1);
    p.fitout->thwarts[0].name = "thwart";
    p.fitout->thwarts[0].x = 900;
    return p;
}

} // namespace

TEST_CASE("a page for each part, inside the margins, no words over each other") {
    const Project project = wanted();
    const auto fitout = planFitout(project, test::quarterPipe(400, 3000), Plan{});
    REQUIRE(fitout);
    REQUIRE(fitout->has_value());
    for (const Units units : {Units::Millimetres, Units::Inches})
        for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
            const auto sheets = fitoutSheets(project, **fitout, units, size);
            CHECK(sheets.size() == 6); // sheer, gunwales, bulkhead, deck, seat, thwarts
            for (const Sheet& sheet : sheets) {
                INFO(sheet.title);
                CHECK(test::outside(sheet, pageMargin - 0.5) == "");
                CHECK(test::overlapping(sheet) == "");
            }
        }
}

TEST_CASE("the figures on the pages are the circle's") {
    const Project project = wanted();
    const auto fitout = planFitout(project, test::quarterPipe(400, 3000), Plan{});
    REQUIRE(fitout);
    const auto sheets = fitoutSheets(project, **fitout, Units::Millimetres, PageSize::A4);
    using Catch::Matchers::Contains;
    REQUIRE(sheets.size() == 6);
    CHECK_THAT(test::wordsOf(sheets[1]), Contains("3000 mm") && Contains("screws"));
    CHECK_THAT(test::wordsOf(sheets[4]), Contains("779.5 mm")); // 2 sqrt(400^2 - 90^2) = 779.49
    CHECK_THAT(test::wordsOf(sheets[4]), Contains("72.0 mm") || Contains("72 mm")); // hangers: 90 - 18
}
