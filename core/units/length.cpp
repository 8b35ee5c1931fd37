#include "core/units/length.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numeric>
#include <optional>
#include <variant>
#include <vector>

namespace sheerlay::core {

namespace {

using Result = Expected<ReadLength, LengthError>;

constexpr std::int64_t maxDigits =
    12; // keeps every product below 2^53, so that one division is the only rounding
constexpr std::string_view examples = sayable("a length such as 1-3-4+, 15 3/4 in, 3' 2 1/2\" or 400 mm");

/// num/den of some unit; a whole number is neither fraction nor decimal.
struct Number {
    std::int64_t num = 0;
    std::int64_t den = 1;
    bool fraction = false;
    bool decimal = false;

    [[nodiscard]] bool whole() const noexcept { return !fraction && !decimal; }
};

/// Length of a unit in mm as a fraction, and whether a whole number of it tells how finely one measured.
struct Unit {
    std::int64_t num = 1;
    std::int64_t den = 1;
    bool wholeTells = false;
};

constexpr Unit millimetre{1, 1, true};
constexpr Unit centimetre{10, 1, false};
constexpr Unit metre{1000, 1, false};
constexpr Unit inch{254, 10, false};
constexpr Unit foot{3048, 10, false};

constexpr bool isDigit(char c) noexcept {
    return c >= '0' && c <= '9';
}

/// Walks over the text, sign by sign.
class Cursor {
public:
    explicit Cursor(std::string_view text) : m_rest(text) {}

