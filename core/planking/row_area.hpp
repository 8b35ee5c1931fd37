#pragma once

#include "core/planking/row_columns.hpp"

namespace sheerlay::core {

/// Area of a row inside the hull over columns c0 to c1, mm2: the Jacobi field integrated across each column
/// and along the master, with the exact ends of the three parallels between columns.
[[nodiscard]] double rowArea(const RowColumns& columns, std::size_t c0, std::size_t c1);

} // namespace sheerlay::core
