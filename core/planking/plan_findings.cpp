#include "core/planking/plan_findings.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/strength.hpp"
#include "core/planking/taper_findings.hpp"
#include "core/units/both_units.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>

namespace sheerlay::core {
namespace {

std::string rowsText(int first, int last) {
    return first == last ? "Row " + std::to_string(first)
                         : "Rows " + std::to_string(first) + " to " + std::to_string(last);
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
        plan.findings.push_back(
            {Level::Caution,
             "edge-bend-over-limit",
             worst->id,
             worst->edgeBend.atX,
             rowsText(first, last) + " must be bent edgewise to a radius of " +
                 bothUnitsLong(1 / worst->edgeBend.maxAbs) + " at worst (strip " + worst->id +
                 "), tighter than the " + bothUnitsLong(1 / plan.edgeBendLimit) +
                 " that is allowed; start lower, taper, or expect to clamp hard and lose strips."});
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
    if (worst)
        plan.findings.push_back({Level::Caution,
                                 "strain-over-allowance",
                                 worst->id,
                                 worst->strainAtX,
                                 std::to_string(count) +
                                     (count == 1 ? " strip a side uses" : " strips a side use") +
                                     " more than half of the wood's strength, bent edgewise, bent over the "
                                     "moulds and twisted together, " +
                                     worst->id + " the most (" + numberText(100 * worst->strainMax, 0) +
                                     " percent of the allowance); " +
                                     Strength::advice(Strength::woodUse(worst->strainMax)) + "."});
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
         std::to_string(count) + (count == 1 ? " strip a side rolls" : " strips a side roll") +
             " out of the surface between moulds " + bothUnits(plan.mouldBay) + " apart, " + worst->id +
             " the most: it is bent edgewise to a radius of " + bothUnitsLong(1 / worst->edgeBend.maxAbs) +
             ", and a strip of this section rolls when bent tighter than " +
             bothUnitsLong(1 / strength.rollingEdgeBend(plan.mouldBay)) +
             "; press it flat between the moulds as well, at least every " + bothUnits(free) +
             ", before you pull it edgewise."});
}

/// @param move  mm toward the keel that would do away with thin pieces
void smallPieces(Plan& plan, const std::optional<double>& move) {
    const std::string remedy = !move ? "lower the sheer by as much there, or try another start."
                                     : "with the start line " + bothUnits(std::abs(*move)) + " nearer the " +
                                           (*move > 0 ? "keel" : "sheer") + " no piece would be so thin.";
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
                 "This piece at the sheer is only " + bothUnits(wide) + " wide at its widest; " + remedy});
        else if (s.kind == StripKind::Filler && s.length < shortFiller)
            plan.findings.push_back({Level::Note,
                                     "short-filler",
                                     s.id,
                                     s.ends[0].x,
                                     "This piece at the sheer is only about " + bothUnits(s.length) +
                                         " long; join it with its neighbour in one wider block."});
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
        const std::string name = s.side == Side::Centre ? "one plank over both sides"
                                 : portRunsOver ? "on starboard alone; port's last strip is laid whole "
                                                  "and planed back to the centreline"
                                                : "one on each side";
        const bool thin = wide < 0.3 * w;
        const double sum = 0.1 * plan.lastRow; // mm
        const std::string tenths =
            sum < 1 ? "" : " (a tenth of a millimetre on every strip is " + bothUnits(sum) + " here)";
        plan.findings.push_back(
            {thin ? Level::Caution : Level::Note,
             thin ? "shutter-sliver" : "shutter",
             s.id,
             s.samples[s.samples.size() / 2].x,
             "The shutter (" + name + ") comes out about " + bothUnits(wide) + " wide, give or take " +
                 "what the real strips cover more or less than planned" + tenths +
                 (thin ? "; so thin a plank can't be fitted well: shift the start line or the cover width a "
                         "little."
                       : "; measure before cutting it.")});
    }
}

