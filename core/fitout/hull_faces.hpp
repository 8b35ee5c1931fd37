#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <Eigen/Core>

#include <optional>
#include <string>

namespace sheerlay::core {

/// The faces of the finished hull that parts are fitted to, starboard: true normal offsets of the moulds'
/// surface, trimmed like it.
struct HullFaces {
    TrimmedSurface inside;  ///< with cloth and resin on it
    TrimmedSurface outside; ///< with cloth and resin on it
    double forward = 0.0;   ///< mm, x of the drawn hull's foremost point
    double aft = 0.0;       ///< mm, x of its aftermost point
};

/// @return the faces, or in words why one of them does not close
/// @accuracy  tests/core/fitout/hull_faces_test.cpp: cylinder and sphere
[[nodiscard]] Expected<HullFaces, std::string> facesOf(const Project& project, const LoftedHull& hull);

/// A point of a face with the surface's unit normal there, out of the hull.
struct FacePoint {
    Eigen::Vector2d uv = Eigen::Vector2d::Zero();
    Eigen::Vector3d point = Eigen::Vector3d::Zero(), normal = Eigen::Vector3d::Zero(); ///< mm
};

/// Where the level line across the boat through (x, z) meets the face.
/// @param near  parameters to begin at, of a point not far away; without them the section is searched down
/// from
///              the sheer
/// @return none where it meets the face nowhere below the sheer and outside the centreplane
[[nodiscard]] std::optional<FacePoint>
acrossAt(const TrimmedSurface& face, double x, double z, std::optional<Eigen::Vector2d> near = std::nullopt);

/// The face's upper edge at x; none beyond its ends.
[[nodiscard]] std::optional<FacePoint> sheerAt(const TrimmedSurface& face, double x);

/// mm above the base line: the face on the centreline at x, the lowest where there are several; none beyond
/// the ends.
[[nodiscard]] std::optional<double> bottomAt(const TrimmedSurface& face, double x);

/// mm over the face from its upper edge down to the height z, in the section at x; the whole girth where it
/// lies lower.
[[nodiscard]] double girthDownTo(const TrimmedSurface& face, double x, double z);

/// The point of the face that lies nearest to `point`, which is near it.
[[nodiscard]] FacePoint
nearestOn(const TrimmedSurface& face, const Eigen::Vector3d& point, Eigen::Vector2d near);

} // namespace sheerlay::core
