#pragma once

#include "core/planking/taper_trade.hpp"
#include "core/units/length.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// What tapers cost at each limit on the edge bend, as a small table. Empty without rows.
/// @param own  1/mm, the plan's own limit, marked
[[nodiscard]] std::string tradeText(const std::vector<TaperTrade>& trade, double own, Units units);

} // namespace sheerlay::core
