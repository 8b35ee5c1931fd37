#pragma once

#include "geometry/surface.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::geometry {

/// A point under way along a unit-speed geodesic, with the Jacobi field of the fan it belongs to.
struct GeodesicState {
    Eigen::Vector2d uv;       ///< parameters
    Eigen::Vector2d velocity; ///< d(uv) / d(arc length)
    double jacobi = 1.0;      ///< J: spacing of neighbouring geodesics relative to the start
    double jacobiRate = 0.0;  ///< dJ / d(arc length), 1/mm

    friend bool operator==(const GeodesicState&, const GeodesicState&) = default;
};

/// One Runge-Kutta step of fourth order along the geodesic, carrying J'' = -K J.
/// @param here    jet of `surface` at state.uv (the caller usually has it already)
/// @param length  mm, may be negative
/// @accuracy      tests/geometry/geodesic_test.cpp: sphere, cylinder, cone, torus, ellipsoid (GeographicLib)
/// @source        M. P. do Carmo, Differential Geometry of Curves and Surfaces, sections 4-4 and 5-5
[[nodiscard]] GeodesicState
geodesicStep(const Surface& surface, const SurfaceJet& here, const GeodesicState& state, double length);

/// A line with a given edge bend along its length, traced from a point.
struct BentLineNode {
    Eigen::Vector2d uv;
    Eigen::Vector2d velocity; ///< d(uv) / ds toward growing s
    double s = 0.0;           ///< mm from the start, signed
    double edgeBend = 0.0;    ///< 1/mm
};

/// Edge bend against arc length: k0 + k2 xi^2 + k4 xi^4, xi = s / halfLength, 1/mm. All zero: a geodesic.
struct EdgeBendProfile {
    double k0 = 0.0, k2 = 0.0, k4 = 0.0; ///< 1/mm, + toward the keel
    double halfLength = 1.0;             ///< mm

    [[nodiscard]] double at(double s) const noexcept {
        const double q = s * s / (halfLength * halfLength);
        return k0 + q * (k2 + q * k4);
    }
};

/// Rectangle of parameters in which tracing goes on.
struct ParameterBox {
    double u0 = 0.0, u1 = 0.0, v0 = 0.0, v1 = 0.0;

    [[nodiscard]] bool contains(const Eigen::Vector2d& uv) const noexcept {
        return uv.x() >= u0 && uv.x() <= u1 && uv.y() >= v0 && uv.y() <= v1;
    }
};

/// Traces the line of `profile` through `start` both ways until it leaves `box` or is `maxLength` long on a
/// side.
/// @param direction  3D direction of growing s at the start; its tangential part counts
/// @param spacing    mm between nodes; > 0
/// @return           nodes in the order of s, the start among them at s = 0
/// @throws std::invalid_argument  spacing not positive
[[nodiscard]] std::vector<BentLineNode> traceBentLine(const Surface& surface,
                                                      const Eigen::Vector2d& start,
                                                      const Eigen::Vector3d& direction,
                                                      const EdgeBendProfile& profile,
                                                      const ParameterBox& box,
                                                      double spacing,
                                                      double maxLength);

} // namespace sheerlay::geometry
