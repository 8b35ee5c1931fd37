#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// What planking from one start line would be like: a line of the table that candidates are compared in.
struct StartTableRow {
    StartLine line;
    double worst = 0.0;         ///< 1/mm, largest edge bend of any strip
    int worstRow = 0;           ///< row it is in
    double worstX = 0.0;        ///< mm from the bow
    int rowsOverFree = 0;       ///< rows that need more than hands
    int rowsOverClamp = 0;      ///< rows that need more than clamps
    int fillers = 0;            ///< pieces a side above the start
    int slivers = 0;            ///< of those, narrower than 6 mm
    double stripLength = 0.0;   ///< mm to cut, both sides
    std::optional<int> tapered; ///< rows a side to taper for the limit; none where the limit can't be met
    double shutter = 0.0;       ///< mm, widest of the last plank, or of one of two
};

/// Planks the boat from every line, at full width, and tells what the builder would compare.
/// @param limit  1/mm, edge bend that tapers shall keep
/// @return one row for each line that can be laid, in the same order
[[nodiscard]] std::vector<StartTableRow> compareStarts(const Project& project,
                                                       const LoftedHull& hull,
                                                       const std::vector<StartLine>& lines,
                                                       double limit);

/// The lines worth comparing: of what a search found the sheer, the best geodesic and the best bent line, and
/// the one that is chosen. Where that is one of them, moved by a few mm, it stands in its place.
[[nodiscard]] std::vector<StartLine> linesToCompare(const std::vector<StartCandidate>& candidates,
                                                    const StartLine& chosen);

} // namespace sheerlay::core
