#pragma once

#include "core/planking/row_width.hpp"

namespace sheerlay::core {

/// A row below the start that is on the moulds, and where its lower edge was found to lie.
struct MeasuredRow {
    int row = 0;             ///< 1, 2, … from the start toward the keel
    RowWidth offset;         ///< mm over x from the bow, + nearer the keel than planned
    double coverWidth = 0.0; ///< mm that the strips really cover: of the rows still to lay
};

} // namespace sheerlay::core
