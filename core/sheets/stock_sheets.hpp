#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"
#include "core/stock/stock_plan.hpp"

#include <array>
#include <vector>

namespace sheerlay::core {

// From boards to strips on paper, for the mill and the bench. Pages come without feet; stockSheets() adds
// them.

/// What to buy, on one page whatever the boat: boards by lot with sizes, what they give, board feet and cost,
/// how to choose them, and what the whole boat takes of each wood.
[[nodiscard]] Sheet boardSheet(const Project& project, const StockPlan& stock, Units units, PageSize size);

/// How boards become strips: what to plane, joint and rip to, the router's test pieces and the test of the
/// cover width; then board by board which pieces each milled strip is cut into, and what is left over.
[[nodiscard]] std::vector<Sheet>
millingSheets(const Project& project, const StockPlan& stock, Units units, PageSize size);

/// Every strip in the order of laying: the pieces it is glued from and where its scarfs lie.
[[nodiscard]] std::vector<Sheet> scarfSheets(const Project& project,
                                             const LoftedHull& hull,
                                             const Plan& plan,
                                             const StockPlan& stock,
                                             Units units,
                                             PageSize size);

/// A label for every piece, to cut apart and tape on: strip, which piece of how many, length to cut, milled
/// strip and wood, an arrow to the bow. In the order of cutting.
[[nodiscard]] std::vector<Sheet>
labelSheets(const Project& project, const StockPlan& stock, Units units, PageSize size);

/// All of them as one set with feet and page numbers; none where the stock plan holds no pieces.
[[nodiscard]] std::vector<Sheet> stockSheets(const Project& project,
                                             const LoftedHull& hull,
                                             const Plan& plan,
                                             const StockPlan& stock,
                                             Units units,
                                             PageSize size);

/// The test of the cover width: what ten strips laid edge to edge may measure, as read off a rule, and what
/// one then covers; mm. What is planned stands in the middle.
/// Rows that strips of that width can't measure are left out.
[[nodiscard]] std::vector<std::array<double, 2>> coverWidthTest(const StripStock& strip, Units units);

} // namespace sheerlay::core
