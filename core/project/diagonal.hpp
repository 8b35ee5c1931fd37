#pragma once

#include "core/project/project.hpp"

#include <optional>

namespace sheerlay::core {

/// How far a diagonal slopes down from level, radians, above 0 and below a right angle: by its angle, or from
/// the height it leaves the centreplane at to the point it runs through. None where it slopes up, runs level
/// or never leaves the centreplane.
[[nodiscard]] std::optional<double> slopeOf(const DiagonalReading& reading);

/// The point of the half section that a diagonal's distance stands for, of kind Point. Its printed
/// coordinates are reckoned, in the distance's own notation: feet-inches-eighths, else the units of the file
/// to 0.1 mm or 0.001 in.
/// @return  none where slopeOf gives none
[[nodiscard]] std::optional<TablePoint> pointOnDiagonal(const DiagonalReading& reading, Units units);

} // namespace sheerlay::core
