#pragma once

#include "geometry/expected.hpp"
#include "geometry/shapes.hpp"

#include <string>
#include <vector>

namespace sheerlay::geometry {

/// Writes the shapes as a STEP file (AP214, mm), each a product of its own with its name and colour, in the
/// order given. The header carries a fixed date, so the same shapes make the same file byte for byte.
/// Prints nothing. Not to be called from two threads at once: OpenCASCADE keeps its options in one place.
/// @param title    of the file
/// @param program  name and version of the program, for the header
/// @return  how many shapes were written, or one sentence about what stood in the way
[[nodiscard]] Expected<int, std::string> writeStep(const std::vector<NamedShape>& shapes,
                                                   const std::string& title,
                                                   const std::string& program,
                                                   const std::string& path);

} // namespace sheerlay::geometry
