#pragma once

#include "core/offsets/cell_length.hpp"
#include "core/table_edit/table_grid.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// Reads a length as the table's cells are: in builder's notation, plain numbers in the file's units, or
/// refused in a table of feet-inches-eighths; a comma is a decimal comma unless it may stand between
/// thousands.
[[nodiscard]] Expected<CellLength, LengthError> readTyped(const std::string& text, const Project& project);

/// A cell and what is to stand in it; blank, dots and dashes mean "not given".
struct CellEntry {
    GridCell cell;
    std::string text;
    bool correction = false; ///< of a number that is doubted: the one there is kept beside it
    friend bool operator==(const CellEntry&, const CellEntry&) = default;
};

/// An entry that can't stand in the table.
struct RefusedEntry {
    CellEntry entry;
    std::string found; ///< what was found
    std::string would; ///< what would do
};

struct EditedTable {
    Project project;
    std::vector<RefusedEntry> refused; ///< left as they were in `project`
};

/// Puts entries into the table, read by readTyped(). A blank entry takes the point away; both numbers of a
/// single point come and go together. All of them are judged together by the rules of the file; where they do
/// not pass, one by one in their order.
/// @param lines  what `entries` index
[[nodiscard]] EditedTable
setCells(const Project& project, const std::vector<GridLine>& lines, const std::vector<CellEntry>& entries);

} // namespace sheerlay::core
