#pragma once

#include "core/planking/row_cutter.hpp"

namespace sheerlay::core {

/// Values of a parallel at a column with fraction, linear between its two nodes: exact enough, since columns
/// stand close (kappa: 1e-4 /m at 16 mm).
struct MeshValue {
    Eigen::Vector3d tangent; ///< unit, aft
    double edgeBend = 0.0;   ///< 1/mm
};

[[nodiscard]] MeshValue readMesh(const std::vector<geometry::RowNode>& line, double column);

} // namespace sheerlay::core
