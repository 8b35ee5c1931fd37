#include "core/planking/taper_findings.hpp"

#include "core/planking/tapered_boat.hpp"
#include "core/units/both_units.hpp"

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
        list += (list.empty() ? "" : ", ") + std::to_string(first) +
                (last > first ? " to " + std::to_string(last) : "");
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
             std::string("The start line itself is bent harder than the limit and can't be tapered: ") +
                 where + " it the limit is met from row " + std::to_string(met) + " on.",
             plan);
        return;
    }
    note("taper-not-met",
         std::string(over.size() == 1 ? "Row " : "Rows ") + listText(over) + " " + where +
             " the start can't be brought within the limit by tapers: " + worst->id +
             " still bends to a radius of " + bothUnitsLong(1 / worst->edgeBend.maxAbs) + " where " +
             bothUnitsLong(1 / plan.edgeBendLimit) +
             " is wanted. A narrower \"narrowest\", another start line or a softer limit would do.",
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
    plan.findings.push_back(
        {Level::Caution,
         "tapers-given-up",
         std::nullopt,
         std::nullopt,
         "The limit, a radius of " + bothUnitsLong(1 / plan.edgeBendLimit) +
             ", is out of reach of tapers, so none are planed: with them the hardest strip would bend to a "
             "radius of " +
             bothUnitsLong(1 / with) + ", without to " + bothUnitsLong(1 / without) +
             ". Ask a tighter radius, start elsewhere, or use narrower strips."});
}

void tellEasedLimit(double limit, Plan& plan) {
    note("taper-limit-eased",
         "The limit, a radius of " + bothUnitsLong(1 / plan.edgeBendLimit) +
             ", is out of reach of tapers on this hull; they are sought for a radius of " +
             bothUnitsLong(1 / limit) + " instead.",
         plan);
}

void tellTapers(Plan& plan) {
    if (!plan.tapers)
        return;
    const std::string radius = bothUnitsLong(1 / plan.edgeBendLimit);
    const bool kept =
        std::ranges::none_of(plan.strips, [&](const Strip& s) { return overLimit(s, plan.edgeBendLimit); });
    const std::set<int> rows = taperedRows(plan);
    if (rows.empty() && plan.tapers->touched == 0 && kept)
        note("no-taper-needed",
             "No strip needs a taper: none longer than " + bothUnits(shortScrap) +
                 " is bent edgewise tighter than a radius of " + radius + ".",
             plan);
    else if (!rows.empty())
        note("tapered",
             std::to_string(rows.size()) + (rows.size() == 1 ? " row is" : " rows are") +
                 " planed narrower on each side (" + listText(rows) + ")" +
                 (kept ? " so that no strip longer than " + bothUnits(shortScrap) +
                             " is bent edgewise tighter than a radius of " + radius
                       : "") +
                 "; without tapers the worst would be " + bothUnitsLong(1 / plan.tapers->plainWorst) + ".",
             plan);
    tellOver(+1, "below", plan.tapers->metFromBelow, plan);
    tellOver(-1, "above", plan.tapers->metFromAbove, plan);
}

} // namespace sheerlay::core
