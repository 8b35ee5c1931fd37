#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <map>
#include <string>

namespace sheerlay::core {

/// mm of girth from the sheer to the middle of every row, measured over the strips where they are widest
/// together; a row that does not reach so far is measured where it comes nearest.
[[nodiscard]] std::map<int, double> rowGirths(const Plan& plan);

/// The wood of every row of the plan: that of the last rule of [stock] that names it, else the strips'.
[[nodiscard]] std::map<int, std::string> rowWoods(const Project& project, const Plan& plan);

} // namespace sheerlay::core
