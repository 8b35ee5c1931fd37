#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/taper_field.hpp"
#include "core/project/project.hpp"

#include <stop_token>
#include <vector>

namespace sheerlay::core {

/// What tapers cost at one limit, over all sides of the start that were asked for.
struct TaperTrade {
    double limit = 0.0; ///< 1/mm
    int touched = 0;    ///< strips per side of the boat
    double wood = 0.0;  ///< mm2 planed away on one side of the boat
    double worst = 0.0; ///< 1/mm, worst edge bend left
    int metFrom = 1;    ///< the later of the sides: first edge from which on all keep the limit
};

/// The trade between limit and touched strips: the field solved at every limit, the same as taperField would.
/// @param wish     its limit and side are not used
/// @param limits   1/mm
/// @param sides    of the start that are planked
/// @param threads  the result does not depend on it
/// @return  one for each limit, in the same order; those that could not be solved for, or came after a stop,
/// are left out
[[nodiscard]] std::vector<TaperTrade> taperTrade(const TrimmedSurface& hull,
                                                 const std::vector<geometry::MasterNode>& master,
                                                 const TaperWish& wish,
                                                 const std::vector<double>& limits,
                                                 const std::vector<geometry::FanSide>& sides,
                                                 unsigned threads = 2,
                                                 std::stop_token stop = {});

/// The trade for a planned boat: from its own start line, at limits in round figures from just under the
/// worst edge bend without tapers down to a quarter of it, and at the plan's own limit. Tightest last.
[[nodiscard]] std::vector<TaperTrade> taperTrade(const Project& project,
                                                 const LoftedHull& hull,
                                                 const Plan& plan,
                                                 unsigned threads = 2,
                                                 std::stop_token stop = {});

} // namespace sheerlay::core
