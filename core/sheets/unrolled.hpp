#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// A strip on the unrolled planking of its side: (mm along, + aft of the widest section; mm of girth, +
/// toward the keel from the start of the planking).
struct UnrolledStrip {
    const Strip* strip = nullptr;
    std::vector<Eigen::Vector2d> outline; ///< closed
    double shift = 0.0;                   ///< mm: along = place along the strip's own middle - shift
    std::vector<Eigen::Vector2d> middle;  ///< bow to stern

    /// Where a place of the strip's middle lies; `part` runs from -1 at the upper edge to 1 at the lower.
    [[nodiscard]] Eigen::Vector2d at(double alongMiddle, double part) const;
};

/// One side laid flat row by row: the start of the planking becomes a straight line, every row lies along the
/// one before. Lengths along a strip and widths across it are true; what a flat sheet can't keep, the ends'
/// place against each other, gives way.
/// @param side  Starboard or Port; centre pieces are laid with Starboard
[[nodiscard]] std::vector<UnrolledStrip> unroll(const Plan& plan, const LoftedHull& hull, Side side);

} // namespace sheerlay::core
