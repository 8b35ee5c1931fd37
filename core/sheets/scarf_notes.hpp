#pragma once

#include "core/sheets/pieces.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Where the scarfs of a strip lie: mm along its middle from its bow end, rising.
/// @param stock  may be null: then none
[[nodiscard]] std::vector<double> scarfsOf(const StockPlan* stock, const std::string& strip);

/// What a strip and its image are glued from, and where their scarfs lie; none where there is no stock plan
/// or it could not make them.
/// @param stock  may be null
[[nodiscard]] std::optional<Note>
scarfNote(const Piece& piece, const StockPlan* stock, const Places& places, Units units);

} // namespace sheerlay::core
