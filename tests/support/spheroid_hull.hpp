#pragma once

#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>

namespace sheerlay::test {

/// Half of a half spheroid as a hull: sheer in the plane z = 0, circular sections below it. The ellipsoid's
/// image of d = (sin u, cos u - v, -v), shrunk to unit length: d, d_u and d_v have determinant 1 everywhere,
/// so there is no pole; the sheer is v = 0 and the centreplane v = cos u. Parameters scaled to about mm.
struct SpheroidHull {
    double a = 2500, b = 400;
    [[nodiscard]] geometry::TensorSurface surface() const {
        const double ua = a * std::numbers::pi / 2; // u at the ends
        return splineOf(
            [&](double u, double v) {
                const double c = std::cos(u / a), q = v / b;
                const Eigen::Vector3d d = Eigen::Vector3d(std::sin(u / a), c - q, -q).normalized();
                return Eigen::Vector3d(a * d.x(), b * d.y(), b * d.z());
            },
            {-1.04 * ua, 2.08 * ua / 60, 60},
            {-60, 560.0 / 24, 24});
    }
};

} // namespace sheerlay::test
