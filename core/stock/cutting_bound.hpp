#pragma once

#include "core/stock/cutting_problem.hpp"

#include <vector>

namespace sheerlay::core {

/// Below what no way of cutting can cost, and what the proof of it says about lengths.
struct CuttingBound {
    double cost = 0.0;         ///< lower bound of all costs, joints included
    std::vector<double> worth; ///< by steps: what a piece of this length is worth; never falls
    std::vector<double> price; ///< per stick kind: its cost, dearer where there are few
    std::vector<std::vector<std::size_t>>
        joints;          ///< per unit, places from 1: the program's fractions rounded
                         ///< one after the other; empty for a unit without a way left
    int rounds = 0;      ///< of column generation
    bool closed = false; ///< the bound is the linear program's optimum to within 0.05 percent
};

/// Bound by column generation: patterns of pieces on a stick against ways of cutting each unit, the rule
/// about neighbours' bays shared out between them, fractions of both allowed. The cost told is reckoned from
/// the prices alone, so it holds whatever the solver did.
/// @param pieces     one per unit, each with at least one way
/// @param mostRounds work limit; a smaller one gives a lower bound that is true as well
/// @source  P. C. Gilmore, R. E. Gomory, Operations Research 9 (1961) 849: column generation for cutting
///          stock; A. A. Farley, Operations Research 38 (1990) 922: bound from any prices; from memory
[[nodiscard]] CuttingBound
boundCutting(const CuttingProblem& problem, const std::vector<UnitPieces>& pieces, int mostRounds = 150);

} // namespace sheerlay::core
