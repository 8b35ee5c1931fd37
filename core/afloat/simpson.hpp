#pragma once

#include <vector>

namespace sheerlay::core {

/// Multipliers of Simpson's first rule for ordinates at these places, spacing included: the integral is the
/// sum of ordinate times multiplier. Places come in pairs of equal intervals; the interval may change from
/// pair to pair, as with half stations at the ends.
/// @param places  rising, an odd count of at least three
/// @throws std::invalid_argument  the places do not come in pairs of equal intervals
/// @accuracy      exact for cubics within each pair
[[nodiscard]] std::vector<double> simpsonMultipliers(const std::vector<double>& places);

} // namespace sheerlay::core
