#pragma once

#include <string>
#include <string_view>

namespace sheerlay::core {

/// A builder's text in plain signs: typographic primes, quotes, dashes, fractions and spaces become ' " - /
/// and ordinary spaces, letters become small, the ends are trimmed. Other signs stay as they are.
[[nodiscard]] std::string plainSigns(std::string_view text);

/// The text without blanks, tabs and line ends at its ends.
[[nodiscard]] std::string trimmed(std::string_view text);

/// Whether a length is printed as feet-inches-eighths: two dashes behind its sign, "1-3-4+".
[[nodiscard]] bool inFeetInchesEighths(std::string_view printed);

/// The text in quotes for a message, cut short where it is long; control signs are shown as "?".
[[nodiscard]] std::string quoted(std::string_view text);

} // namespace sheerlay::core
