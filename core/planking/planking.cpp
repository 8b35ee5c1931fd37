#include "core/planking/planking.hpp"

#include "core/planking/accent_rows.hpp"
#include "core/planking/aim_start.hpp"
#include "core/planking/herringbone.hpp"
#include "core/planking/knuckle_rows.hpp"
#include "core/planking/laying_order.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/start_search.hpp"
#include "core/planking/stealer_findings.hpp"
#include "core/planking/strip_ends.hpp"
#include "core/planking/taper_findings.hpp"
#include "core/planking/tapered_boat.hpp"
#include "core/units/both_units.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {
namespace {

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

/// The boat from one given line, with the tapers it wants and the shutter that was asked for.
Expected<Plan, PlanError> layWhole(const StartLine& start,
                                   const LayingContext& context,
                                   const Plan& empty,
                                   const MeasuredRow* measured) {
    auto boat = layTapered(start, context, empty, measured);
    if (!boat)
        return unexpected(boat.error());
    Plan plan = std::move(boat->plan);
    const bool movable = start.kind != StartLine::Kind::Knuckle;
    if (context.project->planking.shutter && !measured && movable)
        aimShutter(*boat, context, empty, plan);
    else if (context.project->planking.start.kind == StartLine::Kind::Easiest && empty.accentRows.empty() &&
             !measured)
        clearTop(boat->widths, context, boat->base, plan);
    noteMet(plan);
    // a measured edge and a bottom of its own have other tapers than those first solved for
    if (plan.tapers && (measured || context.project->planking.closing == ClosingMethod::SplitBottom))
        plan.tapers->touched = static_cast<int>(taperedRows(plan).size());
    return plan;
}

} // namespace

Expected<Plan, PlanError> plank(const Project& project,
                                const LoftedHull& hull,
                                const MeasuredRow* measured,
                                const PlankingWatch& watch) {
    const auto stopped = [&] { return watch.stop.stop_requested(); };
    const auto wasStopped = [] { return unexpected(PlanError{"the planking was stopped"}); };
    const auto begin = std::chrono::steady_clock::now();
    const Wood* wood = findWood(project.strips.wood);
    if (!wood)
        return unexpected(PlanError{"the wood \"" + project.strips.wood + "\" is not known"});
    const Strength strength(*wood, project.strips.thickness, project.strips.width);
    Plan empty;
    empty.mouldBay = medianBay(hull);
    empty.edgeBendLimit = 1 / project.planking.edgeBendRadius.value_or(strength.edgeBendRadius());
    LayingContext context{&project, &hull, &hull.laid, &strength, empty.mouldBay};
    context.stop = watch.stop;

    StartLine start = project.planking.start;
    if (const auto fault = knuckleFault(project, hull))
        return unexpected(PlanError{*fault});
    if (start.kind == StartLine::Kind::Easiest) {
        StartSearch search = searchStart(hull, project.strips, 2, watch.progress, watch.stop);
        if (stopped())
            return wasStopped();
        if (search.candidates.empty())
            return unexpected(PlanError{"no start line could be found on this hull"});
        start = search.candidates[search.best].line;
        empty.candidates = std::move(search.candidates);
    }
    if (!project.planking.shutter && !measured) // the last plank's wish moves the start, too
        start = aimAtAccent(project, hull, start);
    empty.accentRows = accentRows(project, hull, start, empty.findings);
    auto laid = layWhole(start, context, empty, measured);
    if (stopped())
        return wasStopped();
    if (laid)
        if (const auto fault = stealerFault(*laid)) {
            LayingContext without = context;
            without.stealers = false;
            laid = layWhole(start, without, empty, measured);
            if (laid)
                tellNoStealers(*fault, *laid);
        }
    if (!laid)
        return unexpected(laid.error());
    if (stopped())
        return wasStopped();
    Plan plan = std::move(*laid);
    std::stable_sort(plan.strips.begin(), plan.strips.end(), [](const Strip& a, const Strip& b) {
        return a.row != b.row ? a.row < b.row : a.side == Side::Starboard && b.side == Side::Port;
    });
    markRows(project, plan);
    markAccents(project, hull, plan);
    weaveEnds(plan, project, hull);
    leaveRunningOver(plan, project.planking.closing);
    if (project.planking.closing == ClosingMethod::Herringbone)
        layHerringbone(plan, project);
    orderStrips(plan, project.planking.closing);
    tellStealers(hull, plan);
    if (!plan.candidates.empty())
        tellStart(plan.candidates, plan);
    if (start.kind == StartLine::Kind::Knuckle)
        tellKnuckle(project, hull, plan);
    const bool ownStart = project.planking.start.kind != StartLine::Kind::Easiest &&
                          project.planking.start.kind != StartLine::Kind::Knuckle;
    const bool free = ownStart && !measured && !project.planking.shutter; // else it is moved already, or held
    findInPlan(project, plan, free ? moveForTop(context, empty, plan) : std::nullopt);
    plan.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    return plan;
}

} // namespace sheerlay::core
