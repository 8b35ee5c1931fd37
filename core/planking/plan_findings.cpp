#include "core/planking/plan_findings.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/neck_findings.hpp"
#include "core/planking/strength.hpp"
#include "core/planking/taper_findings.hpp"
#include "core/units/both_units.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>

namespace sheerlay::core {
namespace {

std::string rowsText(int first, int last) {
    return first == last ? say("Row {}", first) : say("Rows {} to {}", first, last);
}

/// Neighbouring rows whose edge bend is over the limit make one finding, told at the worst of them.
void edgeBends(Plan& plan) {
    // the table tells no finer than this, and tapers, solved to the limit itself, keep it to within 2 percent
    const double over = 1.02 * plan.edgeBendLimit;
    std::map<int, const Strip*> worstOfRow;
    for (const Strip& s : plan.strips)
        if (s.side != Side::Port && s.edgeBend.maxAbs > over) {
            const Strip*& w = worstOfRow[s.row];
            if (!w || s.edgeBend.maxAbs > w->edgeBend.maxAbs)
                w = &s;
        }
    for (auto it = worstOfRow.begin(); it != worstOfRow.end();) {
        const int first = it->first;
        int last = first;
        const Strip* worst = it->second;
        for (++it; it != worstOfRow.end() && (it->first == last + 1 || (last == -1 && it->first == 1));
             ++it) {
            last = it->first;
            if (it->second->edgeBend.maxAbs > worst->edgeBend.maxAbs)
                worst = it->second;
        }
        plan.findings.push_back({Level::Caution,
                                 "edge-bend-over-limit",
                                 worst->id,
                                 worst->edgeBend.atX,
                                 say("{} must be bent edgewise to a radius of {} at worst (strip {}), "
                                     "tighter than the {} that is "
                                     "allowed; start lower, taper, or expect to clamp hard and lose strips.",
                                     rowsText(first, last),
                                     bothUnitsLong(1 / worst->edgeBend.maxAbs),
                                     worst->id,
                                     bothUnitsLong(1 / plan.edgeBendLimit))});
    }
}

void strains(Plan& plan) {
    const Strip* worst = nullptr;
    int count = 0;
    for (const Strip& s : plan.strips)
        if (s.side != Side::Port && s.strainMax > 1.0) {
            ++count;
            if (!worst || s.strainMax > worst->strainMax)
                worst = &s;
        }
    if (!worst)
        return;
    const std::string percent = numberText(100 * worst->strainMax, 0),
                      advice = Strength::advice(Strength::woodUse(worst->strainMax));
    plan.findings.push_back(
        {Level::Caution,
         "strain-over-allowance",
         worst->id,
         worst->strainAtX,
         count == 1
             ? say("{} strip a side uses more than half of the wood's strength, bent edgewise, bent over the "
                   "moulds and twisted together, {} the most ({} percent of the allowance); {}.",
                   count,
                   worst->id,
                   percent,
                   advice)
             : say("{} strips a side use more than half of the wood's strength, bent edgewise, bent over the "
                   "moulds and twisted together, {} the most ({} percent of the allowance); {}.",
                   count,
                   worst->id,
                   percent,
                   advice)});
}

/// Strips that would roll out of the surface between two moulds.
void rolling(const Project& project, Plan& plan) {
    const Wood* wood = findWood(project.strips.wood);
    if (!wood || !(plan.mouldBay > 0))
        return;
    const Strength strength(*wood, project.strips.thickness, project.strips.width);
    const Strip* worst = nullptr;
    int count = 0;
    for (const Strip& s : plan.strips)
        if (s.side != Side::Port && strength.rollsOut(s.edgeBend.maxAbs, plan.mouldBay)) {
            ++count;
            if (!worst || s.edgeBend.maxAbs > worst->edgeBend.maxAbs)
                worst = &s;
        }
    if (!worst)
        return;
    // the free length goes as the edge bend it bears
    const double free = plan.mouldBay / strength.rolling(worst->edgeBend.maxAbs, plan.mouldBay);
    plan.findings.push_back(
        {Level::Caution,
         "strip-rolls-out",
         worst->id,
         worst->edgeBend.atX,
         say("{} out of the surface between moulds {} apart, {} the most: it is bent edgewise to a radius of "
             "{}, and a strip of this section rolls when bent tighter than {}; press it flat between the "
             "moulds as well, at least every {}, before you pull it edgewise.",
             count == 1 ? say("{} strip a side rolls", count) : say("{} strips a side roll", count),
             bothUnits(plan.mouldBay),
             worst->id,
             bothUnitsLong(1 / worst->edgeBend.maxAbs),
             bothUnitsLong(1 / strength.rollingEdgeBend(plan.mouldBay)),
             bothUnits(free))});
}

/// The rows start at a knuckle: no advice to move the start can be followed.
bool fixedStart(const Plan& plan) {
    return plan.start.kind == StartLine::Kind::Knuckle;
}

/// @param move  mm toward the keel that would do away with thin pieces
void smallPieces(Plan& plan, const std::optional<double>& move) {
    const std::string remedy =
        fixedStart(plan) ? say("lower the sheer by as much there, or try another cover width")
        : !move          ? say("lower the sheer by as much there, or try another start")
        : *move > 0
            ? say("with the start line {} nearer the keel no piece would be so thin", bothUnits(*move))
            : say("with the start line {} nearer the sheer no piece would be so thin", bothUnits(-*move));
    for (const Strip& s : plan.strips) {
        if (s.side == Side::Port)
            continue;
        const double wide = widest(s);
        if (s.kind == StripKind::Filler && wide < thinnestFiller)
            plan.findings.push_back(
                {Level::Caution,
                 "thin-filler",
                 s.id,
                 s.ends[0].x,
                 say("This piece at the sheer is only {} wide at its widest; {}.", bothUnits(wide), remedy)});
        else if (s.kind == StripKind::Filler && s.length < shortFiller)
            plan.findings.push_back({Level::Note,
                                     "short-filler",
                                     s.id,
                                     s.ends[0].x,
                                     say("This piece at the sheer is only about {} long; join it with its "
                                         "neighbour in one wider block.",
                                         bothUnits(s.length))});
    }
}

void shutter(Plan& plan) {
    const double w = plan.coverWidth;
    const bool portRunsOver =
        std::any_of(plan.strips.begin(), plan.strips.end(), [](const Strip& s) { return s.planedBack; });
    for (const Strip& s : plan.strips) {
        if (s.kind != StripKind::Shutter || s.side == Side::Port)
            continue;
        const double wide = widest(s);
        const std::string name = s.side == Side::Centre ? say("one plank over both sides")
                                 : portRunsOver ? say("on starboard alone; port's last strip is laid whole "
                                                      "and planed back to the centreline")
                                                : say("one on each side");
        const bool thin = wide < 0.3 * w;
        const double sum = 0.1 * plan.lastRow; // mm
        const std::string real =
            sum < 1 ? say("what the real strips cover more or less than planned")
                    : say("what the real strips cover more or less than planned (a tenth of a millimetre on "
                          "every strip is {} here)",
                          bothUnits(sum));
        plan.findings.push_back(
            {thin ? Level::Caution : Level::Note,
             thin ? "shutter-sliver" : "shutter",
             s.id,
             s.samples[s.samples.size() / 2].x,
             !thin ? say("The shutter ({}) comes out about {} wide, give or take {}; measure before cutting "
                         "it.",
                         name,
                         bothUnits(wide),
                         real)
             : fixedStart(plan)
                 ? say("The shutter ({}) comes out about {} wide, give or take {}; so thin a plank can't be "
                       "fitted well: change the cover width a little.",
                       name,
                       bothUnits(wide),
                       real)
                 : say("The shutter ({}) comes out about {} wide, give or take {}; so thin a plank can't be "
                       "fitted well: shift the start line or the cover width a little.",
                       name,
                       bothUnits(wide),
                       real)});
    }
}

void coverageFinding(Plan& plan) {
    if (std::any_of(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
            return f.code == "uncovered";
        }))
        return; // where and why is told already
    const double missing = plan.coverage.hullArea - plan.coverage.stripsArea;
    const std::string covered = numberText(100 * plan.coverage.stripsArea / plan.coverage.hullArea, 1);
    if (std::abs(missing) > 0.001 * plan.coverage.hullArea)
        plan.findings.push_back(
            {missing > 0 ? Level::Stop : Level::Caution,
             "uncovered",
             std::nullopt,
             std::nullopt,
             fixedStart(plan)
                 ? say("The rows cover {} percent of the hull: parts of it "
                       "can't be reached by rows parallel to the knuckle. Look at its numbers.",
                       covered)
                 : say("The rows cover {} percent of the hull: parts of it "
                       "can't be reached by rows parallel to this start line. Choose another start.",
                       covered)});
}

void closing(Plan& plan) {
    const auto tell = [&](const char* end, const std::optional<int>& row, End which) {
        if (!row)
            return;
        for (const Strip& s : plan.strips)
            if (s.row == *row && s.side != Side::Port) {
                const StripEnd& e = s.ends[which == End::Bow ? 0 : 1];
                plan.findings.push_back({Level::Note,
                                         std::string("closing-begins-") + end,
                                         s.id,
                                         e.x,
                                         say("From row {} on the strips land on the keel line at the {} "
                                             "instead of the stem: closing of the bottom begins.",
                                             *row,
                                             end)});
                return;
            }
    };
    tell("bow", plan.marks.closingBow, End::Bow);
    tell("stern", plan.marks.closingStern, End::Stern);
}

/// Ends that are to land on a stem piece of no thickness.
void stemPieces(const Project& project, Plan& plan) {
    const auto see = [&](EndStyle style, std::size_t end, const char* name) {
        if (style != EndStyle::Stem)
            return;
        for (const Strip& s : plan.strips)
            if (s.ends[end].on == EndsOn::Stem && s.ends[end].landing == 0.0) {
                plan.findings.push_back(
                    {Level::Caution,
                     "stem-without-siding",
                     s.id,
                     s.ends[end].x,
                     say("The strips at the {} are to land on a stem piece, but no half-siding is given for "
                         "it; they are planned to the centreplane, so give the half-siding with the hull or "
                         "choose mitred ends.",
                         name)});
                return;
            }
    };
    see(project.planking.bowEnds, 0, "bow");
    see(project.planking.sternEnds, 1, "stern");
}

} // namespace

