#include "core/planking/aim_start.hpp"

#include "core/planking/landing.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace sheerlay::core {
namespace {

constexpr int farthest = 9;          // mm
constexpr double worthOfThin = 100;  // mm of shift that a thin piece is worth
constexpr double worthOfShort = 3;   // mm of shift that a short piece is worth (judged)
constexpr double mayBend = 0.005e-3; // 1/mm that the worst strip may be bent harder for it

/// Shifts of whole mm to both sides, the least first.
std::vector<double> shifts() {
    std::vector<double> all;
    for (int i = 1; i <= farthest; ++i) {
        all.push_back(i);
        all.push_back(-i);
    }
    return all;
}

/// What small pieces at the sheer are worth, in mm of shift, both sides of the boat counted once.
double worthOfSmall(const Plan& plan) {
    double worth = 0;
    for (const Strip& s : plan.strips) {
        if (s.side == Side::Port || s.kind != StripKind::Filler)
            continue;
        if (widest(s) < thinnestFiller)
            worth += worthOfThin;
        else if (s.length < shortFiller)
            worth += worthOfShort;
    }
    return worth;
}

/// The same rows where every strip is planed to cover `to` mm instead of `from`; what is narrowest stays so.
Widths planedTo(double to, double from, double narrowest, Widths widths) {
    const auto eased = [](const RowWidth& row, auto&& change) {
        if (row.full())
            return row;
        std::vector<double> width = row.width();
        for (double& w : width)
            w = change(w);
        return RowWidth(row.u(), std::move(width));
    };
    const double part = (to - narrowest) / std::max(from - narrowest, 1e-9);
    for (auto* rows : {&widths.below, &widths.above})
        for (RowWidth& row : *rows)
            row = eased(row, [&](double w) { return narrowest + part * (w - narrowest); });
    for (Band& band : widths.bands) // a nib stays where both strips together are as wide as one
        band.width = eased(band.width, [&](double w) { return w * to / from; });
    return widths;
}

/// More rows over the limit, or much farther over it.
bool worse(const LaidScore& score, const LaidScore& than) {
    constexpr double little = 0.02; // limits
    return score.metFrom > than.metFrom || score.slack > than.slack + little;
}

bool movable(const Plan& plan, double shift) {
    return (plan.start.kind == StartLine::Kind::Geodesic || plan.start.kind == StartLine::Kind::Bent) &&
           plan.start.girth + shift > 0;
}

} // namespace

void aimShutter(const LaidBoat& boat, const LayingContext& context, const Plan& empty, Plan& plan) {
    const Project& project = *context.project;
    const auto& wanted = *project.planking.shutter;
    const bool sheer = plan.start.kind == StartLine::Kind::Sheer;
    const bool joinable = project.planking.closing == ClosingMethod::BothSides;
    const double before = shutterRemainder(plan);
    if (landsWell(before, plan.coverWidth, wanted, joinable) && topIsSound(plan))
        return;
    constexpr std::size_t mostTries = 12;
    constexpr int mostSolved = 3; // tapers anew take a second or more each
    int solved = 0;
    const LaidScore wantedScore = scoreOf(plan);
    const double above = sheer ? 0.0 : plan.start.girth;
    const std::vector<LandingChange> changes = landingChanges(
        {(plan.lastRow - 1) * plan.coverWidth + before, above, plan.coverWidth, wanted, joinable, !sheer});
    std::optional<Plan> secondBest;
    std::pair<bool, bool> secondFaults;
    LandingChange secondChange;
    for (std::size_t i = 0; i < std::min(mostTries, changes.size()); ++i) {
        StartLine start = plan.start;
        (sheer ? start.shift : start.girth) += changes[i].shift;
        Project trialProject = project;
        trialProject.strips.coverWidth -= changes[i].planed;
        LayingContext trialContext = context;
        trialContext.project = &trialProject;
        const Widths planed = changes[i].planed > 0 ? planedTo(trialProject.strips.coverWidth,
                                                               project.strips.coverWidth,
                                                               narrowestAllowed(project),
                                                               boat.widths)
                                                    : boat.widths;
        auto trial = layFrom(start, planed, trialContext, boat.base);
        if (!trial || !landsWell(shutterRemainder(*trial), trial->coverWidth, wanted, joinable))
            continue;
        if (worse(scoreOf(*trial), wantedScore) && solved < mostSolved) {
            ++solved;
            auto anew = layTapered(start, trialContext, empty);
            if (anew && landsWell(shutterRemainder(anew->plan), trial->coverWidth, wanted, joinable) &&
                scoreOf(anew->plan) < scoreOf(*trial))
                trial = std::move(anew->plan);
        }
        // worst: bent harder than from the old start; then: a thin piece at the sheer
        const std::pair faults(worse(scoreOf(*trial), wantedScore), !topIsSound(*trial));
        if (faults == std::pair(false, false)) {
            plan = std::move(*trial);
            tellLanding(changes[i], before, shutterRemainder(plan), plan);
            return;
        }
        if (!secondBest || faults < secondFaults) {
            secondBest = std::move(*trial);
            secondFaults = faults;
            secondChange = changes[i];
        }
    }
    if (secondBest) { // a thin piece at the sheer or a harder bend stays, and has its own finding
        plan = std::move(*secondBest);
        tellLanding(secondChange, before, shutterRemainder(plan), plan);
        return;
    }
    plan.findings.push_back({Level::Caution,
                             "shutter-not-met",
                             std::nullopt,
                             std::nullopt,
                             say("No small move of the start line and no light planing gives the shutter the "
                                 "wanted width; change the cover width a little, or the wanted width.")});
}

void clearTop(const Widths& widths, const LayingContext& context, const Plan& empty, Plan& plan) {
    double least = worthOfSmall(plan);
    const double mostBend = worstEdgeBend(plan) + mayBend;
    std::optional<Plan> best;
    double bestShift = 0.0;
    for (const double shift : shifts()) {
        if (std::abs(shift) >= least)
            break; // no farther one can be better
        if (!movable(plan, shift))
            continue;
        StartLine start = plan.start;
        start.girth += shift;
        auto trial = layFrom(start, widths, context, empty);
        if (!trial || worstEdgeBend(*trial) > mostBend)
            continue;
        const double cost = worthOfSmall(*trial) + std::abs(shift);
        if (cost < least) {
            least = cost;
            best = std::move(*trial);
            bestShift = shift;
        }
    }
    if (!best)
        return;
    plan = std::move(*best);
    tellTop(bestShift, plan);
}

std::optional<double> moveForTop(const LayingContext& context, const Plan& empty, const Plan& plan) {
    if (topIsSound(plan) || (plan.tapers && plan.tapers->touched > 0))
        return std::nullopt;
    for (const double shift : shifts()) {
        if (!movable(plan, shift))
            continue;
        StartLine start = plan.start;
        start.girth += shift;
        const auto trial = layFrom(start, {}, context, empty);
        if (trial && topIsSound(*trial))
            return shift;
    }
    return std::nullopt;
}

} // namespace sheerlay::core
