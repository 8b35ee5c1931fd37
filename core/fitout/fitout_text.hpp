#pragma once

#include "core/fitout/fitout.hpp"

#include <string>

namespace sheerlay::core {

/// What a builder reads of it first, in at most four lines, each ended by a newline: gunwales, ends, seats,
/// yoke. Widths to 1 mm or 1/16 in; the sheets have the rest.
[[nodiscard]] std::string toText(const Fitout& fitout, Units units);

} // namespace sheerlay::core
