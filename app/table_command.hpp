#pragma once

#include "app/console.hpp"
#include "app/request.hpp"

namespace sheerlay::app {

/// `new --table`: a project from a table of offsets. Says in words how the table was read.
/// @return an exit code of the contract; unless it is exitDone no file was written
[[nodiscard]] int writeFromTable(const Request& request, const Console& console);

} // namespace sheerlay::app