void coverageFinding(Plan& plan) {
    if (std::any_of(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
            return f.code == "uncovered";
        }))
        return; // where and why is told already
    const double missing = plan.coverage.hullArea - plan.coverage.stripsArea;
    if (std::abs(missing) > 0.001 * plan.coverage.hullArea)
        plan.findings.push_back(
            {missing > 0 ? Level::Stop : Level::Caution,
             "uncovered",
             std::nullopt,
             std::nullopt,
             "The rows cover " + numberText(100 * plan.coverage.stripsArea / plan.coverage.hullArea, 1) +
                 " percent of the hull: parts of it can't be reached by rows parallel to this start "
                 "line. Choose another start."});
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
                                         "From row " + std::to_string(*row) +
                                             " on the strips land on the keel line at the " + end +
                                             " instead of the stem: closing of the bottom begins."});
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
                     std::string("The strips at the ") + name +
                         " are to land on a stem piece, but no half-siding is given for it; they are planned "
                         "to the centreplane, so give the half-siding with the hull or choose mitred ends."});
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
    const std::string worst = "the worst edge bend of any strip is then " + numberText(hardest * 1e3, 2) +
                              " per metre" +
                              (hardest > 0 ? " (radius " + numberText(1e-3 / hardest, 1) + " m)" : "");
    std::string text;
    if (plan.start.kind == StartLine::Kind::Sheer)
        text = sheer.rowsOverFree == 0
                   ? "The plain sheer will do, since hands bend all its rows: " + worst + "."
                   : "The plain sheer is about as good a start as any: " + worst + ".";
    else
        text =
            "Start the planking " + bothUnits(plan.start.girth) +
            " below the sheer, measured around the widest section, " +
            (plan.start.kind == StartLine::Kind::Geodesic ? "with a strip that lies without edge bend"
                                                          : "along a line bent a little in its own plane") +
            "; " + worst +
            (sheer.line.kind == StartLine::Kind::Sheer
                 ? ", against " + numberText(sheer.worst * 1e3, 2) + " from the sheer without tapers."
                 : ".");
    plan.findings.push_back({Level::Note, "start-found", std::nullopt, std::nullopt, text});
}

void tellLanding(const LandingChange& change, double before, double after, Plan& plan) {
    std::string text;
    if (change.shift != 0) {
        text = "The start was moved " + bothUnits(std::abs(change.shift)) +
               (change.shift > 0 ? " toward the keel" : " toward the sheer");
        if (plan.start.kind == StartLine::Kind::Sheer)
            text += ", which leaves a piece of that width to lay at the sheer,";
    }
    if (change.planed > 0)
        text += (text.empty() ? "Every strip is to be planed " : " and every strip is to be planed ") +
                numberText(change.planed, 1) + " mm narrower";
    plan.findings.push_back({Level::Note,
                             "moved-for-shutter",
                             std::nullopt,
                             std::nullopt,
                             text + " so that " + bothUnits(after) +
                                 " is left on each side for the shutter instead of " + bothUnits(before) +
                                 "."});
}

void tellTop(double shift, Plan& plan) {
    plan.findings.push_back({Level::Note,
                             "moved-for-sheer",
                             std::nullopt,
                             std::nullopt,
                             "The start was moved " + bothUnits(std::abs(shift)) +
                                 (shift > 0 ? " toward the keel" : " toward the sheer") +
                                 " of where strips bend least, so that no sliver and fewer short pieces are "
                                 "left at the sheer."});
}

void tellNoTapers(const std::string& where, const std::string& why, Plan& plan) {
    plan.findings.push_back({Level::Caution,
                             "taper-not-found",
                             std::nullopt,
                             std::nullopt,
                             "No tapers were found for the rows " + where + " the start: " + why +
                                 ". They are laid at full width; start lower, or allow a tighter bend."});
}

void tellSplit(const std::optional<SplitChoice>& split, Plan& plan) {
    if (split)
        plan.findings.push_back({Level::Note,
                                 "bottom-split",
                                 std::nullopt,
                                 std::nullopt,
                                 "From row " + std::to_string(split->row) +
                                     " on the bottom is planked by itself, along the centreline, and pointed "
                                     "against the row above; "
                                     "its strips bend " +
                                     numberText(split->bottom * 1e3, 2) +
                                     " per metre at worst, the rows above " +
                                     numberText(split->topsides * 1e3, 2) + "."});
    else
        plan.findings.push_back(
            {Level::Caution,
             "bottom-not-split",
             std::nullopt,
             std::nullopt,
             "No row lands on the keel in a way that a bottom could be split off below it; the "
             "rows are laid down to the centreline instead."});
}

void findInPlan(const Project& project, Plan& plan, const std::optional<double>& moveForTop) {
    edgeBends(plan);
    strains(plan);
    rolling(project, plan);
    smallPieces(plan, moveForTop);
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