    void skipSpaces() {
        while (m_rest.starts_with(' '))
            m_rest.remove_prefix(1);
    }
    [[nodiscard]] bool atEnd() const noexcept { return m_rest.empty(); }
    [[nodiscard]] char peek() const noexcept { return m_rest.empty() ? '\0' : m_rest.front(); }
    [[nodiscard]] std::string_view rest() const noexcept { return m_rest; }
    bool accept(char c) {
        if (peek() != c)
            return false;
        m_rest.remove_prefix(1);
        return true;
    }
    std::string_view digits() { return take(isDigit); }
    std::string_view letters() {
        return take([](char c) { return c >= 'a' && c <= 'z'; });
    }

private:
    template <class Test> std::string_view take(Test test) {
        std::size_t n = 0;
        while (n < m_rest.size() && test(m_rest[n]))
            ++n;
        const std::string_view taken = m_rest.substr(0, n);
        m_rest.remove_prefix(n);
        return taken;
    }
    std::string_view m_rest;
};

std::optional<std::int64_t> toInteger(std::string_view digits) {
    if (digits.empty() || std::ssize(digits) > maxDigits)
        return std::nullopt;
    std::int64_t value = 0;
    for (const char c : digits)
        value = 10 * value + (c - '0');
    return value;
}

/// @param what  with a place for the text
LengthError refuse(std::string_view text, std::string_view what, std::string_view would) {
    return {inEnglish(what, quoted(text)), std::string(would)};
}

/// The parts of "1-3-4+" and what follows the last digit.
struct Dashed {
    std::vector<std::string_view> parts;
    std::string_view tail;
};

/// Set when the text begins with digits, dash, digits, and no fraction follows (15-3/4 is a mixed number).
std::optional<Dashed> splitDashes(std::string_view body) {
    Dashed found;
    Cursor cursor(body);
    for (;;) {
        const std::string_view digits = cursor.digits();
        if (digits.empty())
            return std::nullopt;
        found.parts.push_back(digits);
        const std::string_view rest = cursor.rest();
        if (rest.size() >= 2 && rest[0] == '-' && isDigit(rest[1])) {
            cursor.accept('-');
            continue;
        }
        found.tail = rest;
        break;
    }
    if (found.parts.size() < 2 || found.tail.starts_with('/'))
        return std::nullopt;
    return found;
}

std::variant<std::int64_t, LengthError> sixteenthsOf(const Dashed& dashed, std::string_view text) {
    constexpr std::string_view form =
        sayable("feet-inches-eighths, such as \"1-3-4\", with a + for a sixteenth more");
    if (dashed.parts.size() == 2)
        return refuse(text,
                      sayable("{} has two parts, which may be feet and inches or inches and eighths"),
                      sayable("all three parts, feet-inches-eighths, such as \"0-4-3\", or \"4 3/8 in\""));
    if (dashed.parts.size() > 3)
        return refuse(text, sayable("{} has more than three parts"), form);
    if (!dashed.tail.empty() && dashed.tail != "+" && dashed.tail != "-")
        return refuse(text, sayable("{} goes on after the eighths"), form);
    const auto feet = toInteger(dashed.parts[0]);
    const auto inches = toInteger(dashed.parts[1]);
    const auto eighths = toInteger(dashed.parts[2]);
    if (!feet || !inches || !eighths)
        return refuse(text, sayable("{} has more digits than a length has"), form);
    if (*inches > 11)
        return refuse(text,
                      sayable("{} has more than 11 inches"),
                      sayable("inches from 0 to 11 between the feet and the eighths"));
    if (*eighths > 8)
        return refuse(
            text, sayable("{} has more than 8 eighths"), sayable("eighths from 0 to 7 as the last part"));
    const std::int64_t mark = dashed.tail == "+" ? 1 : dashed.tail == "-" ? -1 : 0;
    return 192 * *feet + 16 * *inches + 2 * *eighths + mark;
}

/// The digits after a decimal point or comma, joined to the whole part.
std::variant<Number, LengthError>
decimals(std::string_view whole, std::string_view after, bool comma, std::string_view text) {
    // "1,250" may be one and a quarter or twelve hundred and fifty: only a group of three after 1 to 3 digits
    // can be.
    const bool maybeThousands = comma && after.size() == 3 && whole.size() <= 3 && !whole.starts_with('0');
    if (after.empty() || maybeThousands)
        return refuse(text,
                      comma ? sayable("{} has a comma that may mean two things")
                            : sayable("{} ends in a decimal point"),
                      sayable("a decimal point, such as 12.5, and no mark between thousands"));
    const auto value = toInteger(std::string(whole) + std::string(after));
    if (!value)
        return refuse(text, sayable("{} has more digits than a length has"), examples);
    Number number{*value, 1, false, true};
    for (std::size_t i = 0; i < after.size(); ++i)
        number.den *= 10;
    return number;
}

/// "15", "15.75", "15 3/4", "15-3/4", "3/4".
std::variant<Number, LengthError> readNumber(Cursor& cursor, std::string_view text) {
    const std::string_view first = cursor.digits();
    if (cursor.peek() == '.' || (cursor.peek() == ',' && !first.empty())) {
        const bool comma = cursor.accept(',');
        if (!comma)
            cursor.accept('.');
        const std::string_view after = cursor.digits();
        if (cursor.peek() == '.' || cursor.peek() == ',')
            return refuse(text,
                          sayable("{} has more than one decimal mark"),
                          sayable("one decimal point, such as 1250.5"));
        return decimals(first, after, comma, text);
    }
    const auto whole = toInteger(first);
    if (!whole)
        return refuse(text,
                      first.empty() ? sayable("{} is not a length")
                                    : sayable("{} has more digits than a length has"),
                      examples);

    std::optional<std::int64_t> numerator;
    if (cursor.peek() == '/') {
        numerator = whole;
    } else {
        Cursor ahead =
            cursor; // "15 3/4": the digits after the space belong to the number only if a stroke follows
        if (!ahead.accept('-'))
            ahead.skipSpaces();
        const std::string_view digits = ahead.digits();
        if (ahead.peek() != '/')
            return Number{*whole, 1, false, false};
        numerator = toInteger(digits);
        cursor = ahead;
    }
    const bool mixed = numerator != whole || cursor.rest().data() != first.data() + first.size();
    cursor.accept('/');
    const auto denominator = toInteger(cursor.digits());
    if (!numerator || !denominator || *denominator == 0 || *denominator > 1024 || *numerator > 1'000'000 ||
        *whole > 1'000'000)
        return refuse(text,
                      sayable("{} has a fraction that can't be read"),
                      sayable("a fraction such as 3/8, 5/16 or 1/32"));
    if (!mixed)
        return Number{*numerator, *denominator, true, false};
    if (*numerator >= *denominator)
        return refuse(text,
                      sayable("{} has a fraction of one or more after the whole number"),
                      sayable("a fraction below one, such as 15 3/4"));
    return Number{*whole * *denominator + *numerator, *denominator, true, false};
}

/// The unit that follows a number; none at the end of the text, and where the next thing is a digit.
std::variant<std::optional<Unit>, LengthError> readUnit(Cursor& cursor, std::string_view text) {
    cursor.skipSpaces();
    if (cursor.accept('\''))
        return foot;
    if (cursor.accept('"'))
        return inch;
    const std::string_view word = cursor.letters();
    if (word.empty()) {
        if (cursor.atEnd() || isDigit(cursor.peek()) || cursor.peek() == '-')
            return std::optional<Unit>{};
        return refuse(text, sayable("{} holds a sign that has no place in a length"), examples);
    }
    cursor.accept('.'); // "in."
    static constexpr std::array<std::pair<std::string_view, Unit>, 9> words{{{"mm", millimetre},
                                                                             {"cm", centimetre},
                                                                             {"m", metre},
                                                                             {"in", inch},
                                                                             {"inch", inch},
                                                                             {"inches", inch},
                                                                             {"ft", foot},
                                                                             {"foot", foot},
                                                                             {"feet", foot}}};
    for (const auto& [name, unit] : words)
        if (word == name)
            return unit;
    return refuse(
        text, sayable("{} has a unit that is not known"), sayable("mm, cm, m, in or ft after the number"));
}

double finest(const Number& number, const Unit& unit) {
    if (number.whole() && !unit.wholeTells)
        return 0.0;
    return static_cast<double>(unit.num) / static_cast<double>(number.den * unit.den);
}

double inMillimetres(const Number& number, const Unit& unit) {
    return static_cast<double>(number.num * unit.num) / static_cast<double>(number.den * unit.den);
}

/// What stands behind the feet: "2 1/2\"", "2 in", or "2" alone.
Result readInchesAfter(const Number& feet, Cursor cursor, std::string_view text) {
    const auto read = readNumber(cursor, text);
    if (const auto* error = std::get_if<LengthError>(&read))
        return unexpected(*error);
    const Number inches = std::get<Number>(read);
    const auto unitRead = readUnit(cursor, text);
    if (const auto* error = std::get_if<LengthError>(&unitRead))
        return unexpected(*error);
    const Unit unit = std::get<std::optional<Unit>>(unitRead).value_or(inch);
    cursor.skipSpaces();
    if (!cursor.atEnd() || unit.num != inch.num)
        return unexpected(refuse(text, sayable("{} goes on after the inches"), examples));
    if (!feet.whole())
        return unexpected(refuse(text,
                                 sayable("{} has a part of a foot and inches too"),
                                 sayable("whole feet before inches, such as 3' 2 1/2\"")));
    if (inches.num >= 12 * inches.den)
        return unexpected(refuse(text,
                                 sayable("{} has 12 inches or more beside the feet"),
                                 sayable("inches below 12, such as 4' 2\"")));
    if (feet.num > 1'000'000)
        return unexpected(refuse(text, sayable("{} has more digits than a length has"), examples));
    const Number sum{feet.num * 12 * inches.den + inches.num, inches.den, inches.fraction, inches.decimal};
    return ReadLength{inMillimetres(sum, inch), finest(sum, inch)};
}

Result readUnsigned(std::string_view body, std::string_view text, Units plain) {
    if (const auto dashed = splitDashes(body)) {
        const auto read = sixteenthsOf(*dashed, text);
        if (const auto* error = std::get_if<LengthError>(&read))
            return unexpected(*error);
        return ReadLength{fromSixteenths(std::get<std::int64_t>(read)),
                          fromSixteenths(dashed->tail.empty() ? 2 : 1)};
    }
    Cursor cursor(body);
    const auto read = readNumber(cursor, text);
    if (const auto* error = std::get_if<LengthError>(&read))
        return unexpected(*error);
    const Number number = std::get<Number>(read);
    const auto unitRead = readUnit(cursor, text);
    if (const auto* error = std::get_if<LengthError>(&unitRead))
        return unexpected(*error);
    const auto unit = std::get<std::optional<Unit>>(unitRead);
    cursor.skipSpaces();
    if (unit && unit->num == foot.num) {
        Cursor ahead = cursor;
        ahead.accept('-'); // 3'-2 1/2"
        if (isDigit(ahead.peek()))
            return readInchesAfter(number, ahead, text);
    }
    if (!cursor.atEnd())
        return unexpected(refuse(text, sayable("{} goes on after the length"), examples));
    if (!unit && number.fraction && plain == Units::Millimetres)
        return unexpected(
            refuse(text,
                   sayable("{} is a fraction without a unit, and plain numbers are millimetres here"),
                   sayable("the unit behind it, such as \"3/8 in\"")));
    const Unit used = unit.value_or(plain == Units::Inches ? inch : millimetre);
    return ReadLength{inMillimetres(number, used), finest(number, used)};
}

std::string inchesText(std::int64_t count, std::int64_t denominator) {
    const std::int64_t whole = count / denominator;
    const std::int64_t part = count % denominator;
    if (part == 0)
        return std::to_string(whole) + "\"";
    const std::int64_t common = std::gcd(part, denominator);
    const std::string fraction =
        std::to_string(part / common) + "/" + std::to_string(denominator / common) + "\"";
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

bool printable(double millimetres) noexcept {
    return std::isfinite(millimetres) && std::abs(millimetres) < 1e12;
}

/// Nearest whole number of 1/`parts` in, halves away from zero; a half that lost its last bit is still a
/// half.
std::int64_t nearestParts(double millimetres, std::int64_t parts) noexcept {
    const double count = millimetres * 10.0 * static_cast<double>(parts) / 254.0;
    return std::llround(count + std::copysign(1e-9, count));
}

} // namespace

std::int64_t toSixteenths(double millimetres) noexcept {
    return printable(millimetres) ? nearestParts(millimetres, 16) : 0;
}

Expected<ReadLength, LengthError> parseLength(std::string_view text, Units plain) {
    constexpr std::size_t longest = 80;
    if (text.size() > longest)
        return unexpected(refuse(text, sayable("{} is too long for a length"), examples));
    const std::string tidy = plainSigns(text);
    if (tidy.empty())
        return unexpected(LengthError{sayable("nothing"), std::string(examples)});
    if (tidy == "-")
        return unexpected(LengthError{sayable("a dash, which in a table means that there is no value"),
                                      sayable("leaving this point out of the station")});
    std::string_view body = tidy;
    const bool negative = body.starts_with('-');
    if (negative || body.starts_with('+')) {
        body.remove_prefix(1);
        body.remove_prefix(std::min(body.find_first_not_of(' '), body.size()));
    }
    auto read = readUnsigned(body, text, plain);
    if (read && negative && read->millimetres != 0.0)
        read.value().millimetres = -read->millimetres;
    return read;
}

std::string toFeetInchesEighths(double millimetres) {
    if (!printable(millimetres))
        return "?";
    const std::int64_t signedCount = toSixteenths(millimetres);
    const std::int64_t count = std::abs(signedCount);
    std::string text = signedCount < 0 ? "-" : "";
    text += std::to_string(count / 192) + "-" + std::to_string(count % 192 / 16) + "-" +
            std::to_string(count % 16 / 2);
    if (count % 2 == 1)
        text += "+";
    return text;
}

std::string formatLength(double millimetres, Units units, int denominator, int decimals) {
    if (!printable(millimetres))
        return "?";
    if (units == Units::Millimetres) {
        std::array<char, 64> buffer{};
        std::snprintf(buffer.data(), buffer.size(), "%.*f", std::clamp(decimals, 0, 9), millimetres);
        std::string text(buffer.data());
        if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos)
            text.erase(0, 1); // no "-0 mm"
        return withDecimalMark(std::move(text)) + " mm";
    }
    const std::int64_t parts = std::clamp(denominator, 1, 1024);
    const std::int64_t signedCount = nearestParts(millimetres, parts);
    const std::int64_t count = std::abs(signedCount);
    const std::string sign = signedCount < 0 ? "-" : "";
    const std::int64_t feetFrom = 24 * parts;
    if (count < feetFrom)
        return sign + inchesText(count, parts);
    return sign + std::to_string(count / (12 * parts)) + "' " + inchesText(count % (12 * parts), parts);
}

} // namespace sheerlay::core
