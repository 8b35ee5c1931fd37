#pragma once

#include "core/project/project.hpp"

#include <cstddef>
#include <vector>

namespace sheerlay::core {

/// Where a station's section turns all at once instead of round: a chine or knuckle, by the look of it.
struct HardTurn {
    std::size_t station = 0;  ///< index into HullTable::stations
    double halfBreadth = 0.0; ///< mm, of the point it turns at
    double height = 0.0;      ///< mm
    double angle = 0.0;       ///< rad it turns there
};

/// Turns of more than 25 degrees at one point, and little beside it: each neighbouring point turns by less
/// than a third of that, and the chords on both sides are long enough to tell. At most one a station. A bilge
/// read at too few points can look like one, so only turns that go on over three stations and more are given.
[[nodiscard]] std::vector<HardTurn> hardTurns(const HullTable& table);

} // namespace sheerlay::core
