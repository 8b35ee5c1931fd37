#pragma once

#include "core/planking/plan.hpp"
#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::ui {

/// Where the strip's faces stand, mm along the outward normal from the laid surface.
struct StripFaces {
    double inner = 0.0; ///< <= 0: the face that lies on the moulds
    double outer = 0.0; ///< >= 0
};

/// The strip as a closed bar: both faces, both edges, both ends. Flat across its width, as a real strip is.
/// Edges are thinned to 0.15 mm of their polylines, so that a whole boat stays light enough to turn by hand.
[[nodiscard]] TriangleMesh stripSolid(const core::Strip& strip, const StripFaces& faces);

/// The strip's outline on its outer face, closed (first point repeated), mm.
[[nodiscard]] std::vector<Eigen::Vector3d> stripLoop(const core::Strip& strip, const StripFaces& faces);

/// Keeps those points of a polyline that are needed to stay within `tolerance` mm of it (Douglas and
/// Peucker); both ends always.
[[nodiscard]] std::vector<Eigen::Vector3d> thinned(const std::vector<Eigen::Vector3d>& line,
                                                   double tolerance);

} // namespace sheerlay::ui
