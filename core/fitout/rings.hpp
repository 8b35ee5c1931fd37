#pragma once

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// Area inside a closed line whose first point is not repeated, whichever way it runs.
[[nodiscard]] double ringArea(const std::vector<Eigen::Vector2d>& ring);

} // namespace sheerlay::core
