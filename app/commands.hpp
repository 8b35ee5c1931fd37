#pragma once

#include "app/console.hpp"
#include "app/request.hpp"

namespace sheerlay::app {

/// Runs any command but the window. Needs no display.
/// @return an exit code of the contract; unless it is exitDone no file was written
[[nodiscard]] int runCommand(const Request& request, const Console& console);

} // namespace sheerlay::app
