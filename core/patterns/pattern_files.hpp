#pragma once

#include "core/patterns/pattern.hpp"

#include <string>

namespace sheerlay::core {

/// The pattern as DXF R12: layers cut, mark and text, millimetres, which a text says too, since R12 has no
/// units of its own. Chords as in the pattern. The same pattern gives the same bytes.
[[nodiscard]] std::string toDxf(const Pattern& pattern);

/// The pattern as SVG with its size in mm, one user unit to the millimetre, a group for each layer. `y` runs
/// down from the pattern's top.
[[nodiscard]] std::string toSvg(const Pattern& pattern);

} // namespace sheerlay::core
