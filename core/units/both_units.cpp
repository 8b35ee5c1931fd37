#include "core/units/both_units.hpp"

#include "core/words/say.hpp"

#include <cstdio>
#include <string_view>

namespace sheerlay::core {
namespace {

bool isDigit(char c) noexcept {
    return c >= '0' && c <= '9';
}

/// Where "16 mm" begins that ends this text; npos where it ends otherwise.
std::size_t metricAtEndOf(std::string_view text) {
    for (const std::string_view unit : {" mm", " m", " kg"}) {
        if (!text.ends_with(unit))
            continue;
        const std::size_t figureEnds = text.size() - unit.size();
        std::size_t begins = figureEnds;
        while (begins > 0 &&
               (isDigit(text[begins - 1]) || text[begins - 1] == '.' || text[begins - 1] == ','))
            --begins;
        if (begins < figureEnds && isDigit(text[begins]))
            return begins > 0 && text[begins - 1] == '-' ? begins - 1 : begins;
    }
    return std::string_view::npos;
}

/// "5/8\"", "4' 3 1/2\"", "7.5 ft" or "51 lb".
bool isImperial(std::string_view text) {
    if (text.ends_with(" ft") || text.ends_with(" lb"))
        text.remove_suffix(3);
    else if (!text.ends_with('"') && !text.ends_with('\''))
        return false;
    return text.find_first_of("0123456789") != std::string_view::npos &&
           text.find_first_not_of("0123456789 ./,-'\"") == std::string_view::npos;
}

} // namespace

std::string bothUnits(double millimetres) {
    return formatLength(millimetres, Units::Millimetres) + " (" + formatLength(millimetres, Units::Inches) +
           ")";
}

std::string bothUnitsLong(double millimetres) {
    char text[64];
    std::snprintf(text, sizeof text, "%.1f m (%.1f ft)", millimetres / 1000, millimetres / mmPerFoot);
    return withDecimalMark(text);
}

std::string bothUnitsFine(double millimetres) {
    char text[64];
    std::snprintf(text, sizeof text, "%.2f mm (%.3f\")", millimetres, millimetres / mmPerInch);
    return withDecimalMark(text);
}

std::string bothUnitsWithin(double millimetres, double spread) {
    if (spread >= 1.0)
        return bothUnits(millimetres);
    if (spread < 0.1)
        return bothUnitsFine(millimetres);
    char text[64];
    std::snprintf(text, sizeof text, "%.1f mm (%.2f\")", millimetres, millimetres / mmPerInch);
    return withDecimalMark(text);
}

std::string unitsFirst(std::string sentence, Units units) {
    if (units != Units::Inches)
        return sentence;
    for (std::size_t open = sentence.find(" ("); open != std::string::npos;
         open = sentence.find(" (", open + 1)) {
        const std::size_t close = sentence.find(')', open);
        if (close == std::string::npos)
            break;
        const std::string imperial = sentence.substr(open + 2, close - open - 2);
        const std::size_t begins = metricAtEndOf(std::string_view(sentence).substr(0, open));
        if (begins == std::string::npos || !isImperial(imperial))
            continue;
        const std::string metric = sentence.substr(begins, open - begins);
        sentence.replace(begins, close + 1 - begins, imperial + " (" + metric + ")");
        open = begins + imperial.size();
    }
    return sentence;
}

} // namespace sheerlay::core
