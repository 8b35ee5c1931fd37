#pragma once

#include "core/materials/materials.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"

#include <vector>

namespace sheerlay::core {

/// The materials on one page, whatever the boat: a list for each shop with boxes to tick, what the boards
/// cost, and room to write the other prices in. With its foot.
[[nodiscard]] Sheet
materialsSheet(const Project& project, const std::vector<Material>& materials, Units units, PageSize size);

} // namespace sheerlay::core
