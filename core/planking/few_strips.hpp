#pragma once

#include "core/planking/taper_edges.hpp"

#include <stop_token>
#include <vector>

namespace sheerlay::core {

/// One way to spread a field's tapers over its strips.
struct StripChoice {
    std::vector<char> held;           ///< per strip from the start outward: stays full
    std::vector<double> coefficients; ///< of the edges, linearised about where the search began
    int touched = 0;
    double wood = 0.0; ///< m2
};

/// Ways to keep the limit with few touched strips, best first: the program with prices on touching a strip,
/// lowered again and again for those that are touched anyway, and after that one strip after the other left
/// full where the rest can do without it. Neither proves that no smaller number would do.
/// @param edges  that keep the limit as far as it can be kept
/// @param keep   per strip: stays full in any case
/// @source  closing.md section 1; E. J. Candes, M. B. Wakin, S. P. Boyd, Enhancing Sparsity by Reweighted l1
/// Minimization (2008)
[[nodiscard]] std::vector<StripChoice>
fewStrips(const TaperEdges& edges, const std::vector<char>& keep, const std::stop_token& stop);

} // namespace sheerlay::core
