#pragma once

#include "core/planking/measures.hpp"

namespace sheerlay::core {

constexpr double trimAllowance = 10.0; ///< mm left to saw off past each end, in a strip's length to cut

/// How far the two faces of a woven end go, mm along the strip from where the middle of the laid surface
/// meets the centreplane; negative where a face ends short of it.
struct WeaveLap {
    double inner = 0.0;
    double outer = 0.0;
};

/// The corner two sides make where a strip ends there.
struct StemCorner {
    double dihedral = 0.0;   ///< rad, interior angle of the two sides
    double beta = 0.0;       ///< rad, angle between strip and profile in the surface
    double thickness = 0.0;  ///< mm
    double laidHeight = 0.0; ///< mm, of the laid surface above the moulds
};

/// Of the side that passes: cut flush with the outer face of the other side.
/// @source planking.md section 1: t / (sin delta sin beta) inner, t cot(delta/2) / sin beta outer, from the
///         inner faces' meeting; the laid surface's own end lies laidHeight cot(delta/2) / sin beta further
///         out. Exact for flat sides (tests/core/planking/weave_solids_test.cpp: solids cut by solids)
[[nodiscard]] WeaveLap weaveLap(const StemCorner& corner);

/// Of the other side: fitted against the inner face of the strip that passes. Its inner face ends where the
/// two inner faces meet, its outer face t cot(delta) / sin beta beyond.
[[nodiscard]] WeaveLap fittedLap(const StemCorner& corner);

/// Fills in both ends of the strip and the length to cut. A woven end is told as that of the side that
/// passes.
void endStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, const LayingContext& context);

/// Decides which side passes in every woven row, both ends alike: the side laid first (firstSide). Needs the
/// plan's marks; shortens the strips that are fitted.
void weaveEnds(Plan& plan, const Project& project, const LoftedHull& hull);

/// With ClosingMethod::RunOver, of the rows that close the bottom: how far port is left running past the keel
/// line, square, until that side is complete and planed back; starboard is then fitted to it. Port's last
/// strip is laid whole over the line with the others, so the only shutter is starboard's, unless a keel parts
/// the sides.
/// @source closing.md section 4 (a): half the width over tan beta, and what is left to saw off
void leaveRunningOver(Plan& plan, ClosingMethod closing);

} // namespace sheerlay::core
