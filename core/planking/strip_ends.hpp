#pragma once

#include "core/planking/measures.hpp"

namespace sheerlay::core {

/// Laps of a woven end past the centreplane, mm, counted along the strip from where the middle of the laid
/// surface ends.
struct WeaveLap {
    double inner = 0.0; ///< of the inner face, cut flush with the other side's outer face
    double outer = 0.0; ///< of the outer face
};

/// @param dihedral    rad, interior angle of the two sides at the stem
/// @param beta        rad, angle between strip and profile in the surface
/// @param thickness   mm
/// @param laidHeight  mm, of the laid surface above the moulds
/// @source planking.md section 1: t / (sin delta sin beta) inner, t cot(delta/2) / sin beta outer, from the
/// inner faces' meeting;
///         the laid surface's own end lies laidHeight cot(delta/2) / sin beta further out
[[nodiscard]] WeaveLap weaveLap(double dihedral, double beta, double thickness, double laidHeight);

/// Fills in both ends of the strip and the length to cut.
void endStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, const LayingContext& context);

} // namespace sheerlay::core
