#pragma once

#include "core/fitout/gunwales.hpp"
#include "core/sheets/compose.hpp"

#include <vector>

namespace sheerlay::core {

/// Both gunwales of a side laid out straight, bow to the left, one under the other: lengths to one scale,
/// widths to a larger one. Scarfs are slanted lines, screws and scuppers stand where they go, stations are
/// named above.
struct GunwaleDrawing {
    std::vector<Item> items; ///< against the upper left corner
    double height = 0.0;     ///< mm
};

/// @param width  mm of paper
/// @param type   mm, size of type
[[nodiscard]] GunwaleDrawing drawGunwales(const Gunwales& gunwales, double width, double type);

} // namespace sheerlay::core
