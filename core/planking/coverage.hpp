#pragma once

#include "core/planking/plan.hpp"
#include "core/planking/row_cutter.hpp"
#include "geometry/parallels.hpp"

namespace sheerlay::core {

/// Checks that neighbouring rows meet: each row is rebuilt from the curve of its own middle alone (tangents
/// by differences of its points), half a width to either side, and compared with the edges that were planned.
class SeamCheck {
public:
    explicit SeamCheck(const TrimmedSurface& hull) : m_hull(&hull) {}
    void add(const RowMesh& mesh, geometry::FanSide side);
    /// Largest gap and overlap found between rebuilt neighbours, mm.
    [[nodiscard]] double largestGap() const noexcept { return m_gap; }
    [[nodiscard]] double largestOverlap() const noexcept { return m_overlap; }

private:
    const TrimmedSurface* m_hull;
    double m_gap = 0.0, m_overlap = 0.0;
    std::vector<double> m_before; // the row before: signed error of its far edge, by sampled column
    geometry::FanSide m_side = geometry::FanSide::TowardKeel;
};

} // namespace sheerlay::core
