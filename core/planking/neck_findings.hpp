#pragma once

#include "core/planking/plan.hpp"

namespace sheerlay::core {

/// Tells each piece that grows thin between its ends and wide again: less than 3 mm where it is at least 2 mm
/// wider toward both ends. It breaks there when it is bent, so it is laid as two. One piece a side, starboard
/// or centre.
void findNecks(Plan& plan);

} // namespace sheerlay::core
