#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

namespace sheerlay::core {

/// How strips that cross the centreline by turns fit together there.
struct HerringboneEnd {
    double run = 0.0; ///< mm along the strip's middle: the side laid first goes this far past the centreline,
                      ///< the other ends this far short of it
    double cut = 0.0; ///< rad between strip and cut, along the other side's edge
    double standOff = 0.0; ///< mm the apex stands off the other side's surface
};

/// @param width     mm
/// @param beta      rad, angle between strip and centreline
/// @param dihedral  rad, interior angle of the two sides there
/// @source closing.md section 4 (c): cut w / sin 2 beta, run w / (2 sin 2 beta), stand-off (w / 2) sin(pi -
/// dihedral)
[[nodiscard]] HerringboneEnd herringboneEnd(double width, double beta, double dihedral);

/// Lets the rows in the flat of the bottom cross the centreline by turns instead of being cut to it: from the
/// first row on where no end stands off the other side by more than a quarter of the thickness. Changes ends
/// and lengths to cut, sets `herringboneFrom`, and says which rows must be cut to the line and why. The
/// strips' edges in the plan stay cut at the centreline.
void layHerringbone(Plan& plan, const Project& project);

} // namespace sheerlay::core
