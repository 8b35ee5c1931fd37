#include "core/summary/trade_text.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("The trade is told limit by limit, the plan's own marked") {
    const std::vector<TaperTrade> trade{{0.4e-3, 2, 14000, 0.39e-3, 1}, {0.25e-3, 10, 92903.04, 0.3e-3, 4}};
    const std::string metric = tradeText(trade, 0.25e-3, Units::Millimetres);
    CHECK_THAT(metric, Catch::Contains("0.40       2.5          2             0.014  everywhere"));
    CHECK_THAT(metric,
               Catch::Contains(">       0.25       4.0         10             0.093  from edge 4 on"));
    // 92903.04 mm2 are a square foot by definition; 4000 mm are 13.1 ft
    const std::string inches = tradeText(trade, 0.4e-3, Units::Inches);
    CHECK_THAT(inches, Catch::Contains(">       0.40       8.2"));
    CHECK_THAT(inches, Catch::Contains("0.25      13.1         10             1.000  from edge 4 on"));
    CHECK(tradeText({}, 0.2e-3, Units::Inches).empty());
}
