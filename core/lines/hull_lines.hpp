#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <vector>

namespace sheerlay::core {

/// What a line of the lines plan is cut by. The sheer has two entries, for what it looks like from above and
/// from the side.
enum class LineFamily { SheerPlan, SheerProfile, Keel, Station, Waterline, Buttock, Diagonal, EqualGirth };

/// A plane along the boat that leaves the centreplane at a height and falls outboard.
struct DiagonalPlane {
    double height = 0.0; ///< mm, where it leaves the centreplane
    double angle = 0.0;  ///< rad below the horizontal, 0 to pi / 2
    /// Distance of a point from the centreplane along the plane, mm; for points on it.
    [[nodiscard]] double outward(const Eigen::Vector3d& p) const;
    friend bool operator==(const DiagonalPlane&, const DiagonalPlane&) = default;
};

/// Which lines are wanted; mm in the boat's frame.
struct LineChoices {
    std::vector<double> stations;   ///< x
    std::vector<double> waterlines; ///< heights
    std::vector<double> buttocks;   ///< half-breadths
    std::vector<DiagonalPlane> diagonals;
    std::vector<double> girths; ///< below the sheer
};

struct HullLinePoint {
    Eigen::Vector3d p = Eigen::Vector3d::Zero(); ///< mm
    /// 1/mm, + where the line is round outward (the keel downward, the sheer upward or outboard), - where
    /// hollow. Of a line of equal girth the surface's own along it, of all others that of the line in its
    /// plane.
    double curvature = 0.0;
};

/// One stretch of one line, bow to stern or sheer to keel. A waterline above the sheer amidships has two.
struct HullLine {
    LineFamily family = LineFamily::Waterline;
    std::size_t index = 0; ///< which of the family's choices; 0 for sheer and keel
    std::vector<HullLinePoint> points;
};

/// Lines enough to draw her by and no more, at round figures in `units`: at most seven waterlines below the
/// lowest sheer, five buttocks, three diagonals square to the widest section, three girths; no stations.
[[nodiscard]] LineChoices usualLines(const TrimmedSurface& hull, Units units);

/// Sheer, keel and the chosen lines between the hull's trims. A choice that misses the hull gives no line.
[[nodiscard]] std::vector<HullLine> hullLines(const TrimmedSurface& hull, const LineChoices& choices);

} // namespace sheerlay::core
