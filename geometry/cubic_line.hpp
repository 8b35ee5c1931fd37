#pragma once

#include <Eigen/Core>

#include <vector>

namespace sheerlay::geometry {

/// A smooth line through given points: cubic between neighbours, smooth at each point but at those where the
/// points themselves turn a corner. Its parameter t runs from 0 to 1 in proportion to the points' distances.
class CubicLine {
public:
    /// Turn between neighbouring chords, rad, that counts as a corner: well above what a smooth line turns
    /// within the 25 mm its points stand apart.
    static constexpr double corner = 0.2;

    /// @param points  mm, at least two that differ; points on top of the one before are left out
    /// @throws std::invalid_argument  fewer than two that differ
    explicit CubicLine(const std::vector<Eigen::Vector3d>& points);
    /// Through the points at parameters of the caller's, so that several lines can share theirs.
    /// @param breaks  one per point, strictly increasing from 0 to 1
    /// @throws std::invalid_argument  fewer than two points, or breaks that do not fit them
    CubicLine(std::vector<Eigen::Vector3d> points, std::vector<double> breaks);

    struct Place {
        Eigen::Vector3d p;
        Eigen::Vector3d before, after; ///< derivative by t, mm, coming and going; they differ at corners only
    };
    /// @param t  0 to 1; held there
    [[nodiscard]] Place at(double t) const;

    /// Parameters of the given points.
    [[nodiscard]] const std::vector<double>& breaks() const noexcept { return m_t; }
    /// Parameters of the corners, ends not counted.
    [[nodiscard]] std::vector<double> corners() const;
    /// mm, length of the chain of points.
    [[nodiscard]] double length() const noexcept { return m_length; }

private:
    void findSlopes();

    std::vector<Eigen::Vector3d> m_points, m_before, m_after;
    std::vector<double> m_t;
    std::vector<bool> m_corner;
    double m_length = 0.0;
};

/// The point at part f (0 to 1) of a cubic between two places h apart in t.
[[nodiscard]] Eigen::Vector3d
between(const CubicLine::Place& from, const CubicLine::Place& to, double h, double f);

} // namespace sheerlay::geometry
