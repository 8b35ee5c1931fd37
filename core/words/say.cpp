#include "core/words/say.hpp"

#include "core/words/catalog.hpp"
#include "core/words/heard.hpp"

#include <algorithm>
#include <stdexcept>

namespace sheerlay::core {

namespace {

std::string_view withoutContext(std::string_view english) noexcept {
    return english.substr(0, english.find('|'));
}

std::string_view inLanguage(std::string_view english, Language language) {
    const Catalog& catalog = catalogOf(language);
    const auto found = catalog.find(english);
    return found == catalog.end() ? withoutContext(english) : std::string_view(found->second);
}

bool isDigit(char c) noexcept {
    return c >= '0' && c <= '9';
}

/// A place to fill in, "{}" or "{2}", at the front of `text`: its length, 0 where there is none.
std::size_t placeLength(std::string_view text) noexcept {
    if (text.starts_with("{}"))
        return 2;
    return text.size() > 2 && text[0] == '{' && isDigit(text[1]) && text[2] == '}' ? 3 : 0;
}

} // namespace

std::string detail::sayFilled(std::string_view english, std::span<const std::string> filled) {
    return fillIn(inLanguage(english, languageSpoken()), filled);
}

std::string detail::fillIn(std::string_view text, std::span<const std::string> filled) {
    const std::string_view whole = text;
    std::string said;
    std::size_t next = 0;
    while (!text.empty()) {
        const std::size_t place = placeLength(text);
        if (place == 0) {
            said += text.front();
            text.remove_prefix(1);
            continue;
        }
        const std::size_t which = place == 2 ? next++ : static_cast<std::size_t>(text[1] - '0');
        if (which >= filled.size())
            throw std::invalid_argument("too little to fill in \"" + std::string(whole) + "\"");
        said += filled[which];
        text.remove_prefix(place);
    }
    return said;
}

std::string withDecimalMark(std::string digits) {
    if (languageSpoken() == Language::German)
        std::ranges::replace(digits, '.', ',');
    return digits;
}

bool isSaid(std::string_view text, std::string_view english) {
    return std::ranges::any_of(allLanguages(), [&](const LanguageName& name) {
        return filledOf(text, inLanguage(english, name.language)).has_value();
    });
}

} // namespace sheerlay::core
