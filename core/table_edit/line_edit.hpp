#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/table_edit/table_grid.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <string>

namespace sheerlay::core {

/// The project with one waterline or buttock more: at every station whose section crosses it between sheer
/// and keel a number read off the loft and rounded to the table's last digit.
/// @param hull   lofted from `project`
/// @param kind   Waterline or Buttock
/// @param level  its height above the base line, or its half-breadth, as a builder writes it
/// @return       the project, or what was found and what would do: no length, a line the table has, one that
///               crosses no station, a project that would not pass
[[nodiscard]] Expected<Project, LengthError>
insertLine(const Project& project, const LoftedHull& hull, GridLine::Kind kind, const std::string& level);

} // namespace sheerlay::core
