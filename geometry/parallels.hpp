#pragma once

#include "geometry/geodesic.hpp"
#include "geometry/surface_frame.hpp"

#include <cstddef>
#include <vector>

namespace sheerlay::geometry {

/// A node of the line the parallels start from.
struct MasterNode {
    Eigen::Vector2d uv;
    Eigen::Vector2d velocity; ///< d(uv) / ds, aft
    double edgeBend = 0.0;    ///< 1/mm, + toward the keel
};

/// A node of one parallel. Column i of every parallel lies on the geodesic that leaves the master's node i
/// squarely.
struct RowNode {
    GeodesicState state;   ///< position; velocity points away from the master
    SurfaceJet jet;        ///< at state.uv
    Frame frame;           ///< tangent of the parallel, aft; across toward the keel; outward normal
    Eigen::Vector2d aft;   ///< d(uv) / d(arc length of the parallel), aft
    double edgeBend = 0.0; ///< 1/mm, + toward the keel
    bool alive = true;     ///< false once the geodesic has left the surface or the rows have folded
};

enum class FanSide { TowardKeel, TowardSheer };

/// Geodesics shot squarely from a master line, advanced together; what they reach after equal distances are
/// the master's geodesic parallels, exactly (Gauss's lemma), so uniform rows need no fitting of curves. The
/// Jacobi field gives their edge bend: kappa = -J'/J, without numerical differentiation.
/// @accuracy  tests/geometry/parallels_test.cpp: torus, sphere, ellipsoid; 1e-5 mm over a hull
/// @source    planking.md sections 1 and 3; M. P. do Carmo, Differential Geometry, section 4-6 (Gauss's
/// lemma)
class ParallelFan {
public:
    /// @param surface  must outlive the fan
    /// @param box      geodesics that leave it die
    ParallelFan(const Surface& surface,
                const std::vector<MasterNode>& master,
                FanSide side,
                const ParameterBox& box);

    /// One Runge-Kutta step for every living column. @param distance mm, > 0
    void advance(double distance);
    /// The same with a distance of its own for every column. @param distances  mm, >= 0
    void advance(const std::vector<double>& distances);

    [[nodiscard]] const std::vector<RowNode>& row() const noexcept { return m_row; }
    [[nodiscard]] FanSide side() const noexcept { return m_side; }
    /// Columns before `first` and from `last` on are no longer advanced.
    void keepOnly(std::size_t first, std::size_t last);
    void kill(std::size_t column) { m_row[column].alive = false; }

private:
    void step(RowNode& node, double distance) const;
    void complete(RowNode& node) const;

    const Surface* m_surface;
    FanSide m_side;
    ParameterBox m_box;
    std::vector<RowNode> m_row;
};

/// A short arc in the parameter plane: cubic Hermite interpolation, f from 0 to 1.
struct ParameterArc {
    Eigen::Vector2d start, startRate, end, endRate; ///< rates are d(uv) / df

    [[nodiscard]] Eigen::Vector2d at(double f) const;
    /// The same arc run from its other end.
    [[nodiscard]] ParameterArc reversed() const { return {end, -endRate, start, -startRate}; }
};

/// Arc between two neighbouring nodes of a parallel.
[[nodiscard]] ParameterArc arcBetween(const RowNode& a, const RowNode& b);
/// Arc between two nodes of one geodesic, `length` mm apart.
[[nodiscard]] ParameterArc arcAlong(const GeodesicState& a, const GeodesicState& b, double length);
/// Point at part `f` (0 to 1) between two neighbouring nodes of a parallel.
[[nodiscard]] Eigen::Vector2d between(const RowNode& a, const RowNode& b, double f);
/// The same between two nodes of one geodesic, `length` mm apart.
[[nodiscard]] Eigen::Vector2d
betweenAlong(const GeodesicState& a, const GeodesicState& b, double length, double f);
/// Arc length from a to b along the parallel, mm; exact for a circular arc.
[[nodiscard]] double arcLength(const RowNode& a, const RowNode& b);

} // namespace sheerlay::geometry
