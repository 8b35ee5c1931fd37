#pragma once

#include "core/materials/materials.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// The materials as CSV: shop, what, size, amount, unit, price of one, cost. Cells of prices that nobody told
/// are empty.
[[nodiscard]] std::string materialsTable(const std::vector<Material>& materials);

} // namespace sheerlay::core
