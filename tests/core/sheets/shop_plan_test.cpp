#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/shop_plan.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Project canoe() {
    return test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
}

bool told(const std::vector<Finding>& findings, const std::string& code) {
    return std::ranges::any_of(findings, [&](const Finding& f) { return f.code == code; });
}

} // namespace

TEST_CASE("what follows the strips is planned, told stage by stage, and joins the plan's findings") {
    Project project = canoe();
    REQUIRE(project.fitout->seats.size() == 2);
    project.fitout->seats[0].x = 9000.0; // abaft the stern
    const test::Planked boat = test::planked(project);
    std::vector<std::string> stages;
    const ShopPlan shop = planShop(
        boat.project, boat.hull, boat.plan, [&](std::string_view what) { stages.emplace_back(what); });
    CHECK(stages ==
          std::vector<std::string>{"Weighing the table's rounding", "Cutting the strips from boards"});
    CHECK(shop.plan.uncertainty.has_value());
    REQUIRE(shop.stock);
    CHECK(shop.stock->sticks.size() > 50);
    REQUIRE(shop.after.fitout);
    CHECK(shop.after.fitout->seats.size() == 1);
    CHECK(told(shop.findings, "seat-outside"));
    CHECK(told(shop.plan.findings, "seat-outside"));
    CHECK(shop.plan.findings.size() == boat.plan.findings.size() + shop.findings.size());

    // the seat that was left out is told on paper, too
    std::string words;
    for (const Sheet& sheet : fitoutSheets(project, *shop.after.fitout, Units::Millimetres, PageSize::A4)) {
        CHECK(test::outside(sheet, pageMargin - 0.5) == "");
        CHECK(test::overlapping(sheet) == "");
        words += test::wordsOf(sheet);
    }
    CHECK(words.find("bow seat") != std::string::npos);
    CHECK(words.find("Findings, heaviest first") != std::string::npos);
}

TEST_CASE("where nothing is asked for, nothing follows the strips") {
    Project project = canoe();
    project.stock.reset();
    project.fitout.reset();
    project.covering.reset();
    project.afloat.reset();
    const test::Planked boat = test::planked(project);
    const ShopPlan shop = planShop(boat.project, boat.hull, boat.plan);
    CHECK_FALSE(shop.stock);
    CHECK(shop.after.empty());
    CHECK(shop.findings.empty());
}
