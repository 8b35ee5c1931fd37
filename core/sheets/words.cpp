#include "core/sheets/words.hpp"

#include "core/hull/station_names.hpp"
#include "core/planking/difficulty.hpp"
#include "core/planking/strength.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace sheerlay::core {

namespace {

double rounded(double value, double step) {
    return std::round(value / step) * step;
}

// Two figures: 5.6, 18, 120.
std::string twoFigures(double value) {
    if (value < 9.95)
        return numberText(value, 1);
    const double step = std::pow(10.0, std::max(0.0, std::floor(std::log10(value)) - 1.0));
    return numberText(rounded(value, step), 0);
}

// Printed to 0.01 /m, so that no figure derived from it says more.
double printedEdgeBend(double edgeBend) {
    return rounded(std::abs(edgeBend), 0.01e-3);
}

/// Which side runs past the other at a woven end, and what the other does.
std::string weaveText(const StripEnd& end, Units units, bool pair) {
    const std::string past = "about " + lapText(end.lap, units) + " past the centreplane, then cut it back";
    if (pair) {
        const bool starboard = end.weave == Weave::Passes;
        return std::string(" Let ") + (starboard ? "starboard" : "port") + " run " + past + "; fit " +
               (starboard ? "port" : "starboard") + " against its inner face.";
    }
    return end.weave == Weave::Fitted
               ? " Fit it against the inner face of the other side's strip, which passes."
               : " Let it run " + past + ".";
}

/// What becomes of an end at the keel line where one side runs past it.
std::string crossingText(const KeelCrossing& crossing, Units units, bool pair) {
    const std::string run = " about " + lapText(std::abs(crossing.past), units),
                      where = crossing.past < 0 ? " short of the centreline" : " past the centreline";
    if (!crossing.fixed) {
        const std::string back = ", square, and plane it back to a snapped line when port is complete.";
        if (pair)
            return " Let port run" + run + where + back + " Fit starboard's point against it.";
        return crossing.first ? " Let it run" + run + where + back
                              : " Fit its point against port's planed edge.";
    }
    const std::string first = run + where +
                              (pair ? "; cut it along the other side's last edge"
                                    : " and cut it along the other "
                                      "side's last edge");
    if (pair)
        return " Let the side laid first run" + first + ", and the other side along its edge.";
    return crossing.first ? " Let it run" + first + "."
                          : " Cut it along the other side's edge," + run + " short of the centreline.";
}

} // namespace

std::string widthText(double millimetres, Units units) {
    return units == Units::Millimetres ? formatLength(millimetres, units, 16, 1)
                                       : formatLength(millimetres, units, 32);
}

std::string stockText(double millimetres, Units units) {
    if (units == Units::Inches)
        return formatLength(millimetres, units, 64);
    std::string text = numberText(millimetres, 2);
    while (text.back() == '0')
        text.pop_back();
    if (text.back() == '.')
        text.pop_back();
    return text + " mm";
}

std::string lapText(double millimetres, Units units) {
    return formatLength(millimetres, units, 16);
}

std::string runText(double millimetres, Units units) {
    return units == Units::Millimetres ? numberText(std::ceil(millimetres / 1000.0), 0) + " m"
                                       : numberText(std::ceil(millimetres / mmPerFoot), 0) + " ft";
}

std::string radiusText(double millimetres, Units units) {
    return units == Units::Millimetres ? twoFigures(millimetres / 1000.0) + " m"
                                       : twoFigures(millimetres / mmPerFoot) + " ft";
}

std::string sagText(double edgeBend, Units units) {
    const double bend = printedEdgeBend(edgeBend);
    if (units == Units::Millimetres)
        return placeText(sagOver(bend, sagBaseMillimetres), units) + " over 2 m";
    return placeText(sagOver(bend, sagBaseInches), units) + " over 8 ft";
}

std::string twistText(double twist, Units units) {
    const double degrees = std::abs(twist) * 180.0 / std::numbers::pi;
    if (units == Units::Millimetres)
        return numberText(rounded(degrees * 1000.0, 2.0), 0) + " degrees in a metre";
    const double inFoot = rounded(degrees * mmPerFoot, 0.5);
    return numberText(inFoot, inFoot == std::floor(inFoot) ? 0 : 1) + " degrees in a foot";
}

std::string forceText(double newtons, Units units) {
    const auto plain = [](double value) {
        const double step = value < 20.0 ? 1.0 : value < 100.0 ? 5.0 : 10.0;
        return numberText(rounded(value, step), 0);
    };
    const std::string metric = plain(newtons) + " N", pounds = plain(newtons / newtonsPerPound) + " lb";
    return units == Units::Millimetres ? metric + " (" + pounds + ")" : pounds + " (" + metric + ")";
}

std::string angleText(double radians) {
    return numberText(std::abs(radians) * 180.0 / std::numbers::pi, 0) + "\u00B0";
}

Places::Places(const Project& project, const LoftedHull& hull)
    : m_names(stationNames(project, hull)), m_x(hull.stationX) {}

std::string Places::at(double x) const {
    if (m_x.empty())
        return "amidships";
    const auto after = std::lower_bound(m_x.begin(), m_x.end(), x);
    const auto name = [&](std::ptrdiff_t i) { return m_names[static_cast<std::size_t>(i)]; };
    const std::ptrdiff_t i = after - m_x.begin();
    constexpr double nearby = 40.0; // mm; the place of a maximum isn't known better
    if (after != m_x.end() && *after - x <= nearby)
        return "at station " + name(i);
    if (i > 0 && x - m_x[static_cast<std::size_t>(i - 1)] <= nearby)
        return "at station " + name(i - 1);
    if (i == 0)
        return "forward of station " + name(0);
    if (after == m_x.end())
        return "aft of station " + name(i - 1);
    return "between stations " + name(i - 1) + " and " + name(i);
}

std::string endText(const StripEnd& end, Units units, bool pair) {
    const std::string cut = angleText(end.cut);
    std::string text;
    switch (end.on) {
    case EndsOn::Stem:
        text = end.lap > 0.5 ? "woven at the stem, " + cut + " to its line." +
                                   weaveText(end, units, pair && end.weave != Weave::None)
                             : "lands on the stem, " + cut + " to its line" +
                                   (end.landing > 0.0
                                        ? ", with about " + lapText(end.landing, units) + " of wood on wood."
                                        : ".");
        break;
    case EndsOn::Keel:
        text = "lands on the bottom's centreline at " + cut + ".";
        if (end.crossing)
            text += crossingText(*end.crossing, units, pair);
        break;
    case EndsOn::Transom:
        text = "ends on the transom at " + cut + ". Leave it a little long and saw it flush.";
        break;
    case EndsOn::Sheer:
        text = "runs out at the sheer at " + cut + ". Leave it long and trim it with the sheer.";
        break;
    case EndsOn::Strip:
        text = end.crossing ? "crosses the bottom's centreline at " + cut + "." +
                                  crossingText(*end.crossing, units, pair)
                            : "runs to a point against its neighbour at " + cut + ".";
        break;
    case EndsOn::Nib:
        text = "cut blunt and let into a notch in its neighbour, at " + cut + ".";
        break;
    }
    constexpr double halfADegree = 0.5 * std::numbers::pi / 180.0;
    if (std::abs(end.bevel) > halfADegree)
        text += " Bevel the end face by " + angleText(end.bevel) + ".";
    return text;
}

const char* toText(End end) noexcept {
    return end == End::Bow ? "bow" : "stern";
}

std::string countText(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

} // namespace sheerlay::core
