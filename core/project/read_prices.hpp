#pragma once

#include "core/project/prices.hpp"
#include "core/project/table_view.hpp"

namespace sheerlay::core {

/// Reads [prices]; none of them where the file has no such table.
[[nodiscard]] Prices readPrices(TableView& file, Reading& reading);

} // namespace sheerlay::core
