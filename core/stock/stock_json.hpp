#pragma once

#include "core/stock/stock_plan.hpp"

#include <string>

namespace sheerlay::core {

/// The stock plan as a JSON object, UTF-8: boards, milled strips, pieces and scarfs by strip, how well they
/// are cut. Lengths mm, weight kg.
[[nodiscard]] std::string stockToJson(const StockPlan& stock);

/// plan.json with the stock plan under the key "stock_plan".
/// @param planJson  what planToJson() gives
/// @throws std::invalid_argument  it is no JSON object's text
[[nodiscard]] std::string withStockPlan(std::string planJson, const StockPlan& stock);

} // namespace sheerlay::core
