#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// What say() said in English before, in the language in force: for findings, which a plan keeps in English
/// whatever its paper speaks. The sentence is known again by the catalog's English, longest fixed text
/// first, and what fills its places is heard likewise, measures with the language's decimal mark. What
/// nothing in the catalog reads as stays as it is.
[[nodiscard]] std::string heard(const std::string& english);

/// What fills the places of a text, in the order of the places; none where it does not read so. Every place
/// takes at least one sign, as few as it can.
/// @param pattern  with places {} one behind the other
[[nodiscard]] std::optional<std::vector<std::string>> filledOf(std::string_view text,
                                                               std::string_view pattern);

} // namespace sheerlay::core
