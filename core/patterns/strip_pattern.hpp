#pragma once

#include "core/hull/hull.hpp"
#include "core/patterns/pattern.hpp"
#include "core/planking/plan.hpp"

#include <vector>

namespace sheerlay::core {

/// Pointed strips, stealers and shutters at true scale, several on a pattern: the last planks and short
/// pieces whole, of long strips the pointed ends. Marked out as on a straight milled strip before it is
/// sprung, outside up, keel side up, bow to the left; laps are not included. Marks across the strip every
/// 150 mm or 6 in with the width there, and the hull's stations with their names.
/// @param units  of what is written on them, and of the marks' pitch
/// @return       in the order of laying; none where no strip is pointed
[[nodiscard]] std::vector<Pattern>
stripPatterns(const Project& project, const LoftedHull& hull, const Plan& plan, Units units);

} // namespace sheerlay::core
