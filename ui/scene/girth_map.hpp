#pragma once

#include <Eigen/Core>

#include <functional>
#include <vector>

namespace sheerlay::ui {

/// Section of the half hull at x, mm: points sheer to keel on starboard; empty where there is no hull.
using SectionAt = std::function<std::vector<Eigen::Vector3d>(double x)>;

/// Rolls the planking out flat: along x, and across by the girth from the centreline, measured around the
/// sections. True along every section; lengths along the strips shrink where the hull turns away from x (near
/// the ends). Positive to starboard.
class GirthMap {
public:
    GirthMap() = default;
    /// @param first, last  mm, x of both ends of the hull
    GirthMap(const SectionAt& sectionAt, double first, double last);

    /// Place of a point of the hull on the map: x, signed girth, mm.
    [[nodiscard]] Eigen::Vector2d place(const Eigen::Vector3d& point) const;
    /// Half girth of the hull at x, mm.
    [[nodiscard]] double halfGirth(double x) const;
    /// A line around the hull at x, so far outward of it: the section before x, from the starboard sheer over
    /// the keel to the port sheer; mm. Empty beyond both ends.
    [[nodiscard]] std::vector<Eigen::Vector3d> ring(double x, double outward) const;

private:
    struct Section {
        double x = 0.0;
        std::vector<Eigen::Vector2d> points; // |y|, z from the keel to the sheer
        std::vector<double> girth;           // mm from the keel
    };
    [[nodiscard]] std::size_t sectionBefore(double x) const;
    [[nodiscard]] static double girthOn(const Section& section, const Eigen::Vector2d& point);

    std::vector<Section> m_sections;
};

} // namespace sheerlay::ui
