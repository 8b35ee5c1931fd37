#pragma once

#include "core/planking/row_cutter.hpp"
#include "core/planking/stealer_bands.hpp"

#include <vector>

namespace sheerlay::core {

/// A band's own rows: its stealers, and the strip beside them, which is the whole row where there is none.
struct BandMeshes {
    std::vector<RowMesh> stealers; ///< bow to stern
    RowMesh beside;                ///< its far edge is the band's
};

/// Shares a band out. The seam inside lies square to the band's near edge.
/// @param fan     with its last row on the near edge; it ends on the band's far edge
/// @param start   `width`, `spacing` and the near edge as `parent`
/// @param band    mm over u
/// @param moulds  mm from the bow, for the nibs to keep clear of
/// @source closing.md section 2
[[nodiscard]] BandMeshes bandMeshes(const TrimmedSurface& hull,
                                    geometry::ParallelFan& fan,
                                    const RowMesh& start,
                                    const RowWidth& band,
                                    geometry::FanSide side,
                                    const std::vector<double>& moulds);

/// Gives the strip beside a stealer its notches, each a square step in its near edge.
void cutNotches(RowPiece& piece, const RowMesh& beside);

} // namespace sheerlay::core
