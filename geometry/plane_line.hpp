#pragma once

#include "geometry/tensor_surface.hpp"
#include "geometry/trims.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::geometry {

/// A plane normal . p = offset.
struct CutPlane {
    Eigen::Vector3d normal = Eigen::Vector3d::UnitZ(); ///< of length 1
    double offset = 0.0;                               ///< mm
};

/// A point of a line that a plane cuts on the hull.
struct PlaneLinePoint {
    Eigen::Vector2d uv = Eigen::Vector2d::Zero();
    Eigen::Vector3d p = Eigen::Vector3d::Zero(); ///< mm
    /// 1/mm, of the line in its plane; + where the hull is round there, - where it is hollow
    double curvature = 0.0;
};
using PlaneLine = std::vector<PlaneLinePoint>;

/// Point of the surface with the line's curvature there, for the line that runs through it in the plane.
[[nodiscard]] PlaneLinePoint
planeLinePoint(const TensorSurface& surface, const CutPlane& plane, const Eigen::Vector2d& uv);

/// Every line that a plane cuts on the hull between its trims, each from edge to edge, the forward end first;
/// empty where it cuts none. Points stand about 5 mm apart and lie on surface and plane; ends lie on the
/// edge. Lines that close on themselves inside the hull are not found.
/// @accuracy  tests/geometry/plane_line_test.cpp: places 1e-6 mm from the plane, ends 0.05 mm from the edge,
/// curvature 1e-5 of a cylinder's and an ellipsoid's
[[nodiscard]] std::vector<PlaneLine> planeLines(const TensorSurface& surface,
                                                const Trims& trims,
                                                const HullOutline& outline,
                                                const CutPlane& plane);

} // namespace sheerlay::geometry