void tellStart(const std::vector<StartCandidate>& candidates, Plan& plan) {
    const double hardest = worstEdgeBend(plan);
    const StartCandidate& sheer = candidates.front();
    const std::string bend = numberText(hardest * 1e3, 2);
    const std::string worst = hardest > 0
                                  ? say("the worst edge bend of any strip is then {} per metre (radius {} m)",
                                        bend,
                                        numberText(1e-3 / hardest, 1))
                                  : say("the worst edge bend of any strip is then {} per metre", bend);
    std::string text;
    if (plan.start.kind == StartLine::Kind::Sheer)
        text = sheer.rowsOverFree == 0
                   ? say("The plain sheer will do, since hands bend all its rows: {}.", worst)
                   : say("The plain sheer is about as good a start as any: {}.", worst);
    else {
        const std::string girth = bothUnits(plan.start.girth);
        const std::string line = plan.start.kind == StartLine::Kind::Geodesic
                                     ? say("with a strip that lies without edge bend")
                                     : say("along a line bent a little in its own plane");
        text = sheer.line.kind == StartLine::Kind::Sheer
                   ? say("Start the planking {} below the sheer, measured around the widest section, {}; {}, "
                         "against {} from the sheer without tapers.",
                         girth,
                         line,
                         worst,
                         numberText(sheer.worst * 1e3, 2))
                   : say("Start the planking {} below the sheer, measured around the widest section, {}; {}.",
                         girth,
                         line,
                         worst);
    }
    plan.findings.push_back({Level::Note, "start-found", std::nullopt, std::nullopt, text});
}

