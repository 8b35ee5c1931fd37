#pragma once

#include "core/planking/plan.hpp"
#include "core/solids/strip_bar.hpp"
#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::ui {

/// The strip as a closed bar: both faces, both edges, both ends. Flat across its width, as a real strip is.
/// Edges are thinned to 0.15 mm of their polylines, so that a whole boat stays light enough to turn by hand.
[[nodiscard]] TriangleMesh stripSolid(const core::Strip& strip, const core::StripFaces& faces);

/// The strip's outline on its outer face, closed (first point repeated), mm.
[[nodiscard]] std::vector<Eigen::Vector3d> stripLoop(const core::Strip& strip, const core::StripFaces& faces);

} // namespace sheerlay::ui
