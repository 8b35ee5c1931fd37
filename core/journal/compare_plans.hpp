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

} // namespace sheerlay::core
