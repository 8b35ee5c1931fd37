#include "core/afloat/afloat.hpp"

#include "core/afloat/afloat_trial.hpp"
#include "core/hull/outside_surface.hpp"
#include "core/weights/fitout_weights.hpp"
#include "core/words/say.hpp"

namespace sheerlay::core {

namespace {

Finding tell(Level level, const char* code, std::optional<double> x, std::string text) {
    return {level, code, std::nullopt, x, std::move(text)};
}

} // namespace

std::optional<AfloatReport> floatBoat(const Project& project,
                                      const LoftedHull& hull,
                                      const TrimmedSurface& outside,
                                      const WeightSheet& weights) {
    if (!project.afloat)
        return std::nullopt;
    std::vector<WeightItem> loads;
    for (const PlacedWeight& placed : project.afloat->loads)
        loads.push_back(placedItem(placed, hull));
    return AfloatTrial(*project.afloat, project.units, outside, weights).with(loads);
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
                                      say("The outside of the planking could not be found: {}. The fit-out, "
                                          "cloth, weights and how she floats are left out.",
                                          outside.error())));
        return after;
    }
    const auto hullCovered = planCovering(project, hull, *outside);
    const auto covered = [&](const Fitout& fitout) {
        auto covering = hullCovered;
        if (covering)
            coverBulkheads(*covering, *project.covering, fitout.bulkheads);
        return covering;
    };
    const auto weighed = [&](const Fitout& fitout) {
        std::vector<WeightItem> parts = fitoutWeights(project, fitout);
        addWeight(parts, planFastenings(project, fitout));
        addWeight(parts, planGlue(project, plan, fitout));
        parts.insert(parts.end(), more.begin(), more.end());
        return weighBoat(project, hull, plan, covered(fitout), parts);
    };
    auto fitout = planFitout(project, hull, plan, [&](const Fitout& f) { return weighed(f).centre.x(); });
    if (fitout)
        after.fitout = std::move(*fitout);
    else
        after.findings.push_back(tell(
            Level::Caution, "no-faces", std::nullopt, say("The fit-out is left out: {}.", fitout.error())));
    if (after.fitout)
        after.fastenings = planFastenings(project, *after.fitout);
    after.covering = covered(after.fitout.value_or(Fitout{}));
    after.glue = planGlue(project, plan, after.fitout);
    after.weights = weighed(after.fitout.value_or(Fitout{}));
    if (const auto moulds = mouldsOf(project, hull))
        after.onMoulds = weighOnMoulds(project, plan, *moulds, after.glue, after.covering);
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
