#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <cstddef>
#include <string>

namespace sheerlay::core {

/// The project with one station more, read off the loft and rounded to the table's last digit: sheer, keel
/// where a neighbour gives one, and every waterline, buttock and diagonal of the table that crosses it
/// between sheer and keel; where the table has single points only, as many as the nearer neighbour, evenly
/// spread.
/// @param hull   lofted from `project`
/// @param place  where, as a builder writes it, from the table's own zero
/// @return       the project, or what was found and what would do: no length, outside the hull, less than
///               leastApart from a station, a project that would not pass
[[nodiscard]] Expected<Project, LengthError>
insertStation(const Project& project, const LoftedHull& hull, const std::string& place);

/// The project without that station; at least three have to stay.
[[nodiscard]] Expected<Project, LengthError> removeStation(const Project& project, std::size_t station);

inline constexpr double leastApart = 10.0; ///< mm between two stations

} // namespace sheerlay::core
