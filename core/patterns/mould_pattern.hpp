#pragma once

#include "core/moulds/mould_set.hpp"
#include "core/patterns/pattern.hpp"

#include <vector>

namespace sheerlay::core {

/// Every mould, bow to stern, then the stem forms and transoms: outline to saw, centreline, sheer mark,
/// waterlines of the table, foot line, and the bevel at places round the edge. A half mould's first
/// coordinate is y; a stem form's is x.
/// @param units  of what is written on them
[[nodiscard]] std::vector<Pattern> mouldPatterns(const Project& project, const MouldSet& set, Units units);

} // namespace sheerlay::core
