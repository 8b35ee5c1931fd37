#include "core/afloat/afloat_trial.hpp"

#include "core/afloat/after_text.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/rounded_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr double cubicMm = 1e9; // in a cubic metre

Finding tell(Level level, const char* code, std::optional<double> x, std::string text) {
    return {level, code, std::nullopt, x, std::move(text)};
}

std::string fromBow(double x, Units units) {
    constexpr double atIt = 50.0; // mm; a hand's breadth aft of it, or on planking that stands past it
    return x < atIt ? say("at the bow") : say("{} from the bow", placeText(x, units));
}

Finding refusal(const AfloatError& error, const AfloatReport& report, Units units) {
    const std::string all = weightText(report.boat.mass + report.load.mass, units);
    const std::string most = largestLoadText(std::max(0.0, error.most - report.boat.mass), units);
    if (error.kind == AfloatError::Kind::TooHeavy)
        return tell(Level::Stop,
                    "swamps",
                    std::nullopt,
                    say("With {} in all she would go under; floating level she carries herself and {} with "
                        "the water at the sheer. Take weight out of her.",
                        all,
                        most));
    if (error.kind == AfloatError::Kind::Swamped)
        return tell(Level::Stop,
                    "swamps",
                    error.at.x(),
                    say("With {} in all, water comes over the sheer {}, {} deep there; floating level she "
                        "carries herself and {} with the water at the sheer. Take weight out of her, or move "
                        "it toward the middle and lower.",
                        all,
                        fromBow(error.at.x(), units),
                        formatLength(error.depth, units, 4),
                        most));
    return tell(Level::Stop,
                "no-rest",
                std::nullopt,
                say("No steady place in the water was found for her with this load; place it lower and "
                    "nearer the middle."));
}

FormFigures formOf(const Rest& rest, double density) {
    const Submerged& u = rest.under;
    FormFigures form;
    const double box = u.length * u.beam * rest.draught;
    if (box > 0.0) {
        form.block = u.volume / box;
        form.prismatic = u.volume / (u.length * u.largestSection);
        form.midship = u.largestSection / (u.beam * rest.draught);
        form.waterplane = u.plane / (u.length * u.beam);
    }
    form.massPerMm = u.plane * density / cubicMm;
    form.trimByEnds = u.length * std::tan(rest.water.trim);
    return form;
}

std::vector<FloatLevel> levelsOf(const FloatBody& body, double density) {
    std::vector<FloatLevel> levels;
    const double top = leastFreeboard(body, {}).height, bottom = -draught(body, {top, 0, 0}) + top;
    constexpr int steps = 24;
    for (int i = 0; i <= steps; ++i) {
        const double deep = (top - bottom) * i / steps;
        levels.push_back({deep, submerged(body, {bottom + deep, 0, 0}).volume / cubicMm * density});
    }
    return levels;
}

void judge(AfloatReport& report, Units units) {
    const Rest& rest = *report.rest;
    constexpr double level = std::numbers::pi / 180; // a degree of heel is seen from the bank
    if (std::abs(rest.water.heel) > level)
        report.findings.push_back(
            tell(Level::Caution,
                 "heels-at-rest",
                 std::nullopt,
                 say(rest.under.centre.y() * report.load.centre.y() > 0.0
                         ? sayable("At rest she heels to {}; move weight across toward the centreline.")
                         : sayable("At rest she heels to {}; her weight stands too high for her beam, so "
                                   "place it lower."),
                     rest.water.heel > 0 ? say("starboard") : say("port"))));
    if (rest.freeboard < report.freeboard)
        report.findings.push_back(
            tell(Level::Caution,
                 "low-freeboard",
                 rest.freeboardAt.x(),
                 say("The sheer stands {} above the water at its lowest, less than the {} that were asked "
                     "for; take weight out of her or move it away from there.",
                     formatLength(rest.freeboard, units, 4),
                     formatLength(report.freeboard, units, 4))));
}

} // namespace

AfloatTrial::AfloatTrial(const AfloatChoices& choices,
                         Units units,
                         const TrimmedSurface& outside,
                         const WeightSheet& weights)
    : m_body(floatBodyOf(outside)), m_units(units) {
    m_empty.density = choices.density;
    m_empty.freeboard = choices.freeboard;
    m_empty.boat = {weights.mass, weights.centre};
    m_empty.sheer = outside.sheer;
    m_empty.profile = outside.profile;
    m_empty.levels = levelsOf(m_body, m_empty.density);
    m_empty.largestLoad =
        std::max(0.0, levelDisplacement(m_body, m_empty.density, choices.freeboard) - m_empty.boat.mass);
}

AfloatReport AfloatTrial::with(const std::vector<WeightItem>& loads) const {
    AfloatReport report = m_empty;
    report.loads = loads;
    for (const WeightItem& item : loads)
        report.load = together(report.load, {item.mass, item.centre});
    const Burden all = together(report.boat, report.load);
    const auto found = rest(m_body, all, report.density);
    if (!found) {
        report.findings.push_back(refusal(found.error(), report, m_units));
        return report;
    }
    report.rest = *found;
    report.form = formOf(*found, report.density);
    report.toStarboard = rightingCurve(m_body, all, report.density, 1.0, found->water);
    constexpr double leans = 0.1; // mm off the centreplane, below which both sides are alike
    if (std::abs(all.centre.y()) > leans)
        report.toPort = rightingCurve(m_body, all, report.density, -1.0, found->water);
    judge(report, m_units);
    return report;
}

} // namespace sheerlay::core
