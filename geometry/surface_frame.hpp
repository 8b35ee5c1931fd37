#pragma once

#include "geometry/surface.hpp"

#include <Eigen/Core>

namespace sheerlay::geometry {

/// First and second fundamental forms at a point. Normal as in SurfaceJet::normal (outward on a starboard
/// half hull).
struct FundamentalForms {
    double E = 0.0, F = 0.0, G = 0.0; ///< mm2 per parameter2
    double L = 0.0, M = 0.0, N = 0.0; ///< mm per parameter2

    [[nodiscard]] double det() const noexcept { return E * G - F * F; }
    /// Gauss curvature, 1/mm2.
    [[nodiscard]] double gauss() const noexcept { return (L * N - M * M) / det(); }
};

[[nodiscard]] FundamentalForms fundamentalForms(const SurfaceJet& jet);

/// Parameter components (du, dv) of a vector lying in the tangent plane.
[[nodiscard]] Eigen::Vector2d parameterComponents(const SurfaceJet& jet, const Eigen::Vector3d& tangent);

/// The moving frame of a line on the surface: unit tangent T, D = n x T (toward the keel when T runs aft),
/// unit normal n.
struct Frame {
    Eigen::Vector3d tangent, across, normal;
};

/// @param direction  any vector that is not normal to the surface; its tangential part gives T
[[nodiscard]] Frame frameAlong(const SurfaceJet& jet, const Eigen::Vector3d& direction);

/// What the surface does to a thin strip lying on it along `frame.tangent`. Exact for the surface; needs no
/// derivative of the line.
struct StripShape {
    double bend = 0.0;  ///< 1/mm over the moulds, + where the hull is convex: -T'.n
    double twist = 0.0; ///< rad/mm: II(T, D)
};

[[nodiscard]] StripShape stripShape(const SurfaceJet& jet, const Frame& frame);

/// Edge bend (geodesic curvature, T'.D, 1/mm, + toward the keel) of the parameter line v = const running with
/// u.
/// @source planking.md section 1
[[nodiscard]] double edgeBendOfULine(const SurfaceJet& jet);

} // namespace sheerlay::geometry
