#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <optional>
#include <stop_token>

namespace sheerlay::core {

/// How far the rounding of the table moves the figures of `plan`: hulls drawn from the table's rounding are
/// planked from the same start line with the same cover width, all strips untapered, and compared row by row.
/// A pure function; the threads do not change the result.
/// @param samples  hulls to draw; 24 give a deviation to about 15 percent
/// @return none when stopped, or where the table does not give this hull
/// @accuracy  tests/core/planking/uncertainty_test.cpp: a table rounded many ways keeps within two deviations
[[nodiscard]] std::optional<PlanUncertainty> uncertainty(const Project& project,
                                                         const LoftedHull& hull,
                                                         const Plan& plan,
                                                         unsigned samples = 24,
                                                         unsigned threads = 2,
                                                         std::stop_token stop = {});

} // namespace sheerlay::core
