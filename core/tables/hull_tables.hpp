#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/tables/offset_lines.hpp"

#include <string>

namespace sheerlay::core {

/// Offsets re-read from the lofted hull as drawn, one line per station inside it: sheer and keel,
/// half-breadths at waterlines 50 mm (2 in) apart, heights at buttocks 100 mm (4 in) apart. Where a line
/// meets the section more than once the outermost half-breadth and the lowest height are told; where it
/// misses, the cell is empty. Where `lines` names places, offsets stand there instead, and all of them are
/// printed to the table's own last digit.
/// @accuracy  0.05 mm beyond the printed digit: sections are cut about every 2 mm of girth
[[nodiscard]] std::string
offsetTable(const Project& project, const LoftedHull& hull, Units units, const OffsetLines& lines = {});

/// The inside of the planking at every station, sheer to keel: a line per point with half-breadth, height and
/// girth from the sheer.
[[nodiscard]] std::string mouldTable(const Project& project, const LoftedHull& hull, Units units);

} // namespace sheerlay::core
