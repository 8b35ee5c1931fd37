#pragma once

#include "core/project/project.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// A text as TOML writes it, quotes and control signs escaped.
[[nodiscard]] std::string inQuotes(std::string_view text);

/// The shortest digits that read back to the same number.
[[nodiscard]] std::string shortestDigits(double value);

/// Twelve digits, which read back, converted there and back and written again give the same twelve; of a
/// number that is kept in another unit inside.
[[nodiscard]] std::string steadyDigits(double value);

/// A length as a plain number in the file's units.
[[nodiscard]] std::string writtenLength(double millimetres, Units units);

} // namespace sheerlay::core
