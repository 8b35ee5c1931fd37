#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// The sheer at one mould, as it is marked on the planking before it is trimmed.
struct SheerMark {
    std::string mould;
    double x = 0.0;           ///< mm from the bow
    double halfBreadth = 0.0; ///< mm, of the bare planking's outside
    double height = 0.0;      ///< mm above the base line
    double aboveStrongback =
        0.0;                   ///< mm from the strongback's top up to it, boat upside down; 0 without moulds
    double alongOutside = 0.0; ///< mm along the sheer on the outside from its bow end, to spring a batten by
    /// mm over the outside from the start of the planking up to the sheer, where the start lies below it
    std::optional<double> fromStart;
};

/// @return bow to stern, one for each mould (at the table's stations where no mould stands)
[[nodiscard]] std::vector<SheerMark>
sheerMarks(const Project& project, const LoftedHull& hull, const Plan& plan);

} // namespace sheerlay::core
