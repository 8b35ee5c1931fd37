#include "core/planking/stealer_findings.hpp"

#include "core/planking/stealer_bands.hpp"
#include "core/units/both_units.hpp"

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
    return end.on == EndsOn::Nib ? bothUnits(end.x) + " from the bow"
                                 : std::string("the ") + (end.end == End::Bow ? "bow" : "stern");
}

} // namespace

std::optional<std::string> stealerFault(const Plan& plan) {
    for (const Strip& s : plan.strips) {
        if (s.kind != StripKind::Stealer)
            continue;
        const Strip* beside = besideStealer(s, plan);
        if (!beside)
            return "the strip beside the one in row " + std::to_string(s.row) + " is not whole";
        for (const Strip* strip : {&s, beside})
            for (const StripSample& sample : strip->samples)
                if (sample.width > plan.coverWidth + wider)
                    return "strip " + strip->id + " would have to be " + bothUnits(sample.width) + " wide";
    }
    return std::nullopt;
}

void tellNoStealers(const std::string& why, Plan& plan) {
    plan.findings.push_back({Level::Caution,
                             "stealers-not-laid",
                             std::nullopt,
                             std::nullopt,
                             "Stealers would bring more rows within the edge-bend limit, but no sound place "
                             "was found for them: " +
                                 why + ". The plan does without; start lower, or allow narrower strips."});
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
             "Row " + std::to_string(s.row) + " holds a stealer, " + s.id + ", " + bothUnitsLong(s.length) +
                 " long, from " + place(s.ends[0]) + " to " + place(s.ends[1]) +
                 ": tapers alone can't keep the edge-bend limit with no strip planed below " +
                 bothUnits(narrowest) + ". Lay it before " + beside->id + ", which has " +
                 (both ? "a notch" : "one notch") + " about " + bothUnits(nibWidth) + " deep for " +
                 (both ? "each of its ends" : "its end") + "; cut " + (both ? "the notches" : "the notch") +
                 " after a dry fit."});
        for (const StripEnd& end : s.ends) {
            if (end.on != EndsOn::Nib)
                continue;
            double nearest = 1e9;
            for (const double x : hull.stationX)
                nearest = std::min(nearest, std::abs(end.x - x));
            if (nearest < nibClear)
                plan.findings.push_back(
                    {Level::Caution,
                     "stealer-ends-at-mould",
                     s.id,
                     end.x,
                     "The end of stealer " + s.id + " " + bothUnits(end.x) + " from the bow comes only " +
                         bothUnits(nearest) +
                         " from a mould, and its width leaves no room to move it; fit "
                         "the joint first and fasten to that mould after the glue has set."});
        }
    }
}

} // namespace sheerlay::core
