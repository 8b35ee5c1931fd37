#pragma once

#include "core/project/covering_choices.hpp"
#include "core/project/table_view.hpp"

#include <optional>

namespace sheerlay::core {

/// Reads [covering] with its two faces; none where the file has no such table.
[[nodiscard]] std::optional<CoveringChoices> readCovering(TableView& file, Reading& reading);

} // namespace sheerlay::core
