#include "core/offsets/table_reading.hpp"

namespace sheerlay::core {

std::string rowName(const CellGrid& grid, std::size_t row) {
    return "row " + std::to_string(row < grid.rows.size() ? grid.rows[row].line : 0);
}

std::string columnName(std::size_t column) {
    std::string letters;
    for (std::size_t n = column + 1; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return "column " + std::to_string(column + 1) + " (" + letters + ")";
}

std::string TurnedGrid::lineName(std::size_t line) const {
    return m_columns ? rowName(*m_grid, line) : columnName(line);
}

std::string TurnedGrid::placeName(std::size_t place) const {
    return m_columns ? columnName(place) : rowName(*m_grid, place);
}

std::string TurnedGrid::cellName(std::size_t line, std::size_t place) const {
    return m_columns ? lineName(line) + ", " + placeName(place) : placeName(place) + ", " + lineName(line);
}

Notation notationOf(const TableReading& reading, std::size_t line) {
    Notation notation = reading.notation;
    if (const auto unit = reading.lines[line].unit) {
        notation.plain = *unit;
        notation.feetInchesEighths = false;
    }
    return notation;
}

std::optional<std::size_t> TurnedGrid::lineNumbered(std::size_t number) const {
    for (std::size_t line = 0; line < lines(); ++line)
        if ((m_columns ? static_cast<std::size_t>(m_grid->rows[line].line) : line + 1) == number)
            return line;
    return std::nullopt;
}

int TurnedGrid::fileLine(std::size_t line, std::size_t place) const {
    const std::size_t row = m_columns ? line : place;
    return row < m_grid->rows.size() ? m_grid->rows[row].line : 0;
}

std::string labelOf(const TurnedGrid& grid, std::size_t line, std::size_t labels) {
    std::string label;
    bool later = false;
    for (std::size_t place = labels; place-- > 0;) {
        std::string cell = grid.at(line, place);
        // A merged cell: its words stand in the first of its lines only.
        for (std::size_t above = line; cell.empty() && later && above-- > 0;)
            cell = grid.at(above, place);
        if (cell.empty())
            continue;
        later = true;
        label = label.empty() ? cell : cell + " | " + label;
    }
    return label;
}

} // namespace sheerlay::core
