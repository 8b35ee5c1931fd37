#pragma once

#include "core/project/table_view.hpp"

namespace sheerlay::core {

/// Reads [strips]; what can't be is reported.
[[nodiscard]] StripStock readStrips(TableView& file, Reading& reading);

/// Reads [planking], which may be left out as a whole or in parts.
/// @param knuckled  the hull has a knuckle: rows start there when nothing else is said
[[nodiscard]] Planking
readPlanking(TableView& file, const StripStock& strips, bool knuckled, Reading& reading);

} // namespace sheerlay::core
