#pragma once

#include <string>

namespace sheerlay::core {

/// A plain number with a fixed count of decimals.
[[nodiscard]] std::string numberText(double value, int decimals);

} // namespace sheerlay::core
