#pragma once

#include "core/planking/row_columns.hpp"

namespace sheerlay::core {

/// One edge of a piece, bow to stern: along its parallel while that lies inside, along a trim where that cuts
/// it lengthwise.
struct RowEdge {
    std::vector<RowPoint> points;
    bool bowTip = false, sternTip = false; ///< ends on the other edge's end: the piece is pointed there
    bool turnsCorner = false;              ///< it ends on the sheer and follows that to the sheer's own end
    bool followsOnly = false;              ///< the parallel lies nowhere inside
    /// It lands on the keel and follows that to the corner of a transom, on which the other edge ends.
    bool bowKeelCorner = false, sternKeelCorner = false;
};

/// The edge of the piece over columns c0 to c1.
/// @param line                 Parent or Child
/// @param otherBow, otherStern where the other edge ends
[[nodiscard]] RowEdge rowEdge(const RowColumns& columns,
                              Line line,
                              std::size_t c0,
                              std::size_t c1,
                              const std::optional<LineEnd>& otherBow,
                              const std::optional<LineEnd>& otherStern);

/// A vertex closer to an end than this is left out, mm.
inline constexpr double nearEnd = 2.0;

} // namespace sheerlay::core
