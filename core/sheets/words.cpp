#include "core/sheets/words.hpp"

#include "core/hull/station_names.hpp"
#include "core/planking/difficulty.hpp"
#include "core/planking/strength.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

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
    const std::string lap = lapText(end.lap, units);
    if (pair && end.weave == Weave::Passes)
        return say("Let starboard run about {} past the centreplane, then cut it back; fit port against its "
                   "inner face.",
                   lap);
    if (pair)
        return say("Let port run about {} past the centreplane, then cut it back; fit starboard against its "
                   "inner face.",
                   lap);
    return end.weave == Weave::Fitted
               ? say("Fit it against the inner face of the other side's strip, which passes.")
               : say("Let it run about {} past the centreplane, then cut it back.", lap);
}

/// What becomes of an end at the keel line where one side runs past it.
std::string crossingText(const KeelCrossing& crossing, Units units, bool pair) {
    const std::string run = lapText(std::abs(crossing.past), units),
                      where = crossing.past < 0 ? say("short of the centreline") : say("past the centreline");
    if (!crossing.fixed) {
        if (pair)
            return say("Let port run about {} {}, square, and plane it back to a snapped line when port is "
                       "complete. Fit starboard's point against it.",
                       run,
                       where);
        return crossing.first ? say("Let it run about {} {}, square, and plane it back to a snapped line "
                                    "when port is complete.",
                                    run,
                                    where)
                              : say("Fit its point against port's planed edge.");
    }
    if (pair)
        return say("Let the side laid first run about {} {}; cut it along the other side's last edge, and "
                   "the other side along its edge.",
                   run,
                   where);
    return crossing.first
               ? say("Let it run about {} {} and cut it along the other side's last edge.", run, where)
               : say("Cut it along the other side's edge, about {} short of the centreline.", run);
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
    if (text.back() == '.' || text.back() == ',')
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

std::string bareSagText(double edgeBend, Units units) {
    const double base = units == Units::Millimetres ? sagBaseMillimetres : sagBaseInches;
    return placeText(sagOver(printedEdgeBend(edgeBend), base), units);
}

std::string sagText(double edgeBend, Units units) {
    const std::string sag = bareSagText(edgeBend, units);
    return units == Units::Millimetres ? say("{} over 2 m", sag) : say("{} over 8 ft", sag);
}

std::string twistText(double twist, Units units) {
    const double degrees = std::abs(twist) * 180.0 / std::numbers::pi;
    if (units == Units::Millimetres)
        return say("{} degrees in a metre", numberText(rounded(degrees * 1000.0, 2.0), 0));
    const double inFoot = rounded(degrees * mmPerFoot, 0.5);
    return say("{} degrees in a foot", numberText(inFoot, inFoot == std::floor(inFoot) ? 0 : 1));
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

Places::Beside Places::beside(double x) const {
    using Where = Beside::Where;
    if (m_x.empty())
        return {};
    const auto after = std::lower_bound(m_x.begin(), m_x.end(), x);
    const auto name = [&](std::ptrdiff_t i) { return m_names[static_cast<std::size_t>(i)]; };
    const std::ptrdiff_t i = after - m_x.begin();
    constexpr double nearby = 40.0; // mm; the place of a maximum isn't known better
    if (after != m_x.end() && *after - x <= nearby)
        return {Where::At, name(i)};
    if (i > 0 && x - m_x[static_cast<std::size_t>(i - 1)] <= nearby)
        return {Where::At, name(i - 1)};
    if (i == 0)
        return {Where::Forward, name(0)};
    if (after == m_x.end())
        return {Where::Aft, name(i - 1)};
    return {Where::Between, name(i - 1), name(i)};
}

std::string Places::at(double x) const {
    const Beside place = beside(x);
    switch (place.where) {
    case Beside::Where::At:
        return say("at station {}", place.one);
    case Beside::Where::Forward:
        return say("forward of station {}", place.one);
    case Beside::Where::Aft:
        return say("aft of station {}", place.one);
    case Beside::Where::Between:
        return say("between stations {} and {}", place.one, place.other);
    case Beside::Where::Nowhere:
        break;
    }
    return say("amidships");
}

std::string Places::byName(double x) const {
    const Beside place = beside(x);
    switch (place.where) {
    case Beside::Where::At:
        return say("at {}", place.one);
    case Beside::Where::Forward:
        return say("forward of {}", place.one);
    case Beside::Where::Aft:
        return say("aft of {}", place.one);
    case Beside::Where::Between:
        return say("between {} and {}", place.one, place.other);
    case Beside::Where::Nowhere:
        break;
    }
    return say("amidships");
}

std::string endText(const StripEnd& end, Units units, bool pair) {
    const std::string cut = angleText(end.cut);
    std::string text;
    switch (end.on) {
    case EndsOn::Stem:
        if (end.lap > 0.5)
            text = say("woven at the stem, {} to its line.", cut) + " " +
                   weaveText(end, units, pair && end.weave != Weave::None);
        else if (end.landing > 0.0)
            text = say("lands on the stem, {} to its line, with about {} of wood on wood.",
                       cut,
                       lapText(end.landing, units));
        else
            text = say("lands on the stem, {} to its line.", cut);
        break;
    case EndsOn::Keel:
        text = say("lands on the bottom's centreline at {}.", cut);
        if (end.crossing)
            text += " " + crossingText(*end.crossing, units, pair);
        break;
    case EndsOn::Transom:
        text = say("ends on the transom at {}. Leave it a little long and saw it flush.", cut);
        break;
    case EndsOn::Sheer:
        text = say("runs out at the sheer at {}. Leave it long and trim it with the sheer.", cut);
        break;
    case EndsOn::Strip:
        text = end.crossing ? say("crosses the bottom's centreline at {}.", cut) + " " +
                                  crossingText(*end.crossing, units, pair)
                            : say("runs to a point against its neighbour at {}.", cut);
        break;
    case EndsOn::Nib:
        text = say("cut blunt and let into a notch in its neighbour, at {}.", cut);
        break;
    }
    constexpr double halfADegree = 0.5 * std::numbers::pi / 180.0;
    if (std::abs(end.bevel) > halfADegree)
        text += " " + say("Bevel the end face by {}.", angleText(end.bevel));
    return text;
}

std::string toText(End end) {
    return end == End::Bow ? say("bow") : say("stern");
}

std::string countText(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

} // namespace sheerlay::core
