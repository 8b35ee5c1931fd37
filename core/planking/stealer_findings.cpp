#include "core/planking/stealer_findings.hpp"

#include "core/planking/stealer_bands.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace sheerlay::core {
namespace {

constexpr double wider = 0.01; // mm over the cover width that a strip may come out by rounding

/// The strip of the same row and side that the stealer is let in to; it is the longer one.
const Strip* besideStealer(const Strip& stealer, const Plan& plan) {
    for (const Strip& s : plan.strips)
        if (s.row == stealer.row && s.side == stealer.side && s.kind != StripKind::Stealer &&
            s.ends[0].x <= stealer.ends[0].x && s.ends[1].x >= stealer.ends[1].x)
            return &s;
    return nullptr;
}

std::string place(const StripEnd& end) {
    return end.on == EndsOn::Nib ? say("{} from the bow", bothUnits(end.x))
           : end.end == End::Bow ? say("the bow")
                                 : say("the stern");
}

} // namespace

std::optional<std::string> stealerFault(const Plan& plan) {
    for (const Strip& s : plan.strips) {
        if (s.kind != StripKind::Stealer)
            continue;
        const Strip* beside = besideStealer(s, plan);
        if (!beside)
            return say("the strip beside the one in row {} is not whole", s.row);
        for (const Strip* strip : {&s, beside})
            for (const StripSample& sample : strip->samples)
                if (sample.width > plan.coverWidth + wider)
                    return say("strip {} would have to be {} wide", strip->id, bothUnits(sample.width));
    }
    return std::nullopt;
}

void tellNoStealers(const std::string& why, Plan& plan) {
    plan.findings.push_back(
        {Level::Caution,
         "stealers-not-laid",
         std::nullopt,
         std::nullopt,
         say("Stealers would bring more rows within the edge-bend limit, but no sound place "
             "was found for them: {}. The plan does without; start lower, or allow narrower "
             "strips.",
             why)});
}

void tellStealers(const LoftedHull& hull, Plan& plan) {
    const double narrowest = plan.tapers ? plan.tapers->narrowest : 0.0;
    for (const Strip& s : plan.strips) {
        if (s.kind != StripKind::Stealer || s.side == Side::Port)
            continue;
        const Strip* beside = besideStealer(s, plan);
        if (!beside)
            continue;
        const bool both = s.ends[0].on == EndsOn::Nib && s.ends[1].on == EndsOn::Nib;
        plan.findings.push_back(
            {Level::Note,
             "stealer",
             s.id,
             s.ends[s.ends[0].on == EndsOn::Nib ? 0 : 1].x,
             say("Row {} holds a stealer, {}, {} long, from {} to {}: tapers alone can't keep the edge-bend "
                 "limit with no strip planed below {}. Lay it before {}, which has {} after a dry fit.",
                 s.row,
                 s.id,
                 bothUnitsLong(s.length),
                 place(s.ends[0]),
                 place(s.ends[1]),
                 bothUnits(narrowest),
                 beside->id,
                 both
                     ? say("a notch about {} deep for each of its ends; cut the notches", bothUnits(nibWidth))
                     : say("one notch about {} deep for its end; cut the notch", bothUnits(nibWidth)))});
        for (const StripEnd& end : s.ends) {
            if (end.on != EndsOn::Nib)
                continue;
            double nearest = 1e9;
            for (const double x : hull.stationX)
                nearest = std::min(nearest, std::abs(end.x - x));
            if (nearest < nibClear)
                plan.findings.push_back({Level::Caution,
                                         "stealer-ends-at-mould",
                                         s.id,
                                         end.x,
                                         say("The end of stealer {} {} from the bow comes only {} from a "
                                             "mould, and its width leaves "
                                             "no room to move it; fit the joint first and fasten to that "
                                             "mould after the glue has "
                                             "set.",
                                             s.id,
                                             bothUnits(end.x),
                                             bothUnits(nearest))});
        }
    }
}

} // namespace sheerlay::core
