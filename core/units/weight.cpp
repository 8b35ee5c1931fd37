#include "core/units/weight.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <system_error>

namespace sheerlay::core {

namespace {

struct Figure {
    double value = 0.0;
    std::string unit;
};

/// A comma between digits is a decimal mark, unless it may part thousands.
std::string withPoints(std::string text) {
    const auto digit = [&text](std::size_t at) {
        return at < text.size() && text[at] >= '0' && text[at] <= '9';
    };
    for (std::size_t comma = text.find(','); comma != std::string::npos; comma = text.find(',', comma + 1)) {
        const bool thousands = digit(comma + 1) && digit(comma + 2) && digit(comma + 3) && !digit(comma + 4);
        if (comma > 0 && digit(comma - 1) && digit(comma + 1) && !thousands)
            text[comma] = '.';
    }
    return text;
}

/// The next number and the word behind it; nothing where the text does not go so.
std::optional<Figure> nextFigure(std::string_view& text) {
    const auto skip = [&text] {
        while (text.starts_with(' '))
            text.remove_prefix(1);
    };
    skip();
    Figure figure;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), figure.value);
    if (problem != std::errc{} || end == text.data() || !std::isfinite(figure.value))
        return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    skip();
    while (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        figure.unit += text.front();
        text.remove_prefix(1);
    }
    skip();
    return figure;
}

std::optional<double> kilogramsIn(const std::string& unit, Units plain) {
    if (unit.empty())
        return plain == Units::Inches ? kgPerPound : 1.0;
    if (unit == "kg")
        return 1.0;
    if (unit == "g")
        return 0.001;
    if (unit == "lb" || unit == "lbs")
        return kgPerPound;
    if (unit == "oz")
        return kgPerOunce;
    return std::nullopt;
}

} // namespace

Expected<double, LengthError> parseWeight(std::string_view text, Units plain) {
    const LengthError wrong{inEnglish(sayable("the text {}"), quoted(text)),
                            sayable("a weight such as \"170 lb\", \"77 kg\" or \"12 oz\"")};
    const std::string signs = withPoints(plainSigns(text));
    std::string_view rest = signs;
    const auto first = nextFigure(rest);
    const auto unit = first ? kilogramsIn(first->unit, plain) : std::nullopt;
    if (!unit || first->value < 0.0)
        return unexpected(wrong);
    double kilograms = first->value * *unit;
    if (!rest.empty()) {
        const auto ounces = nextFigure(rest);
        const bool pounds = first->unit == "lb" || first->unit == "lbs";
        if (!ounces || !rest.empty() || !pounds || ounces->unit != "oz" || ounces->value < 0.0 ||
            ounces->value >= 16.0)
            return unexpected(wrong);
        kilograms += ounces->value * kgPerOunce;
    }
    return kilograms;
}

Expected<double, LengthError> parseClothWeight(std::string_view text) {
    const std::string signs = withPoints(plainSigns(text));
    std::string_view rest = signs;
    const auto figure = nextFigure(rest);
    if (figure && rest.empty() && figure->value > 0.0) {
        if (figure->unit == "oz")
            return figure->value * gsmPerOunce;
        if (figure->unit == "g")
            return figure->value;
    }
    return unexpected(
        LengthError{inEnglish(sayable("the text {}"), quoted(text)),
                    sayable("\"6 oz\" (to the square yard) or \"200 g\" (to the square metre)")});
}

} // namespace sheerlay::core
