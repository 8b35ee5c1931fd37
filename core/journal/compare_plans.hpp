#pragma once

#include "core/planking/plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// One piece still to be laid, by the old plan and by the new one.
struct StripChange {
    std::string strip; ///< id
    int row = 0;
    std::optional<double> cutBefore, cutAfter;   ///< mm, length to cut; none where the plan has no such piece
    std::optional<double> bendBefore, bendAfter; ///< 1/mm, hardest edge bend
};

/// Pieces of the rows below `row` that either plan has, port pieces left out, which mirror starboard; in the
/// order of the rows.
[[nodiscard]] std::vector<StripChange> changesBelow(const Plan& before, const Plan& after, int row);

/// What a new plan comes to beside the old one.
struct PlanChange {
    int piecesBefore = 0, piecesAfter = 0;    ///< of the whole boat, both sides
    double bendBefore = 0.0, bendAfter = 0.0; ///< 1/mm, hardest edge bend of the pieces below the row
    std::string hardestBefore, hardestAfter;  ///< ids of these; empty where nothing is left to lay
};

[[nodiscard]] PlanChange changeOf(const Plan& before, const Plan& after, int row);

} // namespace sheerlay::core
