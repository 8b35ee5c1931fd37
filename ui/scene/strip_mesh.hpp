#pragma once

#include "core/planking/plan.hpp"
#include "core/solids/strip_bar.hpp"
#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::ui {

/// How far, in mm, the edges of a drawn strip may lie off those of the plan. Neighbours share an edge and are
/// thinned alike, so no gap opens between them.
constexpr double fineThinning = 0.15;  ///< seen from near
constexpr double coarseThinning = 1.5; ///< the whole boat on a screen: half a pixel of a canoe at most

/// A strip as it is drawn.
struct BarShape {
    TriangleMesh solid; ///< mm, boat frame; closed
    std::vector<Eigen::Vector3d>
        loop; ///< outline just proud of the outer face, closed (first point repeated)
};

/// The strip as a bar: both faces, both edges, both ends. Flat across its width, as a real strip is.
/// @param thinning  see above, mm; > 0
[[nodiscard]] BarShape barShape(const core::Strip& strip, const core::StripFaces& faces, double thinning);

} // namespace sheerlay::ui
