#pragma once

#include <ostream>

namespace sheerlay::app {

/// Where a command speaks: data to `out`, messages to `err`.
struct Console {
    std::ostream& out;
    std::ostream& err;
    bool terminal = false; ///< err is a terminal, so progress may be shown
};

} // namespace sheerlay::app
