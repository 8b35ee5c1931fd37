#include "core/planking/start_table.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/planking.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace sheerlay::core {
namespace {

StartTableRow rowOf(const StartLine& line, double stripWidth, const Plan& plan) {
    StartTableRow row;
    row.line = line;
    std::map<int, double> bends; // worst of each row
    for (const Strip& s : plan.strips) {
        row.stripLength += s.cutLength;
        if (s.kind == StripKind::Shutter)
            row.shutter = std::max(row.shutter, widest(s));
        if (s.side == Side::Port)
            continue;
        row.fillers += s.row < 0 ? 1 : 0;
        row.slivers += s.kind == StripKind::Filler && widest(s) < thinnestFiller ? 1 : 0;
        double& worst = bends[s.row];
        worst = std::max(worst, s.edgeBend.maxAbs);
        if (s.edgeBend.maxAbs > row.worst) {
            row.worst = s.edgeBend.maxAbs;
            row.worstRow = s.row;
            row.worstX = s.edgeBend.atX;
        }
    }
    const BendLimits limits = bendLimits(stripWidth);
    for (const auto& [number, bend] : bends) {
        row.rowsOverFree += bend > limits.free ? 1 : 0;
        row.rowsOverClamp += bend > limits.clamp ? 1 : 0;
    }
    return row;
}

} // namespace

std::vector<StartTableRow> compareStarts(const Project& project,
                                         const LoftedHull& hull,
                                         const std::vector<StartLine>& lines,
                                         double limit) {
    std::vector<StartTableRow> table;
    for (const StartLine& line : lines) {
        Project trial = project;
        trial.planking.start = line;
        trial.planking.taper = Taper::None;
        trial.planking.shutter.reset();
        const auto plain = plank(trial, hull);
        if (!plain)
            continue;
        StartTableRow row = rowOf(line, project.strips.width, *plain);
        if (row.worst <= limit) {
            row.tapered = 0;
        } else {
            trial.planking.taper =
                project.planking.taper == Taper::None ? Taper::Anywhere : project.planking.taper;
            trial.planking.edgeBendRadius = 1 / limit;
            if (const auto tapered = plank(trial, hull); tapered && tapered->tapers &&
                                                         tapered->tapers->metFromBelow == 1 &&
                                                         tapered->tapers->metFromAbove == 1)
                row.tapered = tapered->tapers->touched;
        }
        table.push_back(row);
    }
    return table;
}

std::vector<StartLine> linesToCompare(const std::vector<StartCandidate>& candidates,
                                      const StartLine& chosen) {
    constexpr double moved = 10; // mm
    bool stands = false;
    std::vector<StartLine> lines;
    for (const StartLine::Kind kind :
         {StartLine::Kind::Sheer, StartLine::Kind::Geodesic, StartLine::Kind::Bent}) {
        const StartCandidate* best = nullptr;
        for (const StartCandidate& c : candidates)
            if (c.line.kind == kind && (!best || c.worst < best->worst))
                best = &c;
        if (!best)
            continue;
        const bool same = chosen.kind == kind && chosen.edgeBend == best->line.edgeBend &&
                          std::abs(chosen.girth - best->line.girth) <= moved &&
                          std::abs(chosen.shift - best->line.shift) <= moved;
        lines.push_back(same ? chosen : best->line);
        stands = stands || same;
    }
    if (!stands)
        lines.push_back(chosen);
    return lines;
}

} // namespace sheerlay::core
