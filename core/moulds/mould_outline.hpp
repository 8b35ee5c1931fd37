#pragma once

#include "core/hull/hull.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "core/moulds/mould.hpp"

#include <optional>

namespace sheerlay::core {

/// Where a mould stands, and on what.
struct MouldPlace {
    double x = 0.0;       ///< mm from the bow, of the governing face
    bool forward = true;  ///< the after face governs
    double foot = 0.0;    ///< mm, height of the strongback's top
    double stemCut = 0.0; ///< mm taken off at the centreline
};

/// How a surface leaves the edge of a board that stands square to x.
/// @param into  +1 where the board reaches aft of its governing face, -1 where it reaches forward
[[nodiscard]] EdgePoint edgePointOf(const SectionPoint& point, double into);

/// The wood of a mould: section of the hull's inside at the governing face, a horn above the sheer, shoulder,
/// leg and foot.
/// @return none where the plane misses the hull, or where what is left is too small to saw: less than 20 mm
/// high or 5 mm wide
/// @accuracy  0.02 mm against cylinder, cone and sphere, tests/core/moulds/mould_outline_test.cpp
[[nodiscard]] std::optional<Mould>
mouldOutline(const Project& project, const LoftedHull& hull, const MouldPlace& place);

} // namespace sheerlay::core
