#pragma once

#include "core/planking/start_table.hpp"
#include "core/project/project.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// The start lines side by side: a heading and a line for each, ended by newlines; nothing for an empty
/// table.
/// @param chosen  the one the plan starts from is marked
/// @param limit   1/mm, edge bend that the tapers are counted for
[[nodiscard]] std::string
startTableText(const std::vector<StartTableRow>& table, const StartLine& chosen, double limit, Units units);

} // namespace sheerlay::core
