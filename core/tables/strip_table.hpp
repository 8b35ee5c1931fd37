#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// One line per piece of planking in the laying order: name, place, what to cut, what it does to the wood,
/// both ends. Lengths in `units`, angles in degrees; a cell stays empty where there is nothing to say (the
/// radius of a straight strip).
[[nodiscard]] std::string stripTable(const Plan& plan, Units units);

} // namespace sheerlay::core
