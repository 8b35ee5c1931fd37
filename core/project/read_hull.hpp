#pragma once

#include "core/project/table_view.hpp"

namespace sheerlay::core {

/// Reads the [hull] table: profile, stations, transoms, and what the table's last digit is worth.
/// Everything that can't be is reported; what is returned is whole only where no error was.
[[nodiscard]] HullTable readHull(TableView& file, Reading& reading);

} // namespace sheerlay::core
