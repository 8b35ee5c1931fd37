#include "core/planking/uncertainty_text.hpp"

#include "core/units/length.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace sheerlay::core {
namespace {

constexpr double longish = 10.0; // mm: from here on the +/- itself is told in coarser steps
constexpr double nearlyNothing = 1e-9;

double roundedUp(double value, double step) {
    return std::ceil(value / step - nearlyNothing) * step;
}

std::string number(double value, int decimals) {
    std::array<char, 32> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.*f", decimals, value);
    return buffer.data();
}

std::string plusMinus(double deviation, Units units) {
    const double value = printedDeviations * deviation;
    const bool fine = value <= longish;
    const double step = units == Units::Inches ? (fine ? mmPerInch / 16 : mmPerInch / 4) : (fine ? 1.0 : 5.0);
    return "+/- " + formatLength(std::max(step, roundedUp(value, step)), units, 16);
}

} // namespace

std::string toText(const PlanUncertainty& u, Units units) {
    const double bend = std::max(0.01, roundedUp(printedDeviations * u.edgeBend * 1000.0, 0.01));
    const bool inches = units == Units::Inches;
    const double twist = printedDeviations * u.twist * 180 / std::numbers::pi * (inches ? mmPerFoot : 1000.0);
    const std::string usual = plusMinus(u.lengthTypical, units);
    const std::string worst = plusMinus(u.length, units);
    std::string text =
        "Rounding of the table moves edge bend by +/- " + number(bend, 2) + " per metre, twist by +/- ";
    text += inches ? number(std::max(0.5, roundedUp(twist, 0.5)), 1) + " degrees in a foot"
                   : number(std::max(1.0, roundedUp(twist, 1.0)), 0) +
                         (twist <= 1.0 ? " degree in a metre" : " degrees in a metre");
    text += ", strip lengths by " + usual;
    if (worst != usual)
        text += " (the most pointed by " + worst + ")";
    if (u.shutterWidth)
        text += ", half girth by " + plusMinus(u.halfGirth, units) + " and the shutter's width by " +
                plusMinus(*u.shutterWidth, units);
    else
        text += " and half girth by " + plusMinus(u.halfGirth, units);
    return text + ". Past the last stations, where the table is silent, the hull may differ by more.";
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
    return formatLength(value, units, 16, std::abs(value - std::round(value)) > nearlyNothing ? 1 : 0);
}

} // namespace sheerlay::core
