#include "core/tables/offset_lines.hpp"

#include "core/units/length_text.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double same = 1e-6;      // mm
constexpr std::size_t most = 2000; // lines of a family: more is a slip of the step

bool isMultiple(double value, double of) {
    return std::abs(value / of - std::round(value / of)) < 1e-6;
}

} // namespace

std::vector<double> Levels::between(double low, double high) const {
    std::vector<double> list;
    if (every <= 0.0) {
        for (const double level : at)
            if (level >= low - same && level <= high + same)
                list.push_back(level);
        return list;
    }
    for (double k = std::floor(low / every + same) + 1; k * every < high - same && list.size() < most; ++k)
        list.push_back(k * every);
    return list;
}

Expected<Levels, LengthError> parseLevels(std::string_view text, Units plain) {
    const std::string would = "\"every 6 in\", or lengths with commas between: \"3 in, 6 in, 1-0-0\"";
    const std::string given = plainSigns(text);
    Levels levels;
    if (given.starts_with("every ")) {
        const auto step = parseLength(given.substr(6), plain);
        if (!step)
            return unexpected(LengthError{step.error().found, step.error().would});
        if (step->millimetres < 1.0)
            return unexpected(LengthError{quoted(text), "a step of 1 mm or more"});
        levels.every = step->millimetres;
        return levels;
    }
    for (std::size_t from = 0; from <= given.size();) {
        const std::size_t comma = std::min(given.find(',', from), given.size());
        const std::string part = given.substr(from, comma - from);
        if (part.find_first_not_of(' ') == std::string::npos)
            return unexpected(LengthError{"nothing between two commas in " + quoted(text), would});
        const auto length = parseLength(part, plain);
        if (!length)
            return unexpected(LengthError{length.error().found, length.error().would});
        levels.at.push_back(length->millimetres);
        from = comma + 1;
    }
    std::sort(levels.at.begin(), levels.at.end());
    levels.at.erase(std::unique(levels.at.begin(),
                                levels.at.end(),
                                [](double a, double b) { return std::abs(a - b) < same; }),
                    levels.at.end());
    return levels;
}

std::string roundedLength(double millimetres, double roundedTo, Units units) {
    const bool inches = units == Units::Inches;
    if (isMultiple(roundedTo, inches ? mmPerInch / 16 : 0.1))
        millimetres = roundedTo * std::round(millimetres / roundedTo);
    const double value = inches ? millimetres / mmPerInch : millimetres;
    const double unit = inches ? roundedTo / mmPerInch : roundedTo;
    int decimals = 0;
    if (isMultiple(roundedTo, inches ? mmPerInch / 16 : 0.1))
        while (decimals < 4 && !isMultiple(unit * std::pow(10.0, decimals), 1.0))
            ++decimals;
    else
        decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(unit) - 1e-9)), 0, 4);
    return numberText(value, decimals);
}

} // namespace sheerlay::core
