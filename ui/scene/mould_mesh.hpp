#pragma once

#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::ui {

/// The building frame under an upside-down boat; mm.
struct FrameSizes {
    double strongbackTop = 0.0;  ///< z of the strongback's face the moulds stand on; above the highest sheer
    double legHalfWidth = 140.0; ///< half width of a mould where it stands
    double plywood = 18.0;       ///< thickness of a mould
};

/// One mould: the section on both sides, straight down past the sheer, drawn in to the legs, down to the
/// strongback.
/// @param section  points sheer to keel, starboard, all at one x
/// @param aft      the plate lies abaft the station line (forward half of the boat) or before it, so that the
/// planking
///                 bears on the edge that stands on the line
[[nodiscard]] TriangleMesh
mouldPlate(const std::vector<Eigen::Vector3d>& section, const FrameSizes& sizes, bool aft);

/// Ladder of two rails with a cross piece under every mould.
[[nodiscard]] TriangleMesh strongback(const std::vector<double>& mouldX, const FrameSizes& sizes);

} // namespace sheerlay::ui