void tellLanding(const LandingChange& change, double before, double after, Plan& plan) {
    std::string text;
    if (change.shift != 0) {
        const std::string by = bothUnits(std::abs(change.shift)),
                          where = change.shift > 0 ? say("toward the keel") : say("toward the sheer");
        text = plan.start.kind == StartLine::Kind::Sheer
                   ? say("The start was moved {} {}, which leaves a piece of that width to lay at the sheer,",
                         by,
                         where)
                   : say("The start was moved {} {}", by, where);
    }
    if (change.planed > 0) {
        const std::string planed = numberText(change.planed, 1);
        text = text.empty() ? say("Every strip is to be planed {} mm narrower", planed)
                            : say("{} and every strip is to be planed {} mm narrower", text, planed);
    }
    plan.findings.push_back({Level::Note,
                             "moved-for-shutter",
                             std::nullopt,
                             std::nullopt,
                             say("{} so that {} is left on each side for the shutter instead of {}.",
                                 text,
                                 bothUnits(after),
                                 bothUnits(before))});
}

void tellTop(double shift, Plan& plan) {
    plan.findings.push_back(
        {Level::Note,
         "moved-for-sheer",
         std::nullopt,
         std::nullopt,
         say("The start was moved {} {} of where strips bend least, so that no sliver and "
             "fewer short pieces are left at the sheer.",
             bothUnits(std::abs(shift)),
             shift > 0 ? say("toward the keel") : say("toward the sheer"))});
}

