#include "core/journal/compare_plans.hpp"

#include <algorithm>
#include <map>

namespace sheerlay::core {

std::vector<StripChange> changesBelow(const Plan& before, const Plan& after, int row) {
    std::map<std::string, StripChange> byName;
    const auto gather = [&](const Plan& plan, auto cut, auto bend) {
        for (const Strip& strip : plan.strips) {
            if (strip.row <= row || strip.side == Side::Port)
                continue;
            StripChange& change = byName[strip.id];
            change.strip = strip.id;
            change.row = strip.row;
            change.*cut = strip.cutLength;
            change.*bend = strip.edgeBend.maxAbs;
        }
    };
    gather(before, &StripChange::cutBefore, &StripChange::bendBefore);
    gather(after, &StripChange::cutAfter, &StripChange::bendAfter);
    std::vector<StripChange> changes;
    for (auto& [name, change] : byName)
        changes.push_back(std::move(change));
    std::ranges::stable_sort(changes, {}, &StripChange::row);
    return changes;
}

PlanChange changeOf(const Plan& before, const Plan& after, int row) {
    PlanChange change;
    change.piecesBefore = static_cast<int>(before.strips.size());
    change.piecesAfter = static_cast<int>(after.strips.size());
    const auto hardest = [row](const Plan& plan, double& bend, std::string& id) {
        for (const Strip& strip : plan.strips)
            if (strip.row > row && (id.empty() || strip.edgeBend.maxAbs > bend)) {
                bend = strip.edgeBend.maxAbs;
                id = strip.id;
            }
    };
    hardest(before, change.bendBefore, change.hardestBefore);
    hardest(after, change.bendAfter, change.hardestAfter);
    return change;
}

} // namespace sheerlay::core
