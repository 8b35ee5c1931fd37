#include "core/project/write_afloat.hpp"

#include "core/project/written_value.hpp"
#include "core/units/weight.hpp"

#include <string_view>

namespace sheerlay::core {

namespace {

std::string writtenWeight(double kilograms, Units units) {
    return units == Units::Millimetres ? shortestDigits(kilograms) : steadyDigits(kilograms / kgPerPound);
}

std::string placedText(std::string_view table, const PlacedWeight& placed, Units units) {
    std::string text = "\n[[afloat." + std::string(table) + "]]\n";
    text += "name = " + inQuotes(placed.name) + "\n";
    text += "weight = " + writtenWeight(placed.mass, units) + "\n";
    text += "x = " + writtenLength(placed.x, units) + "\n";
    text += "off-centre = " + writtenLength(placed.y, units) + "\n";
    text += "height = " + writtenLength(placed.height, units) + "\n";
    return text;
}

} // namespace

std::string afloatText(const AfloatChoices& afloat, Units units) {
    std::string text = "\n[afloat]\n";
    text += "water = " + shortestDigits(afloat.density) + "\n";
    text += "freeboard = " + writtenLength(afloat.freeboard, units) + "\n";
    if (afloat.boatMass)
        text += "boat-weight = " + writtenWeight(*afloat.boatMass, units) + "\n";
    for (const PlacedWeight& load : afloat.loads)
        text += placedText("load", load, units);
    for (const PlacedWeight& part : afloat.parts)
        text += placedText("part", part, units);
    return text;
}

} // namespace sheerlay::core
