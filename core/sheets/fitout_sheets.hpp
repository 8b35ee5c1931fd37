#pragma once

#include "core/fitout/fitout.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"

#include <vector>

namespace sheerlay::core {

/// What comes after the planking, for the bench: sheer marks and what to plane, gunwales with pieces and
/// bevels, a page for each bulkhead and deck with its outline, one for each seat, one for thwarts and yoke.
/// With feet.
/// @param units  of what is printed
[[nodiscard]] std::vector<Sheet>
fitoutSheets(const Project& project, const Fitout& fitout, Units units, PageSize size);

} // namespace sheerlay::core
