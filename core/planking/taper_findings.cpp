#include "core/planking/taper_findings.hpp"

#include "core/planking/tapered_boat.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cstdlib>
#include <string>

namespace sheerlay::core {
namespace {

/// "3 to 5, 9"
std::string listText(const std::set<int>& rows) {
    std::string list;
    for (auto it = rows.begin(); it != rows.end();) {
        const int first = *it;
        int last = first;
        while (++it != rows.end() && *it == last + 1)
            last = *it;
        list += (list.empty() ? "" : ", ") +
                (last > first ? say("{} to {}", first, last) : std::to_string(first));
    }
    return list;
}

void note(const char* code, std::string text, Plan& plan) {
    plan.findings.push_back({Level::Note, code, std::nullopt, std::nullopt, std::move(text)});
}

/// What stays over the limit on one side of the start.
void tellOver(int side, const char* where, int met, Plan& plan) {
    const Strip* worst = nullptr;
    std::set<int> over;
    for (const Strip& s : plan.strips)
        if (s.row * side > 0 && overLimit(s, plan.edgeBendLimit)) {
            over.insert(s.row);
            if (!worst || s.edgeBend.maxAbs > worst->edgeBend.maxAbs)
                worst = &s;
        }
    if (worst == nullptr)
        return;
    if (over.contains(side)) {
        note("taper-met-later",
             say("The start line itself is bent harder than the limit and can't be tapered: {} it the limit "
                 "is "
                 "met from row {} on.",
                 where,
                 met),
             plan);
        return;
    }
    note("taper-not-met",
         say("{} {} the start can't be brought within the limit by tapers: {} still bends to a radius of {} "
             "where {} is wanted. A narrower \"narrowest\", another start line or a softer limit would do.",
             over.size() == 1 ? say("Row {}", listText(over)) : say("Rows {}", listText(over)),
             where,
             worst->id,
             bothUnitsLong(1 / worst->edgeBend.maxAbs),
             bothUnitsLong(1 / plan.edgeBendLimit)),
         plan);
}

} // namespace

std::set<int> taperedRows(const Plan& plan) {
    std::set<int> rows;
    for (const Strip& s : plan.strips)
        if (s.planed != PlanedEdge::None)
            rows.insert(s.row);
    for (const Strip& s : plan.strips)
        if (s.kind == StripKind::Stealer)
            rows.erase(s.row);
    return rows;
}

void tellTapersGivenUp(double with, double without, Plan& plan) {
    plan.findings.push_back({Level::Caution,
                             "tapers-given-up",
                             std::nullopt,
                             std::nullopt,
                             say("The limit, a radius of {}, is out of reach of tapers, so none are planed: "
                                 "with them the hardest strip would bend to a radius of {}, without to {}. "
                                 "Ask a tighter radius, start elsewhere, or use narrower strips.",
                                 bothUnitsLong(1 / plan.edgeBendLimit),
                                 bothUnitsLong(1 / with),
                                 bothUnitsLong(1 / without))});
}

void tellEasedLimit(double limit, Plan& plan) {
    note("taper-limit-eased",
         say("The limit, a radius of {}, is out of reach of tapers on this hull; they are sought for a "
             "radius of {} instead.",
             bothUnitsLong(1 / plan.edgeBendLimit),
             bothUnitsLong(1 / limit)),
         plan);
}

void tellTapers(Plan& plan) {
    if (!plan.tapers)
        return;
    const std::string radius = bothUnitsLong(1 / plan.edgeBendLimit);
    const bool kept =
        std::ranges::none_of(plan.strips, [&](const Strip& s) { return overLimit(s, plan.edgeBendLimit); });
    const std::set<int> rows = taperedRows(plan);
    const std::string planed =
                          rows.size() == 1 ? say("{} row is", rows.size()) : say("{} rows are", rows.size()),
                      plain = bothUnitsLong(1 / plan.tapers->plainWorst);
    if (rows.empty() && plan.tapers->touched == 0 && kept)
        note("no-taper-needed",
             say("No strip needs a taper: none longer than {} is bent edgewise tighter than a radius of {}.",
                 bothUnits(shortScrap),
                 radius),
             plan);
    else if (!rows.empty())
        note(
            "tapered",
            kept
                ? say("{} planed narrower on each side ({}) so that no strip longer than {} is bent edgewise "
                      "tighter than a radius of {}; without tapers the worst would be {}.",
                      planed,
                      listText(rows),
                      bothUnits(shortScrap),
                      radius,
                      plain)
                : say("{} planed narrower on each side ({}); without tapers the worst would be {}.",
                      planed,
                      listText(rows),
                      plain),
            plan);
    tellOver(+1, sayable("below"), plan.tapers->metFromBelow, plan);
    tellOver(-1, sayable("above"), plan.tapers->metFromAbove, plan);
}

} // namespace sheerlay::core
