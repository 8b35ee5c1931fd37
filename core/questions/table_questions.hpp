#pragma once

#include "core/hull/hull.hpp"
#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <vector>

namespace sheerlay::core {

/// What the table does not say and a builder should be asked for, each with what hangs on it: bottom-open
/// (nothing between the lowest point and the keel), half-siding-untold, stem-sparse (fewer than three points
/// of a stem), section-below-keel (the loft hangs below its own keel), knuckle-rounded (a
/// chine, which the loft cannot keep). Nothing for a table that tells enough.
/// The half siding is only scanned for where the table is sparse, which takes a second or two.
/// @source table_checks.md section 1, rules 1 to 3
[[nodiscard]] std::vector<Finding> tableQuestions(const Project& project, const LoftedHull& hull);

/// The loft's findings without those that one of the questions tells more fully: bottom-not-given gives way
/// to bottom-open.
[[nodiscard]] std::vector<Finding> besideQuestions(std::vector<Finding> ofLoft,
                                                   const std::vector<Finding>& questions);

} // namespace sheerlay::core
