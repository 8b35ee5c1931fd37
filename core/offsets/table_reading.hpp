#pragma once

#include "core/offsets/cell_grid.hpp"
#include "core/offsets/cell_length.hpp"
#include "core/offsets/line_label.hpp"
#include "core/offsets/table_corrections.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// How a table is read: what every row and column is. Guessed first, then corrected by the builder.
struct TableReading {
    bool stationsInColumns = true;
    std::size_t labels = 1; ///< cells that name a line, in front of the first station's
    Notation notation;
    bool unitFromSize = false;    ///< no unit was said anywhere; the numbers are too large for anything else
    bool pointList = false;       ///< one point of a half section per row: station, half-breadth, height
    std::vector<TableLine> lines; ///< one for every row of the grid, or every column where it is turned
};

/// The notation of one line, whose label may name a unit of its own.
[[nodiscard]] Notation notationOf(const TableReading& reading, std::size_t line);

/// A grid seen with its lines and stations, whichever way it is turned.
class TurnedGrid {
public:
    TurnedGrid(const CellGrid& grid, bool stationsInColumns) : m_grid(&grid), m_columns(stationsInColumns) {}

    [[nodiscard]] std::size_t lines() const { return m_columns ? m_grid->rows.size() : m_grid->columns; }
    [[nodiscard]] std::size_t places() const { return m_columns ? m_grid->columns : m_grid->rows.size(); }
    [[nodiscard]] const std::string& at(std::size_t line, std::size_t place) const {
        return m_columns ? m_grid->at(line, place) : m_grid->at(place, line);
    }
    /// "row 5" or "column 3 (C)"
    [[nodiscard]] std::string lineName(std::size_t line) const;
    [[nodiscard]] std::string placeName(std::size_t place) const;
    /// "row 5, column 3 (C)"
    [[nodiscard]] std::string cellName(std::size_t line, std::size_t place) const;
    /// Which line a builder means by "row 5" or "column 3"; none where there is no such line.
    [[nodiscard]] std::optional<std::size_t> lineNumbered(std::size_t number) const;
    /// Line of the file, from 1.
    [[nodiscard]] int fileLine(std::size_t line, std::size_t place) const;

private:
    const CellGrid* m_grid;
    bool m_columns;
};

/// "row 5", by the line of the file, as a spreadsheet counts; "column 3 (C)", counted from 1.
[[nodiscard]] std::string rowName(const CellGrid& grid, std::size_t row);
[[nodiscard]] std::string columnName(std::size_t column);

/// The label of a line: its first `labels` cells with "|" between them, a blank one filled from the line
/// before where a later one is not blank.
[[nodiscard]] std::string labelOf(const TurnedGrid& grid, std::size_t line, std::size_t labels);

/// Guesses how the table is read; what the corrections say is not guessed.
/// @return  the reading, or everything that has to be said first
[[nodiscard]] Expected<TableReading, std::vector<FileMessage>>
guessReading(const CellGrid& grid, const TableCorrections& corrections, const std::string& file);

/// The reading in whole sentences, one per string: what stands between the cells, units, stations, and what
/// every row or column was taken for.
[[nodiscard]] std::vector<std::string>
describeReading(const CellGrid& grid, const TableReading& reading, const TableCorrections& corrections);

} // namespace sheerlay::core
