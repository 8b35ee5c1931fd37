#include "core/units/both_units.hpp"

#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <cstdio>

namespace sheerlay::core {

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

} // namespace sheerlay::core
