#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/stock/stock_plan.hpp"

namespace sheerlay::core {

/// All strips unrolled on one large sheet, A2 to A0 lying: the smallest on which a strip is broad enough to
/// carry its name. The start of the planking is drawn straight and every row lies along it, seen from outside
/// as the boat lies upside down: port above, starboard below, the keel between them. Lengths along the strips
/// are true to the printed scale, measured from the widest section; widths are drawn several times wider, and
/// the sheet says how many. Names, laying order, class of edge bend in colour and word, stations, woven ends,
/// closing and shutter; scarfs where a stock plan is given.
[[nodiscard]] Sheet wallMap(const Project& project,
                            const LoftedHull& hull,
                            const Plan& plan,
                            Units units,
                            const StockPlan* stock = nullptr);

} // namespace sheerlay::core
