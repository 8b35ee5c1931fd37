#pragma once

#include "core/hull/loft_data.hpp"

#include <vector>

namespace sheerlay::core {

/// A number of the table that the rest of the table contradicts.
struct SuspectCell {
    std::size_t point = 0; ///< index into LoftData::points
    bool height = false;  ///< the doubt is about the height; otherwise about the half-breadth or the distance
                          ///< along a diagonal
    double printed = 0.0; ///< mm; of a point on a diagonal the distance along it, as all here
    double fair = 0.0;    ///< mm, what the rest of the table wants there
    double spread = 0.0;  ///< mm, one standard deviation of `fair`
    double t = 0.0;       ///< deviation over its spread, scaled by the table's own scatter
    bool setAside = false; ///< so far off that the loft is made without it
};

/// What the search for misprints found.
struct CellSearch {
    std::vector<SuspectCell> suspects; ///< beyond five spreads and two units, worst first; at most six
    std::vector<SuspectCell> ranked;   ///< every number that could be judged, the least likely first
};

/// Finds misprints: seeds by leave-one-out along lines and sections, then a fair fit with leave-one-out
/// residuals from one factorisation. Of the numbers that stand out, and of those beside them that can't be
/// judged in place, each is left out in turn, and the one without which the rest agrees best is set aside,
/// until none is beyond five spreads; what agrees after all comes back. Gross cells get weight 0 in `data`,
/// and the start girths are taken again without them. Never changes a printed value. Six suspects and more
/// speak against spacing or siding, not against cells: none of them is set aside.
/// @accuracy  tests/core/hull/misprints_test.cpp: seeded misprints in three tables
/// @source table_checks.md section 2; thresholds were tuned there on two tables
[[nodiscard]] CellSearch searchCells(const HullTable& table, LoftData& data);

/// Gives the points of those set aside no weight.
void setAside(const std::vector<SuspectCell>& suspects, LoftData& data);

/// Its suspects alone.
[[nodiscard]] std::vector<SuspectCell> findSuspectCells(const HullTable& table, LoftData& data);

} // namespace sheerlay::core
