#pragma once

#include <vector>

namespace sheerlay::core {

/// Width of one tapered row, square to its edge nearer the start, as a smooth function along that edge: the
/// cubic spline through given widths with straight ends, constant beyond them. Empty: full width everywhere.
class RowWidth {
public:
    RowWidth() = default;
    /// @param u      surface parameter u of the near edge (about x), strictly increasing
    /// @param width  mm, one per u
    /// @throws std::invalid_argument  fewer than two points, or u not increasing
    RowWidth(std::vector<double> u, std::vector<double> width);

    [[nodiscard]] bool full() const noexcept { return m_u.empty(); }
    /// @return mm; only where not full()
    [[nodiscard]] double at(double u) const;
    [[nodiscard]] const std::vector<double>& u() const noexcept { return m_u; }
    [[nodiscard]] const std::vector<double>& width() const noexcept { return m_width; }

private:
    std::vector<double> m_u, m_width, m_second;
};

} // namespace sheerlay::core
