#pragma once

#include "core/hull/hull.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/surface_fit.hpp"
#include "core/hull/suspect_cells.hpp"

namespace sheerlay::core {

/// Fills in the hull's residuals per station and the findings on table and loft, heaviest first.
void reportLoft(const HullTable& table,
                const LoftData& data,
                const SurfaceFit& fit,
                const std::vector<SuspectCell>& suspects,
                LoftedHull& hull);

} // namespace sheerlay::core
