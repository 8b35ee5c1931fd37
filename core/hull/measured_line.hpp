#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace sheerlay::core {

/// A place on the hull.
struct HullPlace {
    Eigen::Vector2d uv = Eigen::Vector2d::Zero();     ///< parameters, of the starboard half
    Eigen::Vector3d point = Eigen::Vector3d::Zero();  ///< mm, on the surface; y below 0 on port
    Eigen::Vector3d normal = Eigen::Vector3d::Zero(); ///< unit, outward
    double girth = 0.0;  ///< mm around the section from where the planking ends at the bottom, + starboard
    double bottom = 0.0; ///< mm, half-breadth there: 0, or the side of the batten
    bool onPort = false;
};

/// The place of the hull at x and a girth as HullPlace has it, both mm; the sheer where the girth does not
/// reach so far. None where there is no hull at x.
[[nodiscard]] std::optional<HullPlace> placeAtGirth(const TrimmedSurface& hull, double x, double girth);

/// The place of the hull nearest to a point that lies on it or a little inside or outside; none where
/// there is no hull at its x.
[[nodiscard]] std::optional<HullPlace> placeNear(const TrimmedSurface& hull, const Eigen::Vector3d& point);

/// What a batten sprung from one place of the hull to another says.
struct MeasuredLine {
    double length = 0.0; ///< mm along the surface, the straightest way
    double along = 0.0;  ///< mm between the two places along the boat
    double around = 0.0; ///< mm between them around the sections, across the bottom on two sides
    bool onHull = true;  ///< false: on its way it runs past the sheer or an end
    std::vector<Eigen::Vector3d> points;  ///< mm, from the first place to the second
    std::vector<Eigen::Vector3d> normals; ///< unit, outward, one a point
};

/// Springs a batten along the surface from one place to the other; across the bottom where they lie on
/// different sides.
/// @accuracy  tests/core/hull/measured_line_test.cpp: pipe and sphere within 0.02 mm
[[nodiscard]] MeasuredLine
measureBetween(const TrimmedSurface& hull, const HullPlace& from, const HullPlace& to);

} // namespace sheerlay::core
