#include "core/units/rounded_text.hpp"

#include <cmath>

namespace sheerlay::core {

std::string cutLengthText(double millimetres, Units units) {
    const double step = units == Units::Millimetres ? 5.0 : mmPerInch / 4;
    constexpr double nearlyNothing = 1e-6; // of a step, so that rounding of an exact length adds none
    return formatLength(std::ceil(millimetres / step - nearlyNothing) * step, units, 4);
}

std::string placeText(double millimetres, Units units) {
    return units == Units::Millimetres ? formatLength(std::round(millimetres / 5.0) * 5.0, units)
                                       : formatLength(millimetres, units, 4);
}

} // namespace sheerlay::core
