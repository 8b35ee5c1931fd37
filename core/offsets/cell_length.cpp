#include "core/offsets/cell_length.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace sheerlay::core {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

std::size_t digitsAt(std::string_view text, std::size_t from) {
    std::size_t n = 0;
    while (from + n < text.size() && isDigit(text[from + n]))
        ++n;
    return n;
}

/// The text with all parts of feet-inches-eighths held together by dashes; none where it is something else.
std::optional<std::string> dashed(std::string_view plain) {
    std::string result;
    if (plain.starts_with('-')) {
        result = "-";
        plain.remove_prefix(1);
    }
    char between = '\0';
    std::size_t at = 0;
    constexpr std::array<std::size_t, 3> longest{3, 2, 1};
    for (std::size_t part = 0; part < longest.size(); ++part) {
        const std::size_t n = digitsAt(plain, at);
        if (n == 0 || n > longest[part])
            return std::nullopt;
        result.append(plain.substr(at, n));
        at += n;
        if (part + 1 == longest.size())
            break;
        if (at >= plain.size() || std::string_view("- .:").find(plain[at]) == std::string_view::npos ||
            (between != '\0' && plain[at] != between))
            return std::nullopt;
        between = plain[at++];
        result += '-';
    }
    if (at < plain.size() && (plain[at] == '+' || plain[at] == '-'))
        result += plain[at++];
    return at == plain.size() ? std::optional(result) : std::nullopt;
}

/// "3-4": the place of the dash.
std::optional<std::size_t> twoPartDash(std::string_view plain) {
    const std::size_t first = digitsAt(plain, 0);
    if (first == 0 || first >= plain.size() || plain[first] != '-')
        return std::nullopt;
    const std::size_t second = digitsAt(plain, first + 1);
    std::size_t end = first + 1 + second;
    if (end < plain.size() && (plain[end] == '+' || plain[end] == '-'))
        ++end;
    return second > 0 && end == plain.size() ? std::optional(first) : std::nullopt;
}

/// With a decimal point wherever the table has its decimal mark, and no marks between thousands.
std::string withPoint(std::string text, DecimalMark decimal) {
    if (decimal == DecimalMark::Comma) {
        std::ranges::replace(text, ',', '.');
        return text;
    }
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool thousands = text[i] == ',' && i > 0 && isDigit(text[i - 1]) && digitsAt(text, i + 1) == 3;
        if (!thousands)
            result += text[i];
    }
    return result;
}

std::string_view unitWord(PlainUnit unit) {
    constexpr std::array<std::string_view, 5> words{"", " cm", " m", "", " ft"};
    return words[static_cast<std::size_t>(unit)];
}

} // namespace

bool isNotGiven(std::string_view cell) {
    const std::string plain = plainSigns(cell);
    if (plain == "n/a" || plain == "na" || plain == "none" || plain == "nil")
        return true;
    std::string_view rest = plain;
    constexpr std::array<std::string_view, 6> signs{".", "-", "_", " ", "\u2026", "\u00b7"};
    while (!rest.empty()) {
        const auto sign =
            std::ranges::find_if(signs, [rest](std::string_view s) { return rest.starts_with(s); });
        if (sign == signs.end())
            return false;
        rest.remove_prefix(sign->size());
    }
    return true;
}

Units projectUnits(const Notation& notation) {
    return notation.plain == PlainUnit::Inches || notation.plain == PlainUnit::Feet ? Units::Inches
                                                                                    : Units::Millimetres;
}

bool isFeetInchesEighths(std::string_view cell) {
    return dashed(plainSigns(cell)).has_value();
}

bool isPlainNumber(std::string_view cell) {
    const std::string plain = plainSigns(cell);
    std::string_view rest = plain;
    if (rest.starts_with('-') || rest.starts_with('+'))
        rest.remove_prefix(1);
    int marks = 0;
    bool digits = false;
    for (const char c : rest) {
        digits = digits || isDigit(c);
        marks += c == '.' || c == ',' ? 1 : 0;
        if (!isDigit(c) && c != '.' && c != ',')
            return false;
    }
    return digits && marks <= 1;
}

Expected<CellLength, LengthError> readCell(std::string_view cell, const Notation& notation) {
    CellLength read;
    std::string text(cell);
    while (!text.empty() && (text.back() == '?' || text.back() == '*' || text.back() == ' ')) {
        read.markedDoubtful = read.markedDoubtful || text.back() != ' ';
        text.pop_back();
    }
    text = plainSigns(text);
    if (const auto parts = dashed(text)) {
        text = *parts;
    } else if (const auto dash = twoPartDash(text)) {
        if (notation.twoPart == TwoPart::Unsaid)
            return unexpected(LengthError{
                inEnglish(sayable("{} has two parts, which may be feet and inches or inches and eighths"),
                          quoted(cell)),
                sayable("two-part = inches-eighths, or two-part = feet-inches")});
        if (notation.twoPart == TwoPart::InchesEighths)
            text.insert(0, "0-");
        else
            text += "-0";
    } else if (isPlainNumber(text)) {
        text = withPoint(std::move(text), notation.decimal);
        if (notation.feetInchesEighths && text.find_first_not_of("0") != std::string::npos)
            return unexpected(LengthError{
                inEnglish(sayable("{} is one number in a table of feet-inches-eighths"), quoted(cell)),
                sayable(
                    "all three parts, such as \"0-7-0\" for seven inches or \"0-0-7\" for seven eighths")});
        text += unitWord(notation.plain);
    } else if (notation.decimal == DecimalMark::Comma) {
        text = withPoint(std::move(text), notation.decimal);
    }
    const auto length = parseLength(text, projectUnits(notation));
    if (!length)
        return unexpected(length.error());
    read.millimetres = length->millimetres;
    read.resolution = length->resolution;
    read.printed = text;
    return read;
}

Expected<CellLength, LengthError> readSaid(std::string_view length, Notation notation) {
    notation.feetInchesEighths = false;
    return readCell(length, notation);
}

std::optional<double> readCount(std::string_view number) {
    Notation plain;
    plain.plain = PlainUnit::Inches; // fractions are welcome: station 1/2
    const auto read = readCell(number, plain);
    if (!read)
        return std::nullopt;
    constexpr double parts = 1024; // no fraction is finer; takes out what the inch brought in
    return std::round(read->millimetres / mmPerInch * parts) / parts;
}

} // namespace sheerlay::core
