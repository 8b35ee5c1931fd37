#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace sheerlay::core {

/// How hard the rows of a start line are, untapered: rows every cover width both ways, nodes 25 mm apart,
/// edge bend from the Jacobi field, only inside the hull.
/// @return none where the line can't be laid
[[nodiscard]] std::optional<StartCandidate>
judgeStart(const LoftedHull& hull, const StartLine& line, const StripStock& strips);

struct StartSearch {
    std::vector<StartCandidate>
        candidates;           ///< sheer first, then geodesics by girth, then bent lines; all judged alike
    std::size_t best = 0;     ///< the one to take
    bool sheerWillDo = false; ///< the plain sheer is within 0.03 /m of the best, or hands bend all its rows
    bool cancelled = false;
};

/// Searches the easiest start line: geodesics by girth first, then the edge-bend profile k0, k2, k4 from
/// several starts (simplex on a high norm of the edge bend, then the true maximum). A bent line is taken only
/// if it gains more than 0.02 /m over the best geodesic, and anything else than the sheer only if it gains
/// more than 0.03 /m over the sheer and the sheer's rows need more than hands. Deterministic for any number
/// of threads.
/// @param progress  called from worker threads with the part done, 0 to 1; may be empty
/// @source closing.md section 8, planking.md section 4
[[nodiscard]] StartSearch searchStart(const LoftedHull& hull,
                                      const StripStock& strips,
                                      unsigned threads = 2,
                                      const std::function<void(double)>& progress = {},
                                      std::stop_token stop = {});

} // namespace sheerlay::core
