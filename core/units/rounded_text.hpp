#pragma once

#include "core/units/length.hpp"

#include <string>

namespace sheerlay::core {

// Lengths along the boat, rounded to what a plan can promise of them: 5 mm or 1/4 in.

/// A length to cut, mm: up to the next 5 mm or 1/4 in, never down.
[[nodiscard]] std::string cutLengthText(double millimetres, Units units);
/// A predicted length or place, mm: to the nearest 5 mm or 1/4 in.
[[nodiscard]] std::string placeText(double millimetres, Units units);

} // namespace sheerlay::core
