#pragma once

#include "core/fairness/station_bumps.hpp"
#include "core/lines/hull_lines.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Curvature of a line where it crosses a station, 1/mm; none where it does not. A stretch that crosses it
/// twice counts where it does so first.
[[nodiscard]] std::optional<double> curvatureAt(const HullLine& line, double x);

/// The battens in numbers, for a terminal: how far each station stands out, then the curvature of sheer,
/// keel, waterlines, buttocks, diagonals and lines of equal girth at every station, in 1/m to two decimals, +
/// where round, - where hollow.
[[nodiscard]] std::string battensText(const Project& project,
                                      const LoftedHull& hull,
                                      const std::vector<StationBump>& bumps,
                                      Units units);

} // namespace sheerlay::core
