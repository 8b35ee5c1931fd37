#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"

namespace sheerlay::core {

/// How every line of the hull bends, drawn over her length: sheer and keel, waterlines, buttocks, diagonals
/// and lines of equal girth, a panel each, in 1/m, round above zero and hollow below. A fair line runs
/// smoothly there; a bump that a batten would hardly show stands up. Values far beyond those of the middle
/// four fifths of the boat, at the stems, run out of the panel. One lying sheet as for the lines.
[[nodiscard]] Sheet curvatureSheet(const Project& project, const LoftedHull& hull, Units units);

} // namespace sheerlay::core
