#pragma once

#include "core/fitout/fitout.hpp"
#include "core/weights/weights.hpp"

#include <vector>

namespace sheerlay::core {

/// What the fit-out weighs, kind by kind, both sides: gunwales, bulkheads, decks, seats, thwarts, yoke.
/// Scarfs, bevels, screws, caning and cleats are left out.
/// @source  woods as in core/project/wood.hpp; plywood of bulkheads and decks 550 kg/m3, from memory
[[nodiscard]] std::vector<WeightItem> fitoutWeights(const Project& project, const Fitout& fitout);

} // namespace sheerlay::core
