#pragma once

#include "core/hull/hull.hpp"
#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/set_cells.hpp"
#include "core/table_edit/table_grid.hpp"

#include <QString>

#include <optional>
#include <vector>

namespace sheerlay::ui {

/// What is known of a cell beside its number.
struct CellSaid {
    std::optional<core::CellLoft> loft;
    std::optional<core::DoubtfulCell> doubt;
    std::optional<core::RefusedEntry> refused; ///< an entry that can't stand in it
};

/// Everything there is to say of a cell, in whole sentences: its name, what the table and the loft have, what
/// is doubted, what was corrected, why an entry can't stand.
/// @param units  of departures; numbers of the table are told as the table writes them
[[nodiscard]] QString cellWords(const core::Project& project,
                                const std::vector<core::GridLine>& lines,
                                core::GridCell cell,
                                const CellSaid& said,
                                core::Units units);

/// A line's name at the head of its row: "Height · buttock 0-6-0".
[[nodiscard]] QString lineLabel(const core::GridLine& line);

} // namespace sheerlay::ui
