#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"
#include "core/sheets/pieces.hpp"
#include "core/stock/stock_plan.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// What cut sheets are drawn from; all of it outlives them.
struct SheetContext {
    const Project& project;
    const LoftedHull& hull;
    const Plan& plan;
    Units units;
    const StockPlan* stock = nullptr; ///< null: sheets tell no scarfs
};

/// The page of one piece, or its pages where one won't do; without feet.
[[nodiscard]] std::vector<Sheet> pieceSheets(const SheetContext& of, const Page& page, const Piece& piece);

/// A piece that shares its page with others: the same told in no more than `height` mm at the head of the
/// page, its name 20 mm high, length to cut 14 mm, table 4 mm at least and notes 3.5 mm; none where that
/// won't do.
[[nodiscard]] std::optional<std::vector<Item>>
smallPiece(const SheetContext& of, const Page& page, const Piece& piece, double height);

} // namespace sheerlay::core
