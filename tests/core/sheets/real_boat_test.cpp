#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/flat_strip.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("the planned boats' sheets keep their margins, let no words cover others and name every strip") {
    for (const std::string& path : {std::string(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay"),
                                    std::string(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay")}) {
        const test::Planked boat = test::planked(test::projectAt(path));
        const std::optional<StockPlan> stock = planStock(boat.project, boat.hull, boat.plan);
        const StockPlan* scarfs = stock ? &*stock : nullptr; // the example has boards, the formula canoe none
        for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
            const Units units = size == PageSize::A4 ? Units::Millimetres : Units::Inches;
            std::string words;
            for (const Sheet& sheet : cutSheets(boat.project, boat.hull, boat.plan, units, size, scarfs)) {
                INFO(path << ", sheet " << sheet.title);
                CHECK(test::outside(sheet, 8.0) == "");
                CHECK(test::overlapping(sheet) == "");
                words += test::wordsOf(sheet);
            }
            for (const Strip& strip : boat.plan.strips)
                CHECK(words.find(strip.id) != std::string::npos);
        }
        const Sheet map = wallMap(boat.project, boat.hull, boat.plan, Units::Millimetres, scarfs);
        INFO(path << ", map");
        CHECK(test::outside(map, 8.0) == "");
        CHECK(test::overlapping(map) == "");
    }
}

TEST_CASE("the planned strips laid straight are as long and as wide as the plan says") {
    const test::Planked boat = test::planked(test::projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    for (const Strip& strip : boat.plan.strips) {
        const FlatStrip flat = layStraight(strip);
        REQUIRE(flat.straight.size() == strip.outline.size());
        INFO(strip.id);
        // the middle's ends lie on the chord that the outline is turned to; a wedge's halved outline runs a
        // little beside it
        CHECK(flat.curvedAt(0.0, 0.0).norm() < 4.0);
        CHECK(std::abs(flat.curvedAt(strip.length, 0.0).y()) < 4.0);
        if (strip.kind != StripKind::Full)
            continue;
        const double width = widthAt(strip, strip.length / 2);
        for (std::size_t i = 0; i < flat.straight.size(); ++i)
            if (flat.straight[i].x() > 0.25 * strip.length && flat.straight[i].x() < 0.75 * strip.length &&
                strip.length > 2000.0)
                CHECK(std::abs(flat.straight[i].y()) == Approx(width / 2).margin(0.3));
    }
}
