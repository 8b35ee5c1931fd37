#pragma once

#include "core/project/messages.hpp"
#include "core/project/project.hpp"
#include "core/project/read_station.hpp"

#include <vector>

namespace sheerlay::core {

/// What can be said about a table of offsets before any surface exists.
/// Errors: stations out of order, one waterline with two half-breadths, no way to know the keel's height.
/// Warnings, because one misprinted cell can cause them and the loft can still name the cell: a point above
/// the sheer, a keel above another point, a point written twice, a hull of unlikely length.
void checkHull(const std::vector<ReadStation>& stations, const HullTable& hull, Messages& messages);

} // namespace sheerlay::core
