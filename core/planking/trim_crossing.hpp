#pragma once

#include "core/hull/hull.hpp"
#include "geometry/parallels.hpp"

namespace sheerlay::core {

/// Where a short arc leaves the hull, and through which trim.
struct Crossing {
    double f = 1.0;
    geometry::Trim trim = geometry::Trim::None;
};

/// First crossing of any trim on an arc whose start is inside the hull and whose end is not.
[[nodiscard]] Crossing firstCrossing(const TrimmedSurface& hull, const geometry::ParameterArc& arc);

/// The point near `uv` on a trim's zero line, by Newton's steps along its gradient.
[[nodiscard]] Eigen::Vector2d
ontoTrim(const TrimmedSurface& hull, geometry::Trim trim, Eigen::Vector2d uv, int steps = 5);

/// True when the point lies inside every trim and not in a part of the surface's extension that comes back to
/// the hull's side.
[[nodiscard]] bool
insideHull(const TrimmedSurface& hull, const Eigen::Vector2d& uv, const Eigen::Vector3d& p);

} // namespace sheerlay::core
