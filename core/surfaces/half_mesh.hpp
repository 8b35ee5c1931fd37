#pragma once

#include "geometry/mesh.hpp"

namespace sheerlay::core {

/// The part of a mesh on the side of positive y, cut at y = 0; points within `snap` mm of it are put on it.
/// Points that no triangle needs are dropped.
[[nodiscard]] geometry::Mesh halfOf(const geometry::Mesh& mesh, double snap);

} // namespace sheerlay::core
