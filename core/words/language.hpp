#pragma once

#include <span>
#include <string_view>

namespace sheerlay::core {

/// Language of the paper.
enum class Language { English, German };

/// A language as a project names it.
struct LanguageName {
    Language language = Language::English;
    std::string_view code; ///< as in ISO 639: "en", "de"
    std::string_view name; ///< in itself: "English", "Deutsch"
};

/// All there are, English first.
[[nodiscard]] std::span<const LanguageName> allLanguages() noexcept;

/// Its entry in allLanguages().
[[nodiscard]] const LanguageName& nameOf(Language language) noexcept;

/// Puts a language in force for what this thread says, until it goes out of scope; then the one before is
/// back. English where none is.
///
/// Sheets say hundreds of texts, deep down in helpers that know nothing of a project, so the language is not
/// handed through every signature. It is set at the entrances alone, from the project that they are given:
/// seen from outside each stays a pure function of the project, on any thread.
class Speaking {
public:
    explicit Speaking(Language language) noexcept;
    ~Speaking();
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;

private:
    Language m_before;
};

/// The language in force on this thread.
[[nodiscard]] Language languageSpoken() noexcept;

} // namespace sheerlay::core
