#pragma once

#include "app/console.hpp"
#include "app/request.hpp"

namespace sheerlay::app {

/// `new --table` and `new --sections`: a project from a table of offsets or from half sections as drawn. Says
/// in words how it was read.
/// @return an exit code of the contract; unless it is exitDone no file was written
[[nodiscard]] int writeFromTable(const Request& request, const Console& console);

} // namespace sheerlay::app
