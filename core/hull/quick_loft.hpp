#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

namespace sheerlay::core {

/// Lofts an edited table anew without looking for misprints, which takes most of the time: numbers that were
/// doubted in `before`, and are still what they were, stay doubted, and out of the loft where they were. For
/// a picture that follows the hand; what is built goes by loft().
/// @param before  lofted from a table with the same datum
/// @accuracy  of a table without a new misprint, loft()'s surface to 0.1 mm:
/// tests/core/hull/quick_loft_test.cpp
[[nodiscard]] Expected<LoftedHull, LoftError> quickLoft(const Project& project, const LoftedHull& before);

} // namespace sheerlay::core
