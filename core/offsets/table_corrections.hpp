#pragma once

#include "core/offsets/cell_length.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// "row 5 = waterline 6 in": what one row or column is.
struct LineAs {
    bool column = false;
    std::size_t number = 0; ///< from 1
    std::string as;
};

/// A direction along one of a file's axes, "-x".
struct AxisDirection {
    int axis = 0; ///< 0, 1, 2: x, y, z
    bool positive = true;
};

/// What the builder says about a table that does not say it itself, or is read wrongly.
struct TableCorrections {
    std::optional<bool> stationsInColumns;
    std::optional<std::size_t> labels;
    std::optional<PlainUnit> units;
    std::optional<DecimalMark> decimal;
    TwoPart twoPart = TwoPart::Unsaid;
    std::optional<std::string> spacing;          ///< of the stations, a length
    std::optional<std::string> waterlineSpacing; ///< waterlines are numbered, this far apart
    std::optional<std::string> buttockSpacing;
    std::optional<std::string> halfSiding;
    std::vector<std::string> profile; ///< points of stems and keel, see saidProfile()
    /// One end stands for both: the station (its name) or the length at which the boat is folded. "no": the
    /// table is not folded even if its stations are named in pairs.
    std::optional<std::string> mirror;
    std::optional<bool> heightsBelow; ///< heights are counted downward
    DrawnTo drawnTo = DrawnTo::Moulds;
    std::optional<std::string>
        beam; ///< of a drawing's widest section, both sides, a length: checks its scale
    std::optional<std::string> centre; ///< x of the centreline in a drawing's own units
    std::optional<std::string> base;   ///< height of the base line in a drawing's own units
    std::optional<AxisDirection> bow;  ///< of a surface file: where the bow points
    std::optional<AxisDirection> up;   ///< of a surface file
    std::vector<std::size_t> faces;    ///< of a surface file: those that are hull, from 0; empty: unsaid
    std::vector<LineAs> lines;
};

/// Reads corrections, each "KEY = VALUE"; several may stand in one text, with line ends between them.
/// @return  the corrections, or one sentence for each that can't be read
[[nodiscard]] Expected<TableCorrections, std::vector<std::string>>
readCorrections(const std::vector<std::string>& said);

} // namespace sheerlay::core
