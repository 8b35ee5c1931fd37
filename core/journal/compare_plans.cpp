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

} // namespace sheerlay::core
