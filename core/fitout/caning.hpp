#pragma once

#include "core/project/fitout_choices.hpp"

namespace sheerlay::core {

/// Holes round a seat's opening and the cane drawn through them.
struct Caning {
    int front = 0; ///< holes along the front rail, corners included; as many along the back
    int side = 0;  ///< holes along each side rail, corners included
    int holes = 0; ///< all of them, corners counted once
    double spacingAcross = 0.0, spacingAlong = 0.0; ///< mm between holes
    double cane = 0.0;                              ///< mm of cane, with a tenth for ends and breakage
};

/// Six-way cane: two layers along, two across, one on each diagonal. From hole to hole the cane also runs
/// under the frame.
/// @param width  mm, opening across the boat
/// @param depth  mm, opening fore and aft
/// @source  count of lines over the opening's area, derived; the tenth is common practice, no source
[[nodiscard]] Caning planCaning(const CaningChoice& choice, double width, double depth);

} // namespace sheerlay::core
