#pragma once

#include "core/project/table_view.hpp"

#include <optional>

namespace sheerlay::core {

/// [stock] with its lots of boards and rules of wood; none where the file has no such table.
/// @param strips  whose wood a lot has where it names none
[[nodiscard]] std::optional<Stock> readStock(TableView& file, const StripStock& strips, Reading& reading);

} // namespace sheerlay::core
