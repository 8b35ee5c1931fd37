#pragma once

#include "core/hull/hull.hpp"
#include "geometry/expected.hpp"
#include "geometry/parallels.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// Nodes of the line the planking starts from, bow to stern, going on past the trims so that rows reach into
/// overhanging ends.
/// @param spacing  mm between nodes
/// @return         the nodes, or in words why the line can't be laid (girth below the keel)
/// @throws std::invalid_argument  the kind is Easiest
[[nodiscard]] Expected<std::vector<geometry::MasterNode>, std::string>
startLine(const TrimmedSurface& hull, const StartLine& start, double spacing);

/// Parameters in which rows may run: the surface's domain.
[[nodiscard]] geometry::ParameterBox rowBox(const TrimmedSurface& hull);

} // namespace sheerlay::core
