#pragma once

#include "core/fairness/station_bumps.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// The JSON of `check` with the key "fairness": per station "station", "x", "bump", "spread" (mm), "judged",
/// "unfair".
/// @param checkJson  what findingsToJson() gives
/// @throws std::invalid_argument  it is no JSON object's text
[[nodiscard]] std::string withFairness(std::string checkJson, const std::vector<StationBump>& bumps);

} // namespace sheerlay::core
