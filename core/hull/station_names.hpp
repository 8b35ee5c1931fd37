#pragma once

#include "core/hull/hull.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// What the stations are called, in the order of LoftedHull::stationX: the table's own x as printed, or their
/// number where it prints none.
[[nodiscard]] std::vector<std::string> stationNames(const Project& project, const LoftedHull& hull);

} // namespace sheerlay::core
