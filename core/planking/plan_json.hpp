#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// plan.json of the contract, UTF-8, without a final newline.
[[nodiscard]] std::string planToJson(const Project& project, const LoftedHull& hull, const Plan& plan);

/// `{ "format": "sheerlay-check", "version": 1, "findings": […] }`
[[nodiscard]] std::string findingsToJson(const std::vector<Finding>& findings);

} // namespace sheerlay::core
