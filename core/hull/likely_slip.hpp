#pragma once

#include "core/hull/suspect_cells.hpp"

#include <optional>
#include <string>

namespace sheerlay::core {

/// How a doubtful number may have come about.
struct LikelySlip {
    double value = 0.0; ///< mm, what was meant if it was this slip
    std::string words;  ///< "a digit lost", "a foot too little", "inches and eighths exchanged", …
};

/// The number of a cell as the table prints it: of a point on a diagonal the distance along it.
[[nodiscard]] const std::string& printedNumber(const TablePoint& cell, bool height);

/// The single slip of a draughtsman, compositor or reader that best explains a doubtful number: a digit
/// misread or lost, two digits or inches and eighths exchanged, an inch or a foot, a sign, the neighbour's
/// number. Each has a cost; the cheapest together with the distance of its value from the fair one wins.
/// @param data  the points that `cell` indexes, prepared from `table`
/// @return none when no slip comes within three spreads of the fair value
/// @source table_checks.md section 2.5; the costs are judged there, not counted from real errata
[[nodiscard]] std::optional<LikelySlip>
likelySlip(const HullTable& table, const LoftData& data, const SuspectCell& cell);

} // namespace sheerlay::core
