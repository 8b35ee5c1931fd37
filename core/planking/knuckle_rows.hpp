#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <optional>
#include <string>

namespace sheerlay::core {

/// Why rows can't be laid on a hull with a knuckle as the project asks, or from the knuckle of a hull that
/// has none, in words for the builder; none where they can.
[[nodiscard]] std::optional<std::string> knuckleFault(const Project& project, const LoftedHull& hull);

/// Tells in the plan how the two rows that meet on the knuckle are bevelled, and what could not be done
/// because the start stays where it is.
void tellKnuckle(const Project& project, const LoftedHull& hull, Plan& plan);

/// Bevel of the edge of each strip that meets on the knuckle, rad off square, at x: half of what the sides
/// turn by. None where the hull has no knuckle there.
[[nodiscard]] std::optional<double> knuckleBevel(const LoftedHull& hull, double x);

} // namespace sheerlay::core
