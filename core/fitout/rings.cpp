#include "core/fitout/rings.hpp"

#include <cmath>

namespace sheerlay::core {

double ringArea(const std::vector<Eigen::Vector2d>& ring) {
    double twice = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Eigen::Vector2d &a = ring[i], &b = ring[(i + 1) % ring.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(twice) / 2;
}

} // namespace sheerlay::core
