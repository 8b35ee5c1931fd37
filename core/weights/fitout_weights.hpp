#pragma once

#include "core/covering/glue.hpp"
#include "core/fitout/fastenings.hpp"
#include "core/fitout/fitout.hpp"
#include "core/weights/weights.hpp"

#include <vector>

namespace sheerlay::core {

/// What the fit-out weighs, kind by kind, both sides: gunwales, bulkheads, decks, seats, thwarts, yoke.
/// Scarfs, bevels, caning and cleats are left out.
/// @source  woods as in core/project/wood.hpp; plywood of bulkheads and decks 550 kg/m3, from memory
[[nodiscard]] std::vector<WeightItem> fitoutWeights(const Project& project, const Fitout& fitout);

/// Screws and bolts as one part of the boat; nothing where there are none.
void addWeight(std::vector<WeightItem>& items, const std::vector<Fastening>& fastenings);

/// Glue and fillets as one part of the boat; its weight may be off by three tenths (judged).
void addWeight(std::vector<WeightItem>& items, const std::vector<GlueUse>& glue);

} // namespace sheerlay::core
