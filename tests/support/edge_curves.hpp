#pragma once

#include "core/planking/plan.hpp"

#include <Eigen/Core>
#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <vector>

/// Edges of strips as curves through their vertices, to measure distances between them.
namespace sheerlay::test {

/// Line through the vertices with four times as many, by the cubic through four neighbours.
[[nodiscard]] inline std::vector<Eigen::Vector3d> finer(const std::vector<Eigen::Vector3d>& line) {
    using Eigen::Vector3d;
    std::vector<Vector3d> fine;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Vector3d& a = line[i];
        const Vector3d& b = line[i + 1];
        const double h = (b - a).norm();
        if (h == 0)
            continue;
        const auto slope = [&](std::size_t k) -> Vector3d {
            if (k == 0 || k + 1 == line.size())
                return (b - a) / h;
            const double h0 = (line[k] - line[k - 1]).norm(), h1 = (line[k + 1] - line[k]).norm();
            if (h0 == 0 || h1 == 0)
                return (b - a) / h;
            const Vector3d before = (line[k] - line[k - 1]) / h0, behind = (line[k + 1] - line[k]) / h1;
            if (before.dot(behind) < 0.99) // a corner
                return (b - a) / h;
            return (before * h1 + behind * h0) / (h0 + h1);
        };
        const Vector3d sa = slope(i) * h, sb = slope(i + 1) * h;
        for (int j = 0; j < 4; ++j) {
            const double t = j / 4.0, t2 = t * t, t3 = t2 * t;
            fine.push_back((2 * t3 - 3 * t2 + 1) * a + (t3 - 2 * t2 + t) * sa + (3 * t2 - 2 * t3) * b +
                           (t3 - t2) * sb);
        }
    }
    fine.push_back(line.back());
    return fine;
}

/// mm2, from a point to the straight piece between a and b.
[[nodiscard]] inline double
squareDistance(const Eigen::Vector3d& p, const Eigen::Vector3d& a, const Eigen::Vector3d& b) {
    const Eigen::Vector3d d = b - a;
    const double f = d.squaredNorm() > 0 ? std::clamp((p - a).dot(d) / d.squaredNorm(), 0.0, 1.0) : 0.0;
    return (p - a - f * d).squaredNorm();
}

/// mm, from a point to a line of chords; what lies further than 60 mm off along x is not looked at.
[[nodiscard]] inline double distanceTo(const Eigen::Vector3d& p, const std::vector<Eigen::Vector3d>& line) {
    double least = 1e300;
    for (std::size_t i = 1; i < line.size(); ++i) {
        if (std::abs(line[i].x() - p.x()) > 60)
            continue;
        least = std::min(least, squareDistance(p, line[i - 1], line[i]));
    }
    return std::sqrt(least);
}

/// mm2 inside a closed outline, its first point not repeated.
[[nodiscard]] inline double areaOf(const std::vector<Eigen::Vector2d>& outline) {
    double sum = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Eigen::Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
        sum += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(sum) / 2;
}

} // namespace sheerlay::test
