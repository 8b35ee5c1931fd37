#pragma once

#include "core/fitout/fitout.hpp"
#include "core/patterns/pattern.hpp"

#include <vector>

namespace sheerlay::core {

/// Bulkheads, decks, seats, thwarts, yoke and gunwales at true scale, in this order. A bulkhead is seen from
/// amidships; first coordinate y, second z. A deck is the plate laid flat, its tip up. A seat lies as it is
/// looked down on, bow up, with its bolts and holes; below it the rails' outer faces, for the cut down the
/// end. A thwart likewise; gunwales as gunwalePatterns() tells. Bevels stand round the edges as on a mould; a
/// dashed line is the edge of the other face.
/// @param units  of what is written on them
[[nodiscard]] std::vector<Pattern> fitoutPatterns(const Fitout& fitout, Units units);

} // namespace sheerlay::core
