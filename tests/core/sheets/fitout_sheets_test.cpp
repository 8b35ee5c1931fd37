#include "core/sheets/fitout_sheets.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"
#include "tests/support/sheet_reading.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("a page for each part, inside the margins, no words over each other") {
    const Project project = test::fittedPipe();
    const auto fitout =
        planFitout(project, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return 1500.0; });
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

TEST_CASE(
    "lengths on a bulkhead's page are told as far as a table holds, its buoyancy in the builder's units") {
    const Project project = test::fittedPipe();
    const auto fitout =
        planFitout(project, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return 1500.0; });
    REQUIRE(fitout);
    using Catch::Matchers::Contains;
    const auto page = [&](Units units) {
        return test::wordsOf(fitoutSheets(project, **fitout, units, PageSize::A4)[2]);
    };
    // half a pipe of 0.4 m under a deck 6.35 mm thick, 304.8 - 6.35 mm long: 73.5 litres, 162 lb
    CHECK_THAT(page(Units::Millimetres), Contains("73 litres") && Contains("73 kg (162 lb)"));
    CHECK_THAT(page(Units::Inches), Contains("162 lb (73 kg)") && !Contains("/32"));
    CHECK_THAT(page(Units::Inches), Contains("0.0\u00B0") && !Contains("-0.0")); // a pipe: square all round
}

TEST_CASE("a seat's tilt is told by the edge that is lower") {
    Project project = test::fittedPipe();
    const auto page = [&](double tilt) {
        project.fitout->seats[0].tilt = tilt;
        const auto fitout =
            planFitout(project, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return 1500.0; });
        REQUIRE(fitout);
        return test::wordsOf(fitoutSheets(project, **fitout, Units::Millimetres, PageSize::A4)[4]);
    };
    using Catch::Matchers::Contains;
    CHECK_THAT(page(0.0), Contains("under the sheer, level."));
    CHECK_THAT(page(0.0524), Contains("forward edge lower by 3.0"));
    CHECK_THAT(page(-0.0524), Contains("after edge lower by 3.0"));
}

TEST_CASE("the figures on the pages are the circle's") {
    const Project project = test::fittedPipe();
    const auto fitout =
        planFitout(project, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return 1500.0; });
    REQUIRE(fitout);
    const auto sheets = fitoutSheets(project, **fitout, Units::Millimetres, PageSize::A4);
    using Catch::Matchers::Contains;
    REQUIRE(sheets.size() == 6);
    CHECK_THAT(test::wordsOf(sheets[1]), Contains("3000 mm") && Contains("screws"));
    CHECK_THAT(test::wordsOf(sheets[4]), Contains("779.5 mm")); // 2 sqrt(400^2 - 90^2) = 779.49
    CHECK_THAT(test::wordsOf(sheets[4]), Contains(" 72 mm"));   // hangers: 90 - 18
}
