#include "core/afloat/afloat.hpp"

#include "core/afloat/after_text.hpp"
#include "core/hull/outside_surface.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/rounded_text.hpp"
#include "core/weights/fitout_weights.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr double cubicMm = 1e9; // in a cubic metre

Finding tell(Level level, const char* code, std::optional<double> x, std::string text) {
    return {level, code, std::nullopt, x, std::move(text)};
}

std::string fromBow(double x, Units units) {
    constexpr double atIt = 50.0; // mm; a hand's breadth aft of it, or on planking that stands past it
    return x < atIt ? "at the bow" : placeText(x, units) + " from the bow";
}

Finding refusal(const AfloatError& error, const AfloatReport& report, Units units) {
    const std::string all = weightText(report.boat.mass + report.load.mass, units);
    const std::string most = "; floating level she carries herself and " +
                             largestLoadText(std::max(0.0, error.most - report.boat.mass), units) +
                             " with the water at the sheer";
    if (error.kind == AfloatError::Kind::TooHeavy)
        return tell(Level::Stop,
                    "swamps",
                    std::nullopt,
                    "With " + all + " in all she would go under" + most + ". Take weight out of her.");
    if (error.kind == AfloatError::Kind::Swamped)
        return tell(Level::Stop,
                    "swamps",
                    error.at.x(),
                    "With " + all + " in all, water comes over the sheer " + fromBow(error.at.x(), units) +
                        most + ". Take weight out of her, or move it toward the middle and lower.");
    return tell(
        Level::Stop,
        "no-rest",
        std::nullopt,
        "No steady place in the water was found for her with this load; place it lower and nearer the "
        "middle.");
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

void judge(AfloatReport& report, const Project& project) {
    const Rest& rest = *report.rest;
    constexpr double level = std::numbers::pi / 180; // a degree of heel is seen from the bank
    if (std::abs(rest.water.heel) > level)
        report.findings.push_back(
            tell(Level::Caution,
                 "heels-at-rest",
                 std::nullopt,
                 "At rest she heels to " + std::string(rest.water.heel > 0 ? "starboard" : "port") +
                     (rest.under.centre.y() * report.load.centre.y() > 0.0
                          ? "; move weight across toward the centreline."
                          : "; her weight stands too high for her beam, so place it lower.")));
    if (rest.freeboard < report.freeboard)
        report.findings.push_back(
            tell(Level::Caution,
                 "low-freeboard",
                 rest.freeboardAt.x(),
                 "The sheer stands " + formatLength(rest.freeboard, project.units, 4) +
                     " above the water at its " + "lowest, less than the " +
                     formatLength(report.freeboard, project.units, 4) +
                     " that were asked for; take weight out of her or move it away from there."));
}

} // namespace

std::optional<AfloatReport> floatBoat(const Project& project,
                                      const LoftedHull& hull,
                                      const TrimmedSurface& outside,
                                      const WeightSheet& weights) {
    if (!project.afloat)
        return std::nullopt;
    const AfloatChoices& choices = *project.afloat;
    AfloatReport report;
    report.density = choices.density;
    report.freeboard = choices.freeboard;
    report.boat = {weights.mass, weights.centre};
    for (const PlacedWeight& placed : choices.loads) {
        const WeightItem item = placedItem(placed, hull);
        report.load = together(report.load, {item.mass, item.centre});
        report.loads.push_back(item);
    }
    report.sheer = outside.sheer;
    report.profile = outside.profile;

    const FloatBody body = floatBodyOf(outside);
    report.levels = levelsOf(body, report.density);
    report.largestLoad =
        std::max(0.0, levelDisplacement(body, report.density, choices.freeboard) - report.boat.mass);
    const Burden all = together(report.boat, report.load);
    const auto found = rest(body, all, report.density);
    if (!found) {
        report.findings.push_back(refusal(found.error(), report, project.units));
        return report;
    }
    report.rest = *found;
    report.form = formOf(*found, report.density);
    report.toStarboard = rightingCurve(body, all, report.density, 1.0, found->water);
    constexpr double leans = 0.1; // mm off the centreplane, below which both sides are alike
    if (std::abs(all.centre.y()) > leans)
        report.toPort = rightingCurve(body, all, report.density, -1.0, found->water);
    judge(report, project);
    return report;
}

AfterPlanking afterPlanking(const Project& project,
                            const LoftedHull& hull,
                            const Plan& plan,
                            const std::vector<WeightItem>& more) {
    AfterPlanking after;
    if (!project.fitout && !project.covering && !project.afloat)
        return after;
    const auto outside = outsideSurface(project, hull);
    if (!outside) {
        after.findings.push_back(tell(Level::Caution,
                                      "no-outside",
                                      std::nullopt,
                                      "The outside of the planking could not be found: " + outside.error() +
                                          ". The fit-out, cloth, weights and how she floats are left "
                                          "out."));
        return after;
    }
    after.covering = planCovering(project, hull, *outside);
    const auto weighed = [&](const Fitout& fitout) {
        std::vector<WeightItem> parts = fitoutWeights(project, fitout);
        parts.insert(parts.end(), more.begin(), more.end());
        return weighBoat(project, hull, plan, after.covering, parts);
    };
    auto fitout = planFitout(project, hull, plan, [&](const Fitout& f) { return weighed(f).centre.x(); });
    if (fitout)
        after.fitout = std::move(*fitout);
    else
        after.findings.push_back(tell(
            Level::Caution, "no-faces", std::nullopt, "The fit-out is left out: " + fitout.error() + "."));
    after.weights = weighed(after.fitout.value_or(Fitout{}));
    after.afloat = floatBoat(project, hull, *outside, *after.weights);
    const auto take = [&](const std::vector<Finding>& findings) {
        after.findings.insert(after.findings.end(), findings.begin(), findings.end());
    };
    if (after.fitout)
        take(after.fitout->findings);
    if (after.covering)
        take(after.covering->findings);
    take(after.weights->findings);
    if (after.afloat)
        take(after.afloat->findings);
    return after;
}

} // namespace sheerlay::core
