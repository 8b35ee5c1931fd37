#pragma once

#include <array>
#include <concepts>
#include <span>
#include <string>
#include <string_view>

namespace sheerlay::core {

namespace detail {

[[nodiscard]] std::string sayFilled(std::string_view english, std::span<const std::string> filled);
[[nodiscard]] std::string fillIn(std::string_view text, std::span<const std::string> filled);

[[nodiscard]] inline std::string filledIn(std::string_view text) {
    return std::string(text);
}
template <std::integral Number> [[nodiscard]] std::string filledIn(Number number) {
    return std::to_string(number);
}

} // namespace detail

/// A text in the language in force (Speaking), its places filled in: `say("row {} of {}", 3, 37)`. The
/// English is the key into resources/words, where a test wants every text that stands in the sources. What
/// follows a bar is never printed; it tells texts apart that are one in English: `say("bow|of an end")`.
/// A text without an entry is said in English.
/// @throws std::invalid_argument  the text has more places than are filled
template <typename... Filled>
[[nodiscard]] std::string say(std::string_view english, const Filled&... filled) {
    const std::array<std::string, sizeof...(Filled)> texts{detail::filledIn(filled)...};
    return detail::sayFilled(english, texts);
}

/// Marks a text that is said later, by say() with what this returns.
[[nodiscard]] constexpr const char* sayable(const char* english) noexcept {
    return english;
}

/// `english`, marked by sayable(), with its places filled in, in English whatever language is in force: for
/// what is said where nobody knows who will read it, and heard() again there.
template <typename... Filled>
[[nodiscard]] std::string inEnglish(std::string_view english, const Filled&... filled) {
    const std::array<std::string, sizeof...(Filled)> texts{detail::filledIn(filled)...};
    return detail::fillIn(english, texts);
}

/// A number's digits with the decimal mark of the language in force. For people only, never for a file that
/// a machine reads.
[[nodiscard]] std::string withDecimalMark(std::string digits);

/// Whether `text` is `english` as some language says it, whatever is filled in.
[[nodiscard]] bool isSaid(std::string_view text, std::string_view english);

} // namespace sheerlay::core
