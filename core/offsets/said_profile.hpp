#pragma once

#include "core/offsets/cell_length.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string_view>
#include <vector>

namespace sheerlay::core {

/// Points of the stems and the keel as a builder says them beside a table: "0-0-0 at 1-2-0; 0-1-4 at 0-8-0",
/// each the place along the boat, as the stations', and the height there above the base line. A number alone
/// counts in the table's unit.
/// @param fold  mm, where the boat is folded: every point stands on the other side, too
/// @return the points as they are said, or what was found and what would do
[[nodiscard]] Expected<std::vector<ProfilePoint>, LengthError>
saidProfile(std::string_view text, const Notation& notation, std::optional<double> fold = std::nullopt);

} // namespace sheerlay::core
