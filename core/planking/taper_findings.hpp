#pragma once

#include "core/planking/plan.hpp"

#include <set>

namespace sheerlay::core {

/// Rows with a planed edge on either side of the boat; stealers, which are told by themselves, left out.
[[nodiscard]] std::set<int> taperedRows(const Plan& plan);

/// Adds notes on the plan's tapers: which rows are planed narrower and what that gains; where rows stay over
/// the limit, whether the start line itself is to blame and which they are. Nothing without tapers.
void tellTapers(Plan& plan);

} // namespace sheerlay::core
