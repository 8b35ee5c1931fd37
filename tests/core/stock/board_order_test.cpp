#include "core/stock/board_order.hpp"
#include "tests/core/stock/board_lots.hpp"
#include "tests/core/stock/scarf_rules.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

const Planked& canoe() {
    static const Planked boat =
        planked(projectAt(std::string(SHEERLAY_EXAMPLES) + "/brindlewick/brindlewick.sheerlay"));
    return boat;
}

Project withStock(const Stock& stock) {
    Project project = canoe().project;
    project.stock = stock;
    return project;
}

} // namespace

TEST_CASE("pairs fill each layer of a board and leave its odd strip over") {
    Stock stock;
    stock.sides = JointSides::BookMatched;
    stock.spare = 0.0;
    StockPlan made;
    made.lots.resize(1);
    made.lots[0].lot = lotOf(12);
    made.lots[0].milling.sideBySide = 5;
    made.lots[0].milling.layers = 2;
    Plan plan;
    for (int row = 1; row <= 5; ++row)
        for (const char side : {'S', 'P'}) {
            Strip strip;
            strip.row = row;
            strip.id = std::string(1, side) + "0" + std::to_string(row);
            plan.strips.push_back(strip);
            made.strips.push_back({strip.id, "western-redcedar", {}, {StockPiece{}}});
        }
    for (int row = 5; row >= 1; --row) // as the search may leave them
        for (const char side : {'S', 'P'})
            made.sticks.push_back(
                {{}, 0, 0, 0, {{std::string(1, side) + "0" + std::to_string(row), 1, 900, 0}}, 0});
    made = withBoardsFilled(stock, plan, std::move(made));
    std::string names;
    for (const StockStrip& strip : made.strips)
        names += strip.strip + " " + strip.pieces.front().stick + ", ";
    CHECK(names == "S01 A1-01, P01 A1-02, S02 A1-03, P02 A1-04, S03 A1-06, P03 A1-07, S04 A1-08, P04 A1-09, "
                   "S05 A2-01, P05 A2-02, ");
    CHECK(made.lots[0].boards == 2);
    CHECK(made.lots[0].spares == 10); // the two odd ones of each board, and what is left of the second
}

TEST_CASE("the canoe's sides cut as matched pairs: no rule broken, little waste") {
    Stock stock;
    stock.lots = {lotOf(12)};
    stock.sides = JointSides::BookMatched;
    const Project project = withStock(stock);
    const auto made = planStock(project, canoe().hull, canoe().plan);
    REQUIRE(made);
    CHECK(all(brokenRules(project, canoe().hull, canoe().plan, *made)) == "");
    CHECK(made->woods.front().gap() >= 0.0);
    CHECK(made->woods.front().gap() <= 0.05);
    const int pairs = made->lots.front().milling.pairs();
    CHECK(made->lots.front().boards ==
          static_cast<int>(std::ceil(1.1 * made->lots.front().sticks / (2 * pairs) - 1e-9)));

    stock.lots[0].width = 15.0; // one strip side by side: no pair
    const auto none = planStock(withStock(stock), canoe().hull, canoe().plan);
    REQUIRE_FALSE(none->findings.empty());
    CHECK(none->sticks.empty());
    bool told = false;
    for (const Finding& finding : none->findings)
        told = told || finding.text.find("two strips side by side") != std::string::npos;
    CHECK(told);
}

TEST_CASE("boards with a knot give shorter pieces, cut clear of it, and more of them") {
    Stock stock;
    stock.lots = {lotOf(12)};
    const auto whole = planStock(withStock(stock), canoe().hull, canoe().plan);
    stock.lots[0].defects = {{1500.0, 1560.0}};
    const Project project = withStock(stock);
    const auto made = planStock(project, canoe().hull, canoe().plan);
    REQUIRE(whole);
    REQUIRE(made);
    CHECK(all(brokenRules(project, canoe().hull, canoe().plan, *made)) == "");
    const Milling& milling = made->lots.front().milling;
    REQUIRE(milling.clear.size() == 2);
    double longest = 0.0;
    int onFirst = 0, onSecond = 0;
    for (const Stick& stick : made->sticks)
        for (const Stick::Part& part : stick.parts) {
            longest = std::max(longest, part.toCut);
            ++(part.clear == 0 ? onFirst : onSecond);
        }
    CHECK(longest <= milling.clear[1][1] - milling.clear[1][0]);
    CHECK(onFirst > 20); // both clear lengths are used
    CHECK(onSecond > 20);
    CHECK(made->woods.front().pieces > whole->woods.front().pieces);
    CHECK(made->lots.front().boards >= whole->lots.front().boards);
    UNSCOPED_INFO("gap " << made->woods.front().gap());
    CHECK(made->woods.front().gap() >= 0.0);
    CHECK(made->woods.front().gap() <= 0.10);
}
