#include "core/moulds/strongback_plan.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

constexpr double beyond = 50; // mm of strongback past what stands on it at either end

} // namespace

double strongbackTop(const Project& project, double highestSheer) noexcept {
    return highestSheer + project.moulds.strongback.clear;
}

StrongbackPlan
planStrongback(const Project& project, const std::vector<Mould>& moulds, double first, double last) {
    const Strongback& wanted = project.moulds.strongback;
    StrongbackPlan plan;
    plan.top = moulds.front().foot;
    plan.from = std::min({first, moulds.front().x, moulds.front().farFace()}) - beyond;
    plan.length = std::max({last, moulds.back().x, moulds.back().farFace()}) + beyond - plan.from;
    plan.width = wanted.width;
    plan.height = wanted.height;
    plan.diagonal = std::hypot(plan.length, plan.width);
    for (const Mould& m : moulds)
        plan.places.push_back(
            {m.name, m.x - plan.from, m.forward, m.foot - m.keel, m.foot - m.sheer, 2 * m.legHalfBreadth});
    plan.checkLength = moulds.back().x - moulds.front().x;
    plan.checkDiagonal = std::hypot(plan.checkLength, plan.width);
    return plan;
}

} // namespace sheerlay::core
