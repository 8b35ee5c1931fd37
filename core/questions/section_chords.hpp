#pragma once

#include "core/project/project.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <vector>

namespace sheerlay::core {

/// A station's points as (half-breadth, height), mm, from the sheer down to its keel; without the keel where
/// the station gives none. A keel whose half-breadth is left out stands at the table's half siding.
[[nodiscard]] std::vector<Eigen::Vector2d> sectionChords(const HullTable& table, std::size_t station);

} // namespace sheerlay::core
