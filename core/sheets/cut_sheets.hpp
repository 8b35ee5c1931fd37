#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/finding.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"
#include "core/stock/stock_plan.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// The sheets for the wall above the bench, a pure function of the plan: what the boat asks for, the laying
/// order, then one sheet per piece in that order (both sides on one sheet where they are mirror images),
/// going on on a second where one page won't do. Type is sized to be read from 2 m away: name 22 mm and
/// length to cut 14 mm high, table 6 mm, notes 4.5 mm, small print 3 mm; larger in proportion on larger
/// paper. Lengths to cut are rounded up, everything predicted to what the plan can promise. The ends are
/// drawn full size where they fit, so every sheet carries a bar to check the printer's scale with. Where the
/// project has rows share a sheet, those that are told in half a page, or a third of large paper, stand
/// together in their order, in smaller type (smallPiece).
/// @param units  of what is printed
/// @param stock  where given, every sheet tells its pieces and scarfs
[[nodiscard]] std::vector<Sheet> cutSheets(const Project& project,
                                           const LoftedHull& hull,
                                           const Plan& plan,
                                           Units units,
                                           PageSize size,
                                           const StockPlan* stock = nullptr);

/// Tells that rows were to share sheets and none do, since two of them need more than this paper has; none
/// where some do, or the project has one row a page.
/// @param sheets  of this plan, by cutSheets
[[nodiscard]] std::optional<Finding>
rowsAlone(const Project& project, const Plan& plan, const std::vector<Sheet>& sheets, PageSize size);

} // namespace sheerlay::core
