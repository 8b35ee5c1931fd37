#include "core/stock/stock_words.hpp"

#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

std::string twoFigures(double value) {
    return numberText(value, value < 9.95 ? 1 : 0);
}

} // namespace

std::string spoken(std::string wood) {
    std::ranges::replace(wood, '-', ' ');
    return wood;
}

std::string sizeText(const BoardLot& lot, Units units) {
    if (units == Units::Inches) {
        const bool wholeFeet = std::abs(lot.length - std::round(lot.length / mmPerFoot) * mmPerFoot) < 0.5;
        return formatLength(lot.thickness, units, 16) + " by " + formatLength(lot.width, units, 16) + " by " +
               (wholeFeet ? numberText(lot.length / mmPerFoot, 0) + "'" : formatLength(lot.length, units, 8));
    }
    return numberText(lot.thickness, 0) + " by " + numberText(lot.width, 0) + " by " +
           formatLength(lot.length, units);
}

std::string runOfStrip(double millimetres, Units units) {
    const bool inches = units == Units::Inches;
    return numberText(std::ceil(millimetres / (inches ? mmPerFoot : 1000.0) - 1e-9), 0) +
           (inches ? " ft" : " m");
}

std::string pieceText(double millimetres, Units units) {
    const double step = units == Units::Inches ? mmPerInch / 4 : 1.0;
    return formatLength(std::ceil(millimetres / step - 1e-6) * step, units, 4);
}

std::string weightText(double kilograms, Units units) {
    const std::string metric = twoFigures(kilograms) + " kg",
                      imperial = twoFigures(kilograms / kgPerPound) + " lb";
    return units == Units::Inches ? imperial + " (" + metric + ")" : metric + " (" + imperial + ")";
}

} // namespace sheerlay::core
