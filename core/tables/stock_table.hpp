#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/stock/stock_plan.hpp"

#include <string>

namespace sheerlay::core {

/// Boards by lot as CSV: what to buy, what it gives, what it costs.
[[nodiscard]] std::string boardTable(const StockPlan& stock, Units units);

/// Every piece as CSV, milled strip by milled strip in the order of cutting: which strip it becomes, how long
/// it is marked out, and what is left of the milled strip after the last.
[[nodiscard]] std::string pieceTable(const StockPlan& stock, Units units);

/// Every scarf as CSV in the order of laying: its middle from the strip's bow cut and from the bow.
[[nodiscard]] std::string scarfTable(const Plan& plan, const StockPlan& stock, Units units);

} // namespace sheerlay::core
