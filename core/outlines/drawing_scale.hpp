#pragma once

#include "core/offsets/table_corrections.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// The scale of a drawing.
struct DrawingScale {
    double millimetres = 1.0; ///< of one unit
    bool inches = false;      ///< the builder works in inches, by the unit or the beam's notation
    std::vector<std::string> said;
};

/// Finds what one unit of the drawing is: what the builder says, else what the file says, else the one unit
/// that gives the beam the builder says. A beam that is said is always checked, to 2 percent.
/// @param unit    mm to a unit as the file says it
/// @param widest  of the sections, both sides, in the drawing's units
[[nodiscard]] Expected<DrawingScale, LengthError>
drawingScale(std::optional<double> unit, double widest, const TableCorrections& corrections);

} // namespace sheerlay::core
