#pragma once

#include "core/planking/plan.hpp"
#include "core/planking/row_cutter.hpp"
#include "geometry/parallels.hpp"

namespace sheerlay::core {

/// Lays the piece flat: integrates the edge bend along one parallel (the middle, or the uncut edge of a strip
/// that is cut, there bent as the middle is) and sets the edges off squarely. Fills in Strip::outline.
/// @accuracy  edges keep their length within 0.3 mm (tests/support/plan_proof.hpp); the middle comes out
/// shorter by the integral of K w^2 / 8
/// @source planking.md section 8
void flattenStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, geometry::FanSide side);

} // namespace sheerlay::core
