#pragma once

#include <string>

namespace sheerlay::core {

/// A plain number with a fixed count of decimals; what rounds to nothing has no minus.
[[nodiscard]] std::string numberText(double value, int decimals);

} // namespace sheerlay::core
