#include "core/offsets/line_label.hpp"
#include "core/units/length_text.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace sheerlay::core {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isLetter(char c) {
    return c >= 'a' && c <= 'z';
}

std::optional<PlainUnit> unitOf(std::string_view word) {
    constexpr std::array<std::pair<std::string_view, PlainUnit>, 16> units{{
        {"mm", PlainUnit::Millimetres},
        {"millimetres", PlainUnit::Millimetres},
        {"millimeters", PlainUnit::Millimetres},
        {"cm", PlainUnit::Centimetres},
        {"centimetres", PlainUnit::Centimetres},
        {"centimeters", PlainUnit::Centimetres},
        {"m", PlainUnit::Metres},
        {"metres", PlainUnit::Metres},
        {"meters", PlainUnit::Metres},
        {"in", PlainUnit::Inches},
        {"ins", PlainUnit::Inches},
        {"inch", PlainUnit::Inches},
        {"inches", PlainUnit::Inches},
        {"ft", PlainUnit::Feet},
        {"foot", PlainUnit::Feet},
        {"feet", PlainUnit::Feet},
    }};
    const auto* found = std::ranges::find(units, word, [](const auto& unit) { return unit.first; });
    return found == units.end() ? std::nullopt : std::optional(found->second);
}

/// Walks over a label.
class LabelReader {
public:
    explicit LabelReader(std::string text) : m_text(std::move(text)) {}

    LabelWords read() {
        while (m_at < m_text.size()) {
            const char c = m_text[m_at];
            if (isLetter(c))
                word();
            else if (isDigit(c) || (c == '.' && isDigit(ahead(1))))
                number();
            else
                ++m_at;
        }
        const auto& words = m_found.words;
        // "feet, inches and eighths": the notation of the builder, whose plain numbers are inches.
        if (std::ranges::find(words, "eighths") != words.end())
            m_found.unit = PlainUnit::Inches;
        return std::move(m_found);
    }

private:
    [[nodiscard]] char ahead(std::size_t n) const {
        return m_at + n < m_text.size() ? m_text[m_at + n] : '\0';
    }
    std::string letters() {
        std::string word;
        // "w.l." is one word
        while (isLetter(ahead(0)) || (ahead(0) == '.' && isLetter(ahead(1)) && word.size() < 3)) {
            if (ahead(0) != '.')
                word += ahead(0);
            ++m_at;
        }
        return word;
    }
    void word() {
        const char before = m_at > 0 ? m_text[m_at - 1] : ' ';
        std::string word = letters();
        const auto unit = unitOf(word);
        // "in" and "m" are units in "(in)" and "x_in" only; "in" is a word of its own besides.
        const bool apart = word.size() > 2 || word == "mm" || word == "cm" || word == "ft" || before == '(' ||
                           before == '_' || before == '[';
        if (unit && apart)
            m_found.unit = unit;
        m_found.words.push_back(std::move(word));
    }
    void number() {
        std::size_t end = m_at;
        const auto at = [this](std::size_t i) { return i < m_text.size() ? m_text[i] : '\0'; };
        constexpr std::string_view inner = "./-'\",+";
        while (isDigit(at(end)) || (at(end) != '\0' && inner.find(at(end)) != std::string_view::npos) ||
               (at(end) == ' ' && isDigit(at(end + 1)) && fractionAt(end + 1)))
            ++end;
        std::string length = m_text.substr(m_at, end - m_at);
        const bool minus = m_at > 0 && m_text[m_at - 1] == '-' && (m_at == 1 || !isLetter(m_text[m_at - 2]));
        m_at = end;
        while (length.ends_with('.') || length.ends_with(',') ||
               (length.ends_with('-') && std::ranges::count(length, '-') < 3))
            length.pop_back();
        if (minus)
            length.insert(0, 1, '-');
        const std::size_t behind = m_at;
        while (ahead(0) == ' ')
            ++m_at;
        const std::size_t start = m_at;
        const std::string word = letters();
        if (word == "deg" || word == "degrees" || word == "degree") {
            std::ranges::replace(length, ',', '.');
            m_found.degrees = std::strtod(length.c_str(), nullptr);
            return;
        }
        if (const auto unit = unitOf(word)) {
            length += " " + word;
            m_found.lengthUnit = unit;
            if (ahead(0) == '.')
                ++m_at;
        } else {
            m_at = word.empty() ? behind : start;
        }
        if (!length.empty())
            m_found.lengths.push_back(length);
    }
    /// "15 3/4", "3' 2": a fraction or inches belong to the number before the blank.
    [[nodiscard]] bool fractionAt(std::size_t i) const {
        if (i >= 2 && m_text[i - 2] == '\'')
            return true;
        while (i < m_text.size() && isDigit(m_text[i]))
            ++i;
        return i < m_text.size() && m_text[i] == '/';
    }

    std::string m_text;
    std::size_t m_at = 0;
    LabelWords m_found;
};

} // namespace

bool LabelWords::has(std::initializer_list<std::string_view> any) const {
    return std::ranges::any_of(
        any, [this](std::string_view word) { return std::ranges::find(words, word) != words.end(); });
}

LabelWords labelWords(std::string_view label) {
    constexpr std::size_t longest = 200; // beyond it is prose
    std::string text = plainSigns(label.substr(0, longest));
    constexpr std::string_view degree = "\u00b0";
    for (auto at = text.find(degree); at != std::string::npos; at = text.find(degree))
        text.replace(at, degree.size(), " deg ");
    return LabelReader(std::move(text)).read();
}

} // namespace sheerlay::core
