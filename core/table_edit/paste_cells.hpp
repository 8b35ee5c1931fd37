#pragma once

#include "core/project/message.hpp"
#include "core/table_edit/set_cells.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A block of cells, both corners in it.
struct GridBlock {
    GridCell first, last;
    [[nodiscard]] std::size_t lines() const noexcept { return last.line - first.line + 1; }
    [[nodiscard]] std::size_t stations() const noexcept { return last.station - first.station + 1; }
};

/// Text cells as they were copied, row by row; rows may be of different length.
using PastedRows = std::vector<std::vector<std::string>>;

/// Cuts what was copied from a spreadsheet, a text file or this table into cells: at tabs where there are
/// any, else at semicolons, else at commas.
/// @return the rows, or why they can't be told: where "100,200" may be one number or two cells
[[nodiscard]] Expected<PastedRows, FileMessage> pastedRows(std::string_view text);

/// Pasted cells laid over the table, and how many had no room.
struct LaidRows {
    std::vector<CellEntry> entries;
    std::size_t leftOff = 0;
};

/// Lays cells from the block's first corner on; a single cell goes into every cell of the block.
/// @param lines, stations  of the whole grid
[[nodiscard]] LaidRows
layRows(const PastedRows& rows, const GridBlock& block, std::size_t lines, std::size_t stations);

/// The block's cells as text, tabs between them, a row a line.
[[nodiscard]] std::string
copiedText(const Project& project, const std::vector<GridLine>& lines, const GridBlock& block);

enum class FillWay {
    Down, ///< the first line's cells into the lines below them
    Along ///< the first station's cells into the stations behind it
};

/// What fills the rest of a block from its first line or station; places are never filled.
[[nodiscard]] std::vector<CellEntry>
fillEntries(const Project& project, const std::vector<GridLine>& lines, const GridBlock& block, FillWay way);

/// Blank entries for every cell of the block that holds something.
[[nodiscard]] std::vector<CellEntry>
blankEntries(const Project& project, const std::vector<GridLine>& lines, const GridBlock& block);

} // namespace sheerlay::core
