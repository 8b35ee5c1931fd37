#pragma once

#include "core/project/put_aside.hpp"
#include "core/project/table_view.hpp"

#include <vector>

namespace sheerlay::core {

/// Reads [[put-aside]]: the findings that the builder put aside, each with a reason.
[[nodiscard]] std::vector<PutAside> readPutAside(TableView& file, Reading& reading);

} // namespace sheerlay::core
