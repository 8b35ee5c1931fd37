#pragma once

#include "app/console.hpp"
#include "app/request.hpp"

namespace sheerlay::app {

/// `new --table`, `new --sections` and `new --surface`: a project from a table of offsets, from half sections
/// as drawn, or from a designer's surfaces. Says in words how it was read.
/// @return an exit code of the contract; unless it is exitDone no file was written
[[nodiscard]] int writeFromTable(const Request& request, const Console& console);

} // namespace sheerlay::app
