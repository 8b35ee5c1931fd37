#pragma once

#include "core/moulds/mould_set.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"

#include <vector>

namespace sheerlay::core {

/// How the strongback is built and the moulds are set up on it: plan and side view, where every mould stands
/// and how high, what to check with string and tape, and the list of parts. Feet and page numbers included.
/// @param units  of what is printed; places and heights to the millimetre or 1/16 in
[[nodiscard]] std::vector<Sheet>
strongbackSheets(const Project& project, const MouldSet& set, Units units, PageSize size);

} // namespace sheerlay::core
