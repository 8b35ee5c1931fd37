#pragma once

#include "core/stock/stock_plan.hpp"

namespace sheerlay::core {

/// Gives every stick its board, number and name, its pieces the name, and reckons what is bought of each lot.
/// Boards are filled in the order of laying, so that strips from one board lie near each other in the boat
/// and those of a row come side by side. With book-matched sides sticks come in pairs, starboard's before
/// port's, and a pair lies side by side in one layer of a board.
/// @param made  its sticks without names, those of a pair one after the other
[[nodiscard]] StockPlan withBoardsFilled(const Stock& stock, const Plan& plan, StockPlan made);

} // namespace sheerlay::core
