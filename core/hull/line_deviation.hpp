#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// One number of a line through the stations (or down a section): where it stands and what it says, mm.
struct LineEntry {
    double at = 0.0, value = 0.0;
};

/// How one entry stands to the others.
struct LineDeviation {
    std::size_t entry = 0;
    double fair = 0.0; ///< mm, what the neighbours say
    double size = 0.0; ///< mm, value - fair in units of what rounding alone would scatter it by
};

/// Each inner entry against the polynomial through up to two neighbours on each side (at least one, three in
/// all); those with fewer are passed over.
/// @param line  by increasing `at`
[[nodiscard]] std::vector<LineDeviation> lineDeviations(const std::vector<LineEntry>& line);

/// What is so far off that the whole line speaks against it: more than five robust spreads of all sizes.
/// @param sizes  without order
/// @return none where there are fewer than six
[[nodiscard]] std::optional<double> lineThreshold(std::vector<double> sizes);

} // namespace sheerlay::core
