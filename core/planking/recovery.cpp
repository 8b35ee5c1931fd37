#include "core/planking/recovery.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/planking.hpp"
#include "core/planking/start_search.hpp"
#include "core/planking/strength.hpp"
#include "core/units/both_units.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>

namespace sheerlay::core {
namespace {

bool covers(const Plan& plan) {
    return std::ranges::none_of(plan.findings, [](const Finding& f) {
        return f.level == Level::Stop && (f.code == "rows-fold" || f.code == "uncovered");
    });
}

/// 1/mm, for strips of another width: a strip half as wide bears twice the edge bend.
double limitFor(const Project& project) {
    const Wood* wood = findWood(project.strips.wood);
    return 1 / project.planking.edgeBendRadius.value_or(
                   Strength(*wood, project.strips.thickness, project.strips.width).edgeBendRadius());
}

std::optional<RemedyTried>
lay(Remedy remedy, Project project, const LoftedHull& hull, const std::stop_token& stop) {
    project.planking.shutter.reset(); // the last plank is another question
    RemedyTried t;
    t.remedy = remedy;
    t.start = project.planking.start;
    t.coverWidth = project.strips.coverWidth;
    t.limit = limitFor(project);
    const auto plan = plank(project, hull, nullptr, {{}, stop});
    if (!plan)
        return std::nullopt;
    t.worst = worstEdgeBend(*plan);
    t.touched = plan->tapers ? plan->tapers->touched : 0;
    t.covers = covers(*plan);
    return t;
}

Project halved(Project project) {
    project.strips.width /= 2;
    project.strips.coverWidth /= 2;
    if (project.planking.narrowest)
        *project.planking.narrowest /= 2;
    if (project.planking.edgeBendRadius)
        *project.planking.edgeBendRadius /= 2;
    return project;
}

std::string startText(const StartLine& line) {
    if (line.kind == StartLine::Kind::Sheer)
        return say("along the sheer");
    if (line.kind == StartLine::Kind::Knuckle)
        return say("along the knuckle");
    return line.kind == StartLine::Kind::Geodesic
               ? say("{} below the sheer around the widest section, with a strip that lies without edge bend",
                     bothUnits(line.girth))
               : say("{} below the sheer around the widest section, along the bent line that \"easiest\" "
                     "finds",
                     bothUnits(line.girth));
}

std::string tapersText(const RemedyTried& t) {
    return t.touched == 1 ? say("{} row on each side", t.touched) : say("{} rows on each side", t.touched);
}

} // namespace

bool breaksDown(const Plan& plan) {
    return !covers(plan) || std::ranges::any_of(plan.strips, [&](const Strip& s) {
        return s.edgeBend.maxAbs > std::max(1.02 * plan.edgeBendLimit, bendLimits(s.milledWidth).hard);
    });
}

std::vector<RemedyTried>
findRemedy(const Project& project, const LoftedHull& hull, const Plan& plan, std::stop_token stop) {
    std::vector<RemedyTried> tried;
    // @return whether to stop here
    const auto attempt = [&](Remedy remedy, const Project& with) {
        if (stop.stop_requested())
            return true;
        if (const auto t = lay(remedy, with, hull, stop))
            tried.push_back(*t);
        return stop.stop_requested() || (!tried.empty() && tried.back().helps());
    };
    Project here = project;
    here.planking.start = plan.start;
    Project tapered = here;
    tapered.planking.taper = Taper::Anywhere;
    if (project.planking.taper != Taper::Anywhere && attempt(Remedy::Taper, tapered))
        return tried;
    if (plan.start.kind == StartLine::Kind::Knuckle) { // which stays where it is
        attempt(Remedy::NarrowerStrips, halved(tapered));
        return tried;
    }
    const StartSearch search = searchStart(hull, project.strips, 2, {}, stop);
    if (search.candidates.empty() || search.cancelled)
        return tried;
    here.planking.taper = Taper::None;
    here.planking.start = tapered.planking.start = search.candidates[search.best].line;
    if (!(here.planking.start == plan.start) && // it was searched for already
        (attempt(Remedy::MoveStart, here) || attempt(Remedy::MoveStartAndTaper, tapered)))
        return tried;
    attempt(Remedy::NarrowerStrips, halved(tapered));
    return tried;
}

Finding tellRemedy(const std::vector<RemedyTried>& tried) {
    Finding finding{Level::Caution, "what-would-do", std::nullopt, std::nullopt, ""};
    if (tried.empty()) {
        finding.text = say("No other start line and no tapers could be worked out for this hull; strips of "
                           "half the width bear twice the edge bend and may lie.");
        return finding;
    }
    const RemedyTried& last = tried.back();
    const std::string worst = bothUnitsLong(1 / std::max(last.worst, 1e-9));
    if (!last.helps()) {
        const RemedyTried* best = nullptr; // with strips of the width asked for
        for (const RemedyTried& t : tried)
            if (t.remedy != Remedy::NarrowerStrips && t.covers && (!best || t.worst < best->worst))
                best = &t;
        finding.level = Level::Stop;
        finding.text =
            best ? say("Strips of this width can't cover this hull within what they bear: neither tapers nor "
                       "another start line nor both do, the best still bends edgewise to a radius of {} "
                       "where {} is allowed. Strips of half the width come nearer, but do not do either; "
                       "mill narrower strips still, or ease the bilge.",
                       bothUnitsLong(1 / best->worst),
                       bothUnitsLong(1 / best->limit))
                 : say("Strips of this width can't cover this hull within what they bear: neither tapers nor "
                       "another start line nor both do. Strips of half the width come nearer, but do not do "
                       "either; mill narrower strips still, or ease the bilge.");
        return finding;
    }
    switch (last.remedy) {
    case Remedy::Taper:
        finding.text = say("Tapers would do: from the same start, {} planed narrower leave a radius of {} at "
                           "worst. Set taper to \"anywhere\".",
                           tapersText(last),
                           worst);
        break;
    case Remedy::MoveStart:
        finding.text = say("Another start line would do: {}. It leaves a radius of {} at worst.",
                           startText(last.start),
                           worst);
        break;
    case Remedy::MoveStartAndTaper:
        finding.text = say("Another start line with tapers would do: {}, {} planed narrower. It leaves a "
                           "radius of {} at worst.",
                           startText(last.start),
                           tapersText(last),
                           worst);
        break;
    case Remedy::NarrowerStrips:
        finding.text =
            last.touched > 0
                ? say("Strips of this width can't cover this hull within what they bear, whatever the start "
                      "and the tapers. Narrower ones would do: strips half as wide, covering {}, laid from "
                      "{}, {} tapered, bend to a radius of {} at worst, where {} is allowed.",
                      bothUnits(last.coverWidth),
                      startText(last.start),
                      tapersText(last),
                      worst,
                      bothUnitsLong(1 / last.limit))
                : say("Strips of this width can't cover this hull within what they bear, whatever the start "
                      "and the tapers. Narrower ones would do: strips half as wide, covering {}, laid from "
                      "{}, bend to a radius of {} at worst, where {} is allowed.",
                      bothUnits(last.coverWidth),
                      startText(last.start),
                      worst,
                      bothUnitsLong(1 / last.limit));
        break;
    }
    return finding;
}

void proposeRemedy(const Project& project, const LoftedHull& hull, Plan& plan, std::stop_token stop) {
    if (!breaksDown(plan))
        return;
    plan.findings.push_back(tellRemedy(findRemedy(project, hull, plan, stop)));
    plan.findings = heaviestFirst(std::move(plan.findings));
}

} // namespace sheerlay::core
