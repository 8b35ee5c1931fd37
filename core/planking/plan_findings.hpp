#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

namespace sheerlay::core {

/// Adds what the builder should know about the finished plan and sorts all findings, heaviest first.
void findInPlan(const Project& project, Plan& plan);

} // namespace sheerlay::core
