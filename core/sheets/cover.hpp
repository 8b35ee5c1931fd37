#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"

#include <vector>

namespace sheerlay::core {

/// First pages of the set: the boat in figures, landmarks of the work, findings heaviest first, then the
/// laying order with lengths to cut and boxes to tick, each a little closer where that saves a page. Without
/// page numbers; cutSheets numbers the whole set.
[[nodiscard]] std::vector<Sheet>
coverSheets(const Project& project, const LoftedHull& hull, const Plan& plan, Units units, PageSize size);

} // namespace sheerlay::core
