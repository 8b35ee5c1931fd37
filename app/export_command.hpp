#pragma once

#include "app/request.hpp"
#include "app/staging.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

namespace sheerlay::app {

/// Writes hull, moulds and strips as STEP, glTF and STL, and their tables as CSV, into the folder
/// `request.out`: all of them or none. The same project makes the same files byte for byte.
[[nodiscard]] Outcome writeExports(const Request& request,
                                   const core::Project& project,
                                   const core::LoftedHull& hull,
                                   const core::Plan& plan);

} // namespace sheerlay::app
