#include "core/planking/planking.hpp"

#include "core/planking/laying_order.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/row_layer.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/start_search.hpp"
#include "core/units/both_units.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {
namespace {

using geometry::FanSide;

double medianBay(const LoftedHull& hull) {
    std::vector<double> gaps;
    for (std::size_t i = 1; i < hull.stationX.size(); ++i)
        gaps.push_back(hull.stationX[i] - hull.stationX[i - 1]);
    if (gaps.empty())
        return 304.8;
    std::nth_element(gaps.begin(), gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2), gaps.end());
    return gaps[gaps.size() / 2];
}

void markRows(const Project& project, Plan& plan) {
    const auto see =
        [&](End which, EndStyle style, std::optional<RowRange>& weave, std::optional<int>& closing) {
            for (const Strip& s : plan.strips) {
                const StripEnd& e = s.ends[which == End::Bow ? 0 : 1];
                if (e.on == EndsOn::Stem && style == EndStyle::Weave) {
                    if (!weave)
                        weave = RowRange{s.row, s.row};
                    weave->first = std::min(weave->first, s.row);
                    weave->last = std::max(weave->last, s.row);
                }
                if (e.on == EndsOn::Keel && (!closing || s.row < *closing))
                    closing = s.row;
            }
        };
    see(End::Bow, project.planking.bowEnds, plan.marks.weaveBow, plan.marks.closingBow);
    see(End::Stern, project.planking.sternEnds, plan.marks.weaveStern, plan.marks.closingStern);
}

} // namespace

Expected<Plan, PlanError> plank(const Project& project, const LoftedHull& hull) {
    const auto begin = std::chrono::steady_clock::now();
    const Wood* wood = findWood(project.strips.wood);
    if (!wood)
        return unexpected(PlanError{"the wood \"" + project.strips.wood + "\" is not known"});
    const Strength strength(*wood, project.strips.thickness, project.strips.width);
    Plan plan;
    plan.mouldBay = medianBay(hull);
    plan.edgeBendLimit = 1 / project.planking.edgeBendRadius.value_or(strength.edgeBendRadius());
    const LayingContext context{&project, &hull, &strength, plan.mouldBay};

    plan.start = project.planking.start;
    if (plan.start.kind == StartLine::Kind::Easiest) {
        StartSearch search = searchStart(hull, project.strips.coverWidth);
        if (search.candidates.empty())
            return unexpected(PlanError{"no start line could be found on this hull"});
        plan.start = search.candidates[search.best].line;
        tellStart(search, plan);
        plan.candidates = std::move(search.candidates);
    }
    auto master = startLine(hull.laid, plan.start, columnSpacing);
    if (!master)
        return unexpected(PlanError{master.error()});
    if (master->size() < 8)
        return unexpected(PlanError{"the start line is too short to plank from"});
    RowLayer layer(context, plan);
    layer.rows(*master, FanSide::TowardKeel);
    if (plan.start.kind != StartLine::Kind::Sheer)
        layer.rows(*master, FanSide::TowardSheer);
    layer.finish();
    if (plan.strips.empty())
        return unexpected(PlanError{"no strip of this width lies on the hull from this start line"});
    std::stable_sort(plan.strips.begin(), plan.strips.end(), [](const Strip& a, const Strip& b) {
        return a.row != b.row ? a.row < b.row : a.side == Side::Starboard && b.side == Side::Port;
    });
    markRows(project, plan);
    orderStrips(plan, project.planking.closing);
    findInPlan(project, plan);
    plan.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    return plan;
}

} // namespace sheerlay::core
