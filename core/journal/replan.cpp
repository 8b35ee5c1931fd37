#include "core/journal/replan.hpp"

#include "core/hull/station_names.hpp"

#include <algorithm>
#include <iterator>

namespace sheerlay::core {
Expected<Plan, PlanError> replan(const Project& project,
                                 const LoftedHull& hull,
                                 const Plan& plan,
                                 const MeasuredEdge& edge,
                                 double coverWidth,
                                 const PlankingWatch& watch) {
    Project same = project; // the rows above were laid by this plan: no new search, no new shift
    same.planking.start = plan.start;
    same.planking.shutter.reset();
    same.strips.coverWidth = plan.coverWidth;
    const MeasuredRow measured{edge.row, RowWidth(edge.x, edge.offset), coverWidth};
    return plank(same, hull, &measured, watch);
}

Expected<PlanAsLaid, PlanError>
plankAsLaid(const Project& project, const LoftedHull& hull, const PlankingWatch& watch) {
    auto plan = plank(project, hull, nullptr, watch);
    if (!plan)
        return unexpected(plan.error());
    PlanAsLaid result{std::move(*plan), std::nullopt};
    if (project.journal.readings.empty())
        return result;
    result.laid = whatWasLaid(project.journal, project, hull, result.plan);
    if (!result.laid)
        return result;
    auto anew = replan(project,
                       hull,
                       result.plan,
                       result.laid->edge,
                       result.laid->planned + result.laid->excess.value,
                       watch);
    if (!anew)
        return unexpected(anew.error());
    anew->candidates = std::move(result.plan.candidates);
    for (Finding& f : result.plan.findings) // what was decided about the start still stands
        if (f.code == "start-found" || f.code == "moved-for-shutter" || f.code == "moved-for-sheer")
            anew->findings.push_back(std::move(f));
    const auto told = tellWhatWasLaid(*result.laid, hull, stationNames(project, hull));
    anew->findings.insert(anew->findings.end(), told.begin(), told.end());
    std::stable_sort(anew->findings.begin(), anew->findings.end(), [](const Finding& a, const Finding& b) {
        return a.level > b.level;
    });
    result.plan = std::move(*anew);
    return result;
}

} // namespace sheerlay::core
