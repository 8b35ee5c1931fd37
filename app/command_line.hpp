#pragma once

#include "app/request.hpp"

#include <string>
#include <variant>
#include <vector>

namespace sheerlay::app {

/// The command line answered itself: help, version, or wrong usage.
struct Answer {
    int exitCode = exitDone;
    std::string out; ///< for standard output
    std::string err; ///< for standard error
};

/// Reads a command line (without the program's own name), in UTF-8.
[[nodiscard]] std::variant<Request, Answer> readCommandLine(const std::vector<std::string>& arguments);

} // namespace sheerlay::app
