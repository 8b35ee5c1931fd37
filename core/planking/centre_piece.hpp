#pragma once

#include "core/planking/measures.hpp"

namespace sheerlay::core {

/// The closing plank over both sides, made of the lens left on each: symmetrical about the centreplane, its
/// middle the keel line.
/// @param piece  the starboard lens; its child edge follows the centreline
[[nodiscard]] Strip centrePiece(const RowPiece& piece, int row, const LayingContext& context);

} // namespace sheerlay::core
