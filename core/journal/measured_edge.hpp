#pragma once

#include "core/journal/smooth_readings.hpp"

#include <vector>

namespace sheerlay::core {

/// Where the lower edge of a row really lies, for the rows below it to start from.
struct MeasuredEdge {
    int row = 0;
    std::vector<double> x;      ///< mm from the bow, rising, at equal steps; at least 4
    std::vector<double> offset; ///< mm square to the edge, + when it lies nearer the keel than planned

    /// mm, at any x: a cubic through the nearest four places; the outermost offset past the ends.
    [[nodiscard]] double at(double place) const;

    friend bool operator==(const MeasuredEdge&, const MeasuredEdge&) = default;
};

/// Samples a smoothed offset every 25 mm at most, and 600 mm past the outermost readings.
[[nodiscard]] MeasuredEdge measuredEdge(int row, const SmoothOffset& offset);

} // namespace sheerlay::core
