#pragma once

#include "app/console.hpp"
#include "app/request.hpp"

namespace sheerlay::app {

/// Opens the window, on a project if the request names one. A project that isn't there, or a place without a
/// display, ends in one sentence on `console.err`.
/// @return an exit code of the contract
[[nodiscard]] int openWindow(const Request& request, const Console& console, int argc, char** argv);

} // namespace sheerlay::app
