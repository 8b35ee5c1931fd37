#pragma once

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <vector>

namespace sheerlay::geometry {

/// The place of a line of straight pieces that is nearest to a point; 1e150 away where it has fewer than two
/// points.
[[nodiscard]] inline Eigen::Vector3d nearestOn(const std::vector<Eigen::Vector3d>& line,
                                               const Eigen::Vector3d& p) {
    Eigen::Vector3d nearest = p + Eigen::Vector3d(1e150, 0.0, 0.0);
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Eigen::Vector3d d = line[i] - line[i - 1];
        const double t = std::clamp((p - line[i - 1]).dot(d) / std::max(d.squaredNorm(), 1e-300), 0.0, 1.0);
        const Eigen::Vector3d here = line[i - 1] + t * d;
        if ((here - p).squaredNorm() < (nearest - p).squaredNorm())
            nearest = here;
    }
    return nearest;
}

/// The least distance of a point from a line of straight pieces; 1e150 where it has fewer than two points.
[[nodiscard]] inline double distanceTo(const std::vector<Eigen::Vector3d>& line, const Eigen::Vector3d& p) {
    return (nearestOn(line, p) - p).norm();
}

/// Length of a line of straight pieces.
[[nodiscard]] inline double lengthOf(const std::vector<Eigen::Vector3d>& line) {
    double length = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        length += (line[i] - line[i - 1]).norm();
    return length;
}

} // namespace sheerlay::geometry
