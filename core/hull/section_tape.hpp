#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <vector>

namespace sheerlay::core {

/// A tape along the section at one place, such as the edge of a mould, from anywhere on the planking to where
/// it ends at the bottom (the centreline, or the side of a keel batten).
class SectionTape {
public:
    SectionTape(const TrimmedSurface& hull, double x); ///< x in mm from the bow

    [[nodiscard]] double x() const noexcept { return m_x; }                     ///< mm from the bow
    [[nodiscard]] bool misses() const noexcept { return m_section.size() < 2; } ///< no hull there
    [[nodiscard]] double whole() const noexcept;                                ///< mm, from the sheer
    /// mm from the foot of `point` on the section; `point` in or near the station's plane, starboard.
    [[nodiscard]] double leftFrom(const Eigen::Vector3d& point) const;
    /// Place of the section that so much girth is left from; its ends beyond them. Not where it misses.
    [[nodiscard]] Eigen::Vector3d at(double left) const;
    /// Half-breadth where the planking ends at the bottom: 0, or the side of the batten; mm.
    [[nodiscard]] double endBreadth() const noexcept { return misses() ? 0.0 : m_section.back().y(); }
    /// Unit direction of the section at the foot of `point`, toward the keel.
    [[nodiscard]] Eigen::Vector3d directionAt(const Eigen::Vector3d& point) const;

private:
    struct Foot {
        std::size_t cell = 0;
        double part = 0.0;
    };
    [[nodiscard]] Foot footOf(const Eigen::Vector3d& point) const;

    double m_x = 0.0;
    std::vector<Eigen::Vector3d> m_section; ///< sheer to keel
    std::vector<double> m_girth;            ///< mm from the first point
};

} // namespace sheerlay::core
