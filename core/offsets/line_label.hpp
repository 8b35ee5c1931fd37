#pragma once

#include "core/offsets/cell_length.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// What one line of a table (a row where stations stand in columns, else a column) gives for each station.
enum class OffsetLine {
    Unused,
    Heading, ///< says what the lines under it leave out
    StationNames,
    Positions, ///< x of the stations
    SheerHeight,
    SheerBreadth,
    KeelHeight,
    KeelBreadth, ///< half siding, where the planking ends
    Waterline,   ///< half-breadths at a height
    Buttock,     ///< heights at a half-breadth
    Diagonal,    ///< distances along a diagonal
    PointHeight, ///< of a list of points, one per row
    PointBreadth,
};

/// One line of the table with what its label says.
struct TableLine {
    OffsetLine kind = OffsetLine::Unused;
    std::string label;             ///< as in the table, groups in front
    double at = 0.0;               ///< mm: height of a waterline, half-breadth of a buttock
    std::string printedAt;         ///< as in the label
    DiagonalReading diagonal;      ///< of a Diagonal, but for the distance
    bool below = false;            ///< heights are counted downward
    std::optional<PlainUnit> unit; ///< of its plain numbers, where the label names one
};

/// A label taken apart into words and lengths.
struct LabelWords {
    std::vector<std::string> words;   ///< small letters only
    std::vector<std::string> lengths; ///< as written, each with its unit if one follows
    std::optional<double> degrees;
    std::optional<PlainUnit> unit;       ///< named apart from any number: "(mm)", "in inches", "x_in"
    std::optional<PlainUnit> lengthUnit; ///< named behind a number: "WL 4 in"

    [[nodiscard]] bool has(std::initializer_list<std::string_view> any) const;
};
[[nodiscard]] LabelWords labelWords(std::string_view label);

/// What a label means.
/// @param label     its cells, with "|" between them
/// @param group     the heading it stands under, which says what the label leaves out; may be empty
/// @param notation  how plain numbers in labels count
/// @return  none where it means no line of a table; an error where it means one and says too little, such as
///          a waterline without its height: `would` is a label that would do
[[nodiscard]] Expected<std::optional<TableLine>, LengthError>
readLabel(std::string_view label, std::string_view group, const Notation& notation);

/// Whether the words name a line of a table at all.
[[nodiscard]] bool namesALine(std::string_view label, std::string_view group);

} // namespace sheerlay::core
