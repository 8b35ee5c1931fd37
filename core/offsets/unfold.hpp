#pragma once

#include "core/project/project.hpp"

#include <vector>

namespace sheerlay::core {

/// The stations of a boat alike at both ends, of which one end is listed: each is repeated on the other side
/// of the fold; the one at the fold (within 0.5 mm) stands alone.
/// @param fold  mm, x of the middle of the boat
/// @return      in the order of x
[[nodiscard]] std::vector<Station> unfolded(std::vector<Station> listed, double fold);

} // namespace sheerlay::core
