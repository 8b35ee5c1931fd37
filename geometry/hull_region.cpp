#include "geometry/hull_region.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::geometry {

HullRegion::HullRegion(std::vector<Eigen::Vector2d> boundary) : m_boundary(std::move(boundary)) {
    if (m_boundary.size() < 3)
        return;
    double lo = m_boundary.front().x();
    double hi = lo;
    for (const auto& p : m_boundary) {
        lo = std::min(lo, p.x());
        hi = std::max(hi, p.x());
    }
    constexpr std::size_t bins = 512;
    m_first = lo;
    m_step = std::max((hi - lo) / bins, 1e-9);
    m_bins.resize(bins);
    const auto bin = [&](double u) {
        return static_cast<std::size_t>(
            std::clamp((u - m_first) / m_step, 0.0, static_cast<double>(bins - 1)));
    };
    for (std::size_t i = 0; i < m_boundary.size(); ++i) {
        const auto& a = m_boundary[i];
        const auto& b = m_boundary[(i + 1) % m_boundary.size()];
        for (std::size_t k = bin(std::min(a.x(), b.x())); k <= bin(std::max(a.x(), b.x())); ++k)
            m_bins[k].push_back(i);
    }
}

bool HullRegion::contains(double u, double v) const noexcept {
    if (m_bins.empty())
        return false;
    const double at = (u - m_first) / m_step;
    if (at < 0 || at > static_cast<double>(m_bins.size()))
        return false;
    const std::size_t bin = std::min(static_cast<std::size_t>(at), m_bins.size() - 1);
    bool inside = false;
    for (const std::size_t i : m_bins[bin]) {
        const auto& a = m_boundary[i];
        const auto& b = m_boundary[i + 1 < m_boundary.size() ? i + 1 : 0];
        if ((a.x() <= u) != (b.x() <= u) && v < a.y() + (b.y() - a.y()) * (u - a.x()) / (b.x() - a.x()))
            inside = !inside;
    }
    return inside;
}

} // namespace sheerlay::geometry
