#pragma once

#include "core/fitout/gunwales.hpp"
#include "core/patterns/pattern.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// A cut square to the sheer's run through the starboard gunwales and the planking between them. Millimetres
/// from the outer face's upper edge: first coordinate level and outward, second up.
struct GunwaleSection {
    std::vector<Eigen::Vector2d> outer, inner; ///< planed, closed, first point not repeated
    std::vector<Eigen::Vector2d> planking;     ///< with its cloth, as far down as is drawn
};

/// @param depth  mm of planking drawn below the sheer
/// @param outside, inside  points of the two faces' sheers at the same place
[[nodiscard]] GunwaleSection
gunwaleSection(const Gunwales& gunwales, const SheerPoint& outside, const SheerPoint& inside, double depth);

/// Gunwales at full size, as far as it helps to have it. On one pattern their section at up to six stations,
/// to set the bevel gauge by, with the rabbet where there is one (its lip as high as the planking is thick:
/// common practice, no source); on another one scarf of each, seen on the face it is sawn across, and the cut
/// at each end, in plan.
/// @accuracy  tests/core/patterns/gunwale_pattern_test.cpp: cone and pipe
[[nodiscard]] std::vector<Pattern> gunwalePatterns(const Gunwales& gunwales, Units units);

} // namespace sheerlay::core
