#include "core/stock/stock_words.hpp"

#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace sheerlay::core {

namespace {

/// What the woods are called on paper, beside which their ids have hyphens only.
constexpr std::array woodsSaid{sayable("western redcedar"),
                               sayable("northern white cedar"),
                               sayable("atlantic white cedar"),
                               sayable("alaska yellow cedar"),
                               sayable("port orford cedar"),
                               sayable("redwood old growth"),
                               sayable("redwood young growth"),
                               sayable("eastern white pine"),
                               sayable("sitka spruce"),
                               sayable("yellow poplar"),
                               sayable("white ash"),
                               sayable("black cherry"),
                               sayable("black walnut")};

std::string twoFigures(double value) {
    const bool tiny = value > 0.0 && value < 0.095; // else what is there would print as nothing
    return numberText(value, tiny ? 2 : value < 9.95 ? 1 : 0);
}

} // namespace

std::string spoken(std::string wood) {
    std::ranges::replace(wood, '-', ' ');
    const bool known = std::ranges::find(woodsSaid, std::string_view(wood)) != woodsSaid.end();
    return known ? say(wood) : wood;
}

std::string sizeText(const BoardLot& lot, Units units) {
    if (units == Units::Inches) {
        const bool wholeFeet = std::abs(lot.length - std::round(lot.length / mmPerFoot) * mmPerFoot) < 0.5;
        return say("{} by {} by {}",
                   formatLength(lot.thickness, units, 16),
                   formatLength(lot.width, units, 16),
                   wholeFeet ? numberText(lot.length / mmPerFoot, 0) + "'"
                             : formatLength(lot.length, units, 8));
    }
    return say("{} by {} by {}",
               numberText(lot.thickness, 0),
               numberText(lot.width, 0),
               formatLength(lot.length, units));
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
