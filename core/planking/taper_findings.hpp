#pragma once

#include "core/planking/plan.hpp"

#include <set>

namespace sheerlay::core {

/// Rows with a planed edge on either side of the boat; stealers, which are told by themselves, left out.
[[nodiscard]] std::set<int> taperedRows(const Plan& plan);

/// Says that the limit is out of reach of tapers, so that none are planed.
/// @param with, without  1/mm, how hard the hardest strip bends
void tellTapersGivenUp(double with, double without, Plan& plan);

/// Says that the limit is out of reach of tapers and which they keep to instead, 1/mm.
void tellEasedLimit(double limit, Plan& plan);

/// Adds notes on the plan's tapers: which rows are planed narrower and what that gains; where rows stay over
/// the limit, whether the start line itself is to blame and which they are. Nothing without tapers.
void tellTapers(Plan& plan);

} // namespace sheerlay::core
