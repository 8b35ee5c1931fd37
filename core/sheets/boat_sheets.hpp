#pragma once

#include "core/afloat/afloat.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"

#include <vector>

namespace sheerlay::core {

// What follows the planking, on paper. Sets with feet and page numbers; none where the project does not ask
// for it.

/// Cloth to cut, resin coat by coat with a box to tick, what to buy, and the cautions that go with it.
[[nodiscard]] std::vector<Sheet>
coveringSheets(const Project& project, const AfterPlanking& after, Units units, PageSize size);

/// How she floats with her load: profile at the water, figures, righting arms, what she displaces at each
/// draught; then what she weighs, part by part.
[[nodiscard]] std::vector<Sheet>
afloatSheets(const Project& project, const AfterPlanking& after, Units units, PageSize size);

} // namespace sheerlay::core
