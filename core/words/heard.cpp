#include "core/words/heard.hpp"

#include "core/words/catalog.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr std::string_view placeMark = "{}";
/// Less fixed text than this tells too little of a sentence ("{} by {}", "Row {}"): it is known again only by
/// names, measures and texts of the catalog in its places.
constexpr std::size_t enoughFixed = 10;
constexpr std::size_t leastFixed = 4;

std::size_t fixedLength(std::string_view english) noexcept {
    std::size_t length = english.size();
    for (std::size_t at = english.find(placeMark); at != std::string_view::npos;
         at = english.find(placeMark, at + placeMark.size()))
        length -= placeMark.size();
    return length;
}

/// The English of a catalog that can be known again, longest fixed text first.
std::vector<std::string_view> patternsOf(Language language) {
    std::vector<std::string_view> patterns;
    for (const auto& [english, other] : catalogOf(language))
        if (english.find('|') == std::string::npos && fixedLength(english) >= leastFixed)
            patterns.emplace_back(english);
    std::ranges::stable_sort(
        patterns, [](std::string_view a, std::string_view b) { return fixedLength(a) > fixedLength(b); });
    return patterns;
}

const std::vector<std::string_view>& knownAgain(Language language) {
    static const std::vector<std::string_view> none;
    if (language == Language::English)
        return none;
    static const std::vector<std::string_view> german = patternsOf(Language::German);
    return german;
}

/// "12.5 mm (1/2\")": begins with a figure and names a unit, so that its points are decimal marks.
bool isMeasure(std::string_view text) noexcept {
    constexpr std::array<std::string_view, 7> units{" mm", " m", " ft", "\"", " N", " kg", " L"};
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (text.empty() || !digit(text.front()))
        return false;
    const bool figure = std::ranges::all_of(text, [&](char c) { return digit(c) || c == '.'; });
    return figure || std::ranges::any_of(units, [&](std::string_view unit) {
               return text.find(unit) != std::string_view::npos;
           });
}

/// A name or a number, a measure, what was typed, or what stands in the catalog itself: no words of a
/// sentence.
bool isPlain(const std::string& part) {
    const bool typed = part.size() > 1 && part.front() == '"' && part.back() == '"';
    return typed || isMeasure(part) || catalogOf(languageSpoken()).contains(part) ||
           std::ranges::none_of(part, [](char c) { return c >= 'a' && c <= 'z'; });
}

std::optional<std::string> heardAgain(const std::string& english);

std::string heardPart(const std::string& part) {
    const Catalog& catalog = catalogOf(languageSpoken());
    if (const auto whole = catalog.find(part); whole != catalog.end())
        return whole->second;
    if (auto said = heardAgain(part))
        return std::move(*said);
    return isMeasure(part) ? withDecimalMark(part) : part;
}

std::optional<std::string> heardAgain(const std::string& english) {
    for (const std::string_view pattern : knownAgain(languageSpoken())) {
        auto filled = filledOf(english, pattern);
        if (!filled || (fixedLength(pattern) < enoughFixed && !std::ranges::all_of(*filled, isPlain)))
            continue;
        for (std::string& part : *filled)
            part = heardPart(part);
        return detail::sayFilled(pattern, *filled);
    }
    return std::nullopt;
}

} // namespace

std::optional<std::vector<std::string>> filledOf(std::string_view text, std::string_view pattern) {
    std::vector<std::string> filled;
    std::size_t place = pattern.find(placeMark);
    if (place == std::string_view::npos)
        return text == pattern ? std::optional(filled) : std::nullopt;
    if (!text.starts_with(pattern.substr(0, place)))
        return std::nullopt;
    text.remove_prefix(place);
    while (place != std::string_view::npos) {
        pattern.remove_prefix(place + placeMark.size());
        place = pattern.find(placeMark);
        const std::string_view fixed = pattern.substr(0, place);
        std::size_t at = std::string_view::npos;
        if (place != std::string_view::npos)
            at = text.find(fixed, 1);
        else if (text.size() > fixed.size() && text.ends_with(fixed))
            at = text.size() - fixed.size();
        if (text.empty() || at == std::string_view::npos)
            return std::nullopt;
        filled.emplace_back(text.substr(0, at));
        text.remove_prefix(at + fixed.size());
    }
    return filled;
}

std::string heard(const std::string& english) {
    if (auto said = heardAgain(english))
        return std::move(*said);
    return isMeasure(english) && !english.ends_with('.') ? withDecimalMark(english) : english;
}

} // namespace sheerlay::core
