#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// The outer face of the planking, trimmed as the laid surface is: where that is laid on the outside it is
/// the same; else offset from it along the normal.
/// @return  the face, or in words why it does not close
[[nodiscard]] Expected<TrimmedSurface, std::string> outsideSurface(const Project& project,
                                                                   const LoftedHull& hull);

} // namespace sheerlay::core
