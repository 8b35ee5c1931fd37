#pragma once

#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <string_view>

namespace sheerlay::core {

/// What the tape said at a station, as it was typed.
/// @param shown   units of a plain number where it was typed
/// @param inFile  the project file's; a plain number that it would read otherwise is kept with its unit
[[nodiscard]] Expected<GirthLeft, LengthError>
readGirth(const Station& station, std::string_view typed, Units shown, Units inFile);

/// The journal with a round of readings: joined to the last round where that is of the same row, side and
/// day. A station that was read there before counts as it was read last.
[[nodiscard]] Journal withRound(Journal journal, const RowReading& round);

} // namespace sheerlay::core
