#pragma once

#include <Eigen/Core>

#include <vector>

namespace sheerlay::geometry {

/// The part of a surface's parameter plane that is hull: below the sheer (v = 0), inside the centreplane
/// contour, forward of (or abaft) a transom. A closed polygon with a fast inside test; exact ends are found
/// on the trims' own functions.
class HullRegion {
public:
    HullRegion() = default;
    /// @param boundary  (u, v), closed implicitly, simple
    explicit HullRegion(std::vector<Eigen::Vector2d> boundary);

    [[nodiscard]] bool contains(double u, double v) const noexcept;
    [[nodiscard]] const std::vector<Eigen::Vector2d>& boundary() const noexcept { return m_boundary; }

private:
    std::vector<Eigen::Vector2d> m_boundary;
    double m_first = 0.0, m_step = 1.0;           // bins along u
    std::vector<std::vector<std::size_t>> m_bins; // edges that touch each bin
};

} // namespace sheerlay::geometry
