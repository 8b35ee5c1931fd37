#include "core/words/language.hpp"

#include <array>

namespace sheerlay::core {

namespace {

constexpr std::array<LanguageName, 2> names{
    {{Language::English, "en", "English"}, {Language::German, "de", "Deutsch"}}};

thread_local Language inForce = Language::English;

} // namespace

std::span<const LanguageName> allLanguages() noexcept {
    return names;
}

const LanguageName& nameOf(Language language) noexcept {
    for (const LanguageName& name : names)
        if (name.language == language)
            return name;
    return names.front();
}

Speaking::Speaking(Language language) noexcept : m_before(inForce) {
    inForce = language;
}

Speaking::~Speaking() {
    inForce = m_before;
}

Language languageSpoken() noexcept {
    return inForce;
}

} // namespace sheerlay::core
