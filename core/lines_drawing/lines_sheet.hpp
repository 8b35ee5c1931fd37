#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"

namespace sheerlay::core {

/// The lines of the hull as the table draws it, on one lying sheet (A2, or 22 x 17 in): profile above,
/// half-breadth plan below it with the diagonals on the other side of its centreline, at the largest usual
/// scale that fits; body plan below at a larger one, forward sections to the right. Bow to the left. Sections
/// are the table's stations; the other lines stand at round figures.
[[nodiscard]] Sheet linesSheet(const Project& project, const LoftedHull& hull, Units units);

} // namespace sheerlay::core
