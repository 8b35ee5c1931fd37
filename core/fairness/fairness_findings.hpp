#pragma once

#include "core/fairness/station_bumps.hpp"
#include "core/project/finding.hpp"

#include <vector>

namespace sheerlay::core {

/// One finding, a caution called unfair-station, for each station that stands out; none for a fair table.
[[nodiscard]] std::vector<Finding> fairnessFindings(const std::vector<StationBump>& bumps);

} // namespace sheerlay::core
