#pragma once

#include "core/project/project.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// One line of the table: a row of its grid, whose columns are the stations.
struct GridLine {
    enum class Kind {
        Place, ///< where the stations stand
        SheerHeight,
        KnuckleHeight,
        Buttock,
        KeelHeight,
        SheerBreadth,
        KnuckleBreadth,
        Waterline,
        KeelBreadth,
        Diagonal,
        PointHeight,
        PointBreadth
    };
    Kind kind = Kind::Place;
    double level = 0.0;     ///< mm: height of a waterline, half-breadth of a buttock; else 0
    std::string printed{};  ///< the level, as the table first writes it
    std::size_t number = 0; ///< which of several alike at one station, from 0
    std::optional<DiagonalReading> diagonal =
        std::nullopt; ///< its height and slope; the distance is a cell's

    friend bool operator==(const GridLine&, const GridLine&) = default;
};

/// One cell of the grid.
struct GridCell {
    std::size_t line = 0, station = 0;
    friend auto operator<=>(const GridCell&, const GridCell&) = default;
};

/// Every line the table has: places; heights of sheer, knuckle (where there is one), buttocks (outermost
/// first) and keel; half-breadths of sheer, knuckle, waterlines (highest first) and keel; diagonals; single
/// points.
[[nodiscard]] std::vector<GridLine> gridLines(const HullTable& table);

/// Whether two lines are one in the table, however each writes its level.
[[nodiscard]] bool sameLine(const GridLine& a, const GridLine& b);

/// Puts lines into the order of gridLines().
void sortLines(std::vector<GridLine>& lines);

/// The point of a station that a line's cell belongs to; none where the cell is blank, or of places.
[[nodiscard]] const TablePoint* pointOf(const Station& station, const GridLine& line);

/// Whether the line's cells are heights of their points, not half-breadths. Neither of places and diagonals.
[[nodiscard]] bool givesHeight(const GridLine& line);

/// The number of the cell, mm; none where it is blank.
[[nodiscard]] std::optional<double> cellValue(const Station& station, const GridLine& line);

/// The cell as the table writes it; empty where nothing is given.
[[nodiscard]] std::string cellText(const Station& station, const GridLine& line, Units units);

/// What the printed table has where this cell was corrected; empty where it was not.
[[nodiscard]] std::string replacedText(const Station& station, const GridLine& line);

/// "sheer height", "half-breadth at the waterline 0-6-0", …
[[nodiscard]] std::string lineName(const GridLine& line);

/// "Station 3-0-0, sheer height"
[[nodiscard]] std::string cellName(const Project& project, const std::vector<GridLine>& lines, GridCell cell);

} // namespace sheerlay::core
