#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>

namespace sheerlay::geometry {

/// Point and derivatives of a surface at one parameter pair, mm.
struct SurfaceJet {
    Eigen::Vector3d p;          ///< point
    Eigen::Vector3d u, v;       ///< first derivatives
    Eigen::Vector3d uu, uv, vv; ///< second derivatives

    /// Not normalised; outward on a starboard half hull (u aft, v toward the keel).
    [[nodiscard]] Eigen::Vector3d cross() const { return u.cross(v); }
    [[nodiscard]] Eigen::Vector3d normal() const { return cross().normalized(); }
};

/// A smooth surface that can be evaluated anywhere near its domain. Safe to share between threads.
class Surface {
public:
    virtual ~Surface() = default;
    [[nodiscard]] virtual SurfaceJet jet(double u, double v) const = 0;

protected:
    Surface() = default;
    Surface(const Surface&) = default;
    Surface& operator=(const Surface&) = default;
    Surface(Surface&&) = default;
    Surface& operator=(Surface&&) = default;
};

} // namespace sheerlay::geometry
