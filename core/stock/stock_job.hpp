#pragma once

#include "core/planking/plan.hpp"
#include "core/stock/joint_places.hpp"

#include <cstddef>
#include <set>
#include <vector>

namespace sheerlay::core {

/// Strips that are cut alike, where they may be joined, and what was decided.
struct StockJob {
    std::vector<const Strip*> strips; ///< of the plan, which must outlive the job
    PlacedUnit placed;
    std::vector<std::size_t> joints; ///< places from 1, once decided
    bool decided = false;

    /// Bays in which it is joined.
    [[nodiscard]] std::set<int> bays() const;
};

/// Every strip of the plan once; with `mirror`, a starboard strip and its image on port together where they
/// are equally long to a millimetre.
[[nodiscard]] std::vector<StockJob> gatherJobs(const Plan& plan, bool mirror);

/// Whether any of their strips are neighbours, see areNeighbours().
[[nodiscard]] bool areNeighbours(const StockJob& a, const StockJob& b, bool stagger);

/// The places that do not lie in these bays.
[[nodiscard]] PlacedUnit withoutBays(const PlacedUnit& placed, const std::set<int>& bays);

/// mm, the longest piece of the way whose longest piece is shortest: what boards must give at least.
[[nodiscard]] double leastLongestPiece(const CuttingProblem& problem, const CutUnit& unit);

/// Whether there is any way from bow to stern.
[[nodiscard]] bool canBeCut(const CuttingProblem& problem, const UnitPieces& pieces);

} // namespace sheerlay::core
