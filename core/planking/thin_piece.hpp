#pragma once

#include "core/planking/plan.hpp"
#include "core/planking/row_cutter.hpp"
#include "geometry/parallels.hpp"

#include <optional>
#include <string>

namespace sheerlay::core {

/// A strip that took in what was left beside it.
struct TakenIn {
    double beyond = 0.0; ///< mm, the widest it came out beyond its own far edge
    double across = 0.0; ///< mm, from its near edge to there
    std::string strip;   ///< starboard's id
};

/// Lets the strips that a piece too thin to be wood lies against, nearer the start, run on over it: their far
/// edge follows the trim there, on the hull and laid flat.
/// @param thin     starboard
/// @param strips   as laid so far, each starboard strip just behind its partner; the neighbours are widened
/// @param side     of the start that the rows are laid on
/// @return none, and the strips as they were, where no strip lies along the piece
/// @accuracy  flat, what the chords of an edge lie off it: 0.1 mm square to the edge
[[nodiscard]] std::optional<TakenIn>
takeIn(const RowPiece& thin, std::vector<Strip>& strips, geometry::FanSide side);

} // namespace sheerlay::core
