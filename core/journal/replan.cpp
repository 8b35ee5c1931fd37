#include "core/journal/replan.hpp"

#include "core/hull/station_names.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/words/say.hpp"

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
    const auto caution = [](Plan& of, const char* code, std::string text) {
        of.findings.push_back({Level::Caution, code, std::nullopt, std::nullopt, std::move(text)});
        of.findings = heaviestFirst(std::move(of.findings));
    };
    const auto unknownStrips = [&](Plan& of) {
        for (const LaidStrip& laid : project.journal.laid)
            if (std::ranges::none_of(of.strips, [&](const Strip& s) { return s.id == laid.strip; }))
                caution(of,
                        "journal-unknown-strip",
                        say("The journal says that strip {} is laid, but the plan has no strip of that name; "
                            "look at line {} of the project.",
                            laid.strip,
                            laid.line));
    };
    unknownStrips(result.plan);
    if (std::ranges::all_of(project.journal.readings,
                            [](const RowReading& r) { return r.girthLeft.empty(); }))
        return result;
    result.laid = whatWasLaid(project.journal, project, hull, result.plan);
    if (!result.laid) {
        const auto told =
            tellUnused(unusedReadings(project.journal, hull, result.plan), hull, stationNames(project, hull));
        result.plan.findings.insert(result.plan.findings.end(), told.begin(), told.end());
        result.plan.findings = heaviestFirst(std::move(result.plan.findings));
        return result;
    }
    auto anew = replan(project,
                       hull,
                       result.plan,
                       result.laid->edge,
                       result.laid->planned + result.laid->ahead.value,
                       watch);
    if (!anew)
        return unexpected(anew.error());
    for (Finding& f : result.plan.findings) // how the start was moved still stands
        if (f.code == "moved-for-shutter" || f.code == "moved-for-sheer")
            anew->findings.push_back(std::move(f));
    anew->candidates = std::move(result.plan.candidates);
    if (!anew->candidates.empty())
        tellStart(anew->candidates, *anew);
    if (project.planking.taper != Taper::None)
        forecastFrom(*anew, hull, *result.laid);
    const auto told = tellWhatWasLaid(*result.laid, hull, stationNames(project, hull));
    anew->findings.insert(anew->findings.end(), told.begin(), told.end());
    anew->findings = heaviestFirst(std::move(anew->findings));
    unknownStrips(*anew);
    result.plan = std::move(*anew);
    return result;
}

} // namespace sheerlay::core
