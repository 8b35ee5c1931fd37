#pragma once

#include "core/planking/plan.hpp"
#include "core/planking/row_cutter.hpp"
#include "geometry/parallels.hpp"

namespace sheerlay::core {

/// Lays the piece flat: integrates the edge bend along one parallel (the middle, or the parent edge where the
/// middle is cut away) and sets the edges off squarely. Fills in Strip::outline. Error of an edge's length:
/// the integral of K w^2 / 8.
/// @source planking.md section 8
void flattenStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, geometry::FanSide side);

} // namespace sheerlay::core
