#include "core/planking/mesh_reading.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

MeshValue readMesh(const std::vector<geometry::RowNode>& line, double column) {
    const auto last = static_cast<double>(line.size() - 1);
    const double c = std::clamp(column, 0.0, last);
    const auto i = static_cast<std::size_t>(std::floor(c));
    const std::size_t j = std::min(i + 1, line.size() - 1);
    const geometry::RowNode& a = line[i];
    const geometry::RowNode& b = line[j];
    if (!b.alive)
        return {a.frame.tangent, a.edgeBend};
    if (!a.alive)
        return {b.frame.tangent, b.edgeBend};
    const double f = c - static_cast<double>(i);
    return {((1 - f) * a.frame.tangent + f * b.frame.tangent).normalized(),
            (1 - f) * a.edgeBend + f * b.edgeBend};
}

} // namespace sheerlay::core
