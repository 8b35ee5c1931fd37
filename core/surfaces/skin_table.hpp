#pragma once

#include "core/project/project.hpp"
#include "core/surfaces/half_skin.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

namespace sheerlay::core {

/// Half sections of a given skin, closely enough that the loft comes back to it: stations at round figures
/// about 1/50 of the length apart and two more in the last gap at each end, 30 stretches of equal girth on
/// each, the stems' profile between. Points lie on the skin's triangles, written to 0.001 mm.
/// @param units  whose round figures the stations stand at
/// @return  the table, or where a section is not one line from sheer to keel
[[nodiscard]] Expected<HullTable, LengthError> skinTable(const HalfSkin& skin, Units units);

} // namespace sheerlay::core
