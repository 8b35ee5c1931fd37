#pragma once

#include "core/project/project.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// Rows of text cells as CSV (RFC 4180): comma, quotes where a cell needs them, lines end in CR LF.
[[nodiscard]] std::string csvText(const std::vector<std::vector<std::string>>& rows);

/// A length as a plain number in `units`: 0.1 mm or 0.01 in, finer than any table is lifted.
[[nodiscard]] std::string plainLength(double millimetres, Units units);

/// "length mm": a column's name with its unit.
[[nodiscard]] std::string inUnits(std::string_view name, Units units);

} // namespace sheerlay::core
