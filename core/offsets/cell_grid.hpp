#pragma once

#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// What stands between the cells of a table.
enum class Separator { Tab, Semicolon, Comma, Spaces };

/// One row of a table as text, trimmed at both ends of each cell.
struct GridRow {
    std::vector<std::string> cells;
    int line = 0; ///< of the file, from 1
};

/// A table cut into cells, nothing of it understood yet. UTF-8.
struct CellGrid {
    std::vector<GridRow> rows; ///< none is empty; lines that begin with # and empty ones are left out
    std::size_t columns = 0;   ///< of the longest row
    Separator separator = Separator::Comma;

    /// The cell's text, empty where the row ends before it.
    [[nodiscard]] const std::string& at(std::size_t row, std::size_t column) const;
};

/// Cuts text at one sign between its cells, quotes as in CSV; blank rows stay, rows that begin with # are
/// left out and show by their lines. Any size; `Separator::Spaces` is none of these signs.
/// @throws std::invalid_argument  Separator::Spaces
[[nodiscard]] Expected<std::vector<GridRow>, FileMessage>
cutRows(std::string_view text, Separator separator, const std::string& file);

/// Cuts pasted or saved spreadsheet text into cells: tab, semicolon, comma or two spaces and more between
/// them, quotes as in CSV. Bytes that are no UTF-8 are taken for Latin-1, as older spreadsheets write them.
/// @param file  only for messages
/// @return      the cells, or why there are none (a spreadsheet's own file, no columns, an open quote)
[[nodiscard]] Expected<CellGrid, FileMessage> splitCells(std::string_view text, const std::string& file);

} // namespace sheerlay::core
