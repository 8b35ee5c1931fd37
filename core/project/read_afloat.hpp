#pragma once

#include "core/project/afloat_choices.hpp"
#include "core/project/table_view.hpp"

#include <optional>

namespace sheerlay::core {

/// Reads [afloat] with its loads and parts; none where the file has no such table.
[[nodiscard]] std::optional<AfloatChoices> readAfloat(TableView& file, Reading& reading);

} // namespace sheerlay::core
