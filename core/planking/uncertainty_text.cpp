#include "core/planking/uncertainty_text.hpp"

#include "core/planking/difficulty.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace sheerlay::core {
namespace {

constexpr double longish = 10.0;   // mm: from here on the +/- itself is told in coarser steps
constexpr double hardlyMore = 0.1; // of a step: isn't rounded up

double roundedUp(double value, double step) {
    return std::ceil(value / step - hardlyMore) * step;
}

std::string coarseText(double value, Units units) {
    const bool fine = value <= longish;
    const double step = units == Units::Inches ? (fine ? mmPerInch / 16 : mmPerInch / 4) : (fine ? 1.0 : 5.0);
    return formatLength(std::max(step, roundedUp(value, step)), units, 16);
}

} // namespace

std::string edgeBendPlusMinus(double deviation, Units units) {
    const double bend = std::max(0.01, roundedUp(printedDeviations * deviation * 1000.0, 0.01)); // 1/m
    const bool inches = units == Units::Inches;
    const double sag = sagOver(bend / 1000.0, inches ? sagBaseInches : sagBaseMillimetres);
    const std::string number = numberText(bend, 2), told = coarseText(sag, units);
    return inches ? say("+/- {} per metre ({} over 8 ft)", number, told)
                  : say("+/- {} per metre ({} over 2 m)", number, told);
}

std::string twistPlusMinus(double deviation, Units units) {
    const double degrees = printedDeviations * deviation * 180 / std::numbers::pi;
    if (units == Units::Inches) {
        const double halves = std::max(0.5, roundedUp(degrees * mmPerFoot, 0.5));
        const std::string number = numberText(halves, halves == std::round(halves) ? 0 : 1);
        return halves == 1.0 ? say("+/- {} degree in a foot", number)
                             : say("+/- {} degrees in a foot", number);
    }
    const double whole = std::max(1.0, roundedUp(degrees * 1000.0, 1.0));
    return whole == 1.0 ? say("+/- {} degree in a metre", numberText(whole, 0))
                        : say("+/- {} degrees in a metre", numberText(whole, 0));
}

std::string lengthPlusMinus(double deviation, Units units) {
    return "+/- " + coarseText(printedDeviations * deviation, units);
}

std::string toText(const PlanUncertainty& u, Units units) {
    const std::string usual = lengthPlusMinus(u.lengthTypical, units);
    const std::string worst = lengthPlusMinus(u.length, units);
    const std::string bend = edgeBendPlusMinus(u.edgeBend, units), twist = twistPlusMinus(u.twist, units),
                      girth = lengthPlusMinus(u.halfGirth, units),
                      lengths = worst != usual ? say("{} (the most pointed by {})", usual, worst) : usual;
    const std::string moved =
        u.shutterWidth ? say("Rounding of the table moves edge bend by {}, twist by {}, strip lengths by {}, "
                             "half girth by {} and the shutter's width by {}.",
                             bend,
                             twist,
                             lengths,
                             girth,
                             lengthPlusMinus(*u.shutterWidth, units))
                       : say("Rounding of the table moves edge bend by {}, twist by {}, strip lengths by {} "
                             "and half girth by {}.",
                             bend,
                             twist,
                             lengths,
                             girth);
    return moved + " " + say("Away from the stations it may be more, bend and twist most.");
}

std::string lengthText(double millimetres, double finest, double plusMinus, Units units) {
    constexpr std::array<double, 6> metric = {1, 5, 10, 20, 50, 100};
    constexpr std::array<double, 6> inch = {
        mmPerInch / 16, mmPerInch / 8, mmPerInch / 4, mmPerInch / 2, mmPerInch, 4 * mmPerInch};
    double step = finest;
    for (const double s : units == Units::Inches ? inch : metric)
        if (s > step && s <= plusMinus)
            step = s;
    const double value = std::round(millimetres / step) * step;
    return formatLength(value, units, 16, std::abs(value - std::round(value)) > 1e-9 ? 1 : 0);
}

} // namespace sheerlay::core
