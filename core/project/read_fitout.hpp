#pragma once

#include "core/project/fitout_choices.hpp"
#include "core/project/table_view.hpp"

#include <optional>

namespace sheerlay::core {

/// Reads [fitout]; what is left out of a part keeps the value it has in FitoutChoices.
/// @return none where the file has no such table
[[nodiscard]] std::optional<FitoutChoices> readFitout(TableView& file, Reading& reading);

} // namespace sheerlay::core
