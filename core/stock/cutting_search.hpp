#pragma once

#include "core/stock/cutting_bound.hpp"
#include "core/stock/cutting_problem.hpp"

#include <cstddef>
#include <vector>

namespace sheerlay::core {

/// A piece on its stick.
struct PlacedPiece {
    std::size_t unit = 0, member = 0;
    std::size_t piece = 0; ///< 0 at the bow, 1 the next, …
    int steps = 0;
};

/// A clear length of a stick and what is cut from it, the longest piece first.
struct CutStick {
    std::size_t kind = 0;
    std::vector<PlacedPiece> pieces;
    int left = 0;           ///< steps that remain
    std::size_t length = 0; ///< of StickKind::capacityOf()
    int stick = 0;          ///< the same for all clear lengths of one stick
};

/// A way of cutting everything.
struct Cutting {
    std::vector<std::vector<std::size_t>> joints; ///< per unit, places from 1, rising
    std::vector<CutStick> sticks;                 ///< all clear lengths of every stick that is begun
    double cost = 0.0;                            ///< sticks and joints
    int conflicts = 0; ///< pairs of neighbours with joints in the same bay; 0 wherever that can be
};

/// Cuts all units: each in turn where the bound's prices say, into what is left on sticks begun wherever that
/// is worth it; then sticks are taken apart and their strips cut again as long as that saves. Deterministic;
/// the work is limited by a count, not by a clock.
/// @param pieces  one per unit, each with at least one way
/// @param rounds  how often sticks are taken apart
[[nodiscard]] Cutting searchCutting(const CuttingProblem& problem,
                                    const std::vector<UnitPieces>& pieces,
                                    const CuttingBound& bound,
                                    int rounds = 4000);

} // namespace sheerlay::core
