#pragma once

#include "core/hull/loft_data.hpp"

#include <vector>

namespace sheerlay::core {

/// One of a point's two numbers.
struct CellRef {
    std::size_t point = 0; ///< index into LoftData::points
    bool height = false;
    friend bool operator==(const CellRef&, const CellRef&) = default;
};

/// The numbers that stand out of their own line (waterline, buttock, sheer, keel) or section by more than
/// five robust spreads, three of each kind at most: where the search for misprints starts. Cubic through two
/// neighbours on each side.
[[nodiscard]] std::vector<CellRef> standOut(const HullTable& table, const LoftData& data);

} // namespace sheerlay::core
