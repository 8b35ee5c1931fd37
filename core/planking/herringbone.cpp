#include "core/planking/herringbone.hpp"

#include "core/planking/laying_order.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {
namespace {

constexpr double flatEnough = 0.25; // of the thickness, that an apex may stand off and still be planed away

bool crosses(const Strip& s, const StripEnd& e) {
    return e.on == EndsOn::Keel && s.kind != StripKind::Shutter && s.side != Side::Centre;
}

} // namespace

HerringboneEnd herringboneEnd(double width, double beta, double dihedral) {
    const double doubled = std::max(std::sin(2 * beta), 1e-3);
    return {width / (2 * doubled), 2 * beta, width / 2 * std::sin(std::numbers::pi - dihedral)};
}

void layHerringbone(Plan& plan, const Project& project) {
    const double w = plan.coverWidth;
    const double allowed = flatEnough * project.strips.thickness;
    int lastSteep = 0;
    double steepest = 0;
    int firstCrossing = 1 << 20;
    for (const Strip& s : plan.strips)
        for (const StripEnd& e : s.ends) {
            if (!crosses(s, e))
                continue;
            firstCrossing = std::min(firstCrossing, s.row);
            const double off = herringboneEnd(w, e.cut, e.dihedral).standOff;
            steepest = std::max(steepest, off);
            if (off > allowed)
                lastSteep = std::max(lastSteep, s.row);
        }
    const int from = std::max(firstCrossing, lastSteep + 1);
    bool any = false;
    for (Strip& s : plan.strips) {
        if (s.row < from)
            continue;
        for (StripEnd& e : s.ends) {
            if (!crosses(s, e))
                continue;
            any = true;
            const HerringboneEnd h = herringboneEnd(w, e.cut, e.dihedral);
            const bool first = s.side == firstSide(s.row);
            const double run = first ? h.run : -h.run;
            e.crossing = KeelCrossing{h.run, first, true};
            e.on = EndsOn::Strip;
            e.cut = std::min(h.cut, std::numbers::pi - h.cut);
            e.runInner = e.runOuter = run;
            s.cutLength += run;
        }
    }
    if (any)
        plan.herringboneFrom = from;
    const std::string why =
        say("where the bottom is a V the point of a strip that crosses the centreline stands off the other "
            "side, by {} at worst, and no more than {} can be planed away",
            bothUnits(steepest),
            bothUnits(allowed));
    if (!any)
        plan.findings.push_back(
            {Level::Caution,
             "herringbone-refused",
             std::nullopt,
             std::nullopt,
             say("No row can cross the centreline by turns: {}. Every row is cut to the centreline instead.",
                 why)});
    else
        plan.findings.push_back(
            {Level::Note,
             "herringbone",
             std::nullopt,
             std::nullopt,
             from > firstCrossing
                 ? say("From row {} on the strips cross the centreline by turns: the side laid first runs "
                       "past it and is cut along the other side's last edge, the other side is then cut "
                       "along its edge. The rows before it are cut to the centreline: {}.",
                       from,
                       why)
                 : say("From row {} on the strips cross the centreline by turns: the side laid first runs "
                       "past it and is cut along the other side's last edge, the other side is then cut "
                       "along its edge.",
                       from)});
}

} // namespace sheerlay::core