void tellNoTapers(const std::string& where, const std::string& why, Plan& plan) {
    plan.findings.push_back({Level::Caution,
                             "taper-not-found",
                             std::nullopt,
                             std::nullopt,
                             fixedStart(plan)
                                 ? say("No tapers were found for the rows {} the start: {}. They are laid at "
                                       "full width; allow a tighter bend.",
                                       where,
                                       why)
                                 : say("No tapers were found for the rows {} the start: {}. They are laid at "
                                       "full width; start lower, or allow a tighter bend.",
                                       where,
                                       why)});
}

void tellSplit(const std::optional<SplitChoice>& split, Plan& plan) {
    if (split)
        plan.findings.push_back(
            {Level::Note,
             "bottom-split",
             std::nullopt,
             std::nullopt,
             say("From row {} on the bottom is planked by itself, along the centreline, and "
                 "pointed against the row above; its strips bend {} per metre at worst, the "
                 "rows above {}.",
                 split->row,
                 numberText(split->bottom * 1e3, 2),
                 numberText(split->topsides * 1e3, 2))});
    else
        plan.findings.push_back(
            {Level::Caution,
             "bottom-not-split",
             std::nullopt,
             std::nullopt,
             say("No row lands on the keel in a way that a bottom could be split off below it; the rows are "
                 "laid down to the centreline instead.")});
}

void findInPlan(const Project& project, Plan& plan, const std::optional<double>& moveForTop) {
    edgeBends(plan);
    strains(plan);
    rolling(project, plan);
    smallPieces(plan, moveForTop);
    findNecks(plan);
    shutter(plan);
    coverageFinding(plan);
    tellTapers(plan);
    closing(plan);
    stemPieces(project, plan);
    plan.findings = heaviestFirst(std::move(plan.findings));
}

std::vector<Finding> allFindings(const LoftedHull& hull, const Plan& plan) {
    std::vector<Finding> all = hull.findings;
    all.insert(all.end(), plan.findings.begin(), plan.findings.end());
    return heaviestFirst(std::move(all));
}

} // namespace sheerlay::core
