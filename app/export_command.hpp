#pragma once

#include "app/request.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <vector>

namespace sheerlay::app {

/// Writes hull, moulds and strips as STEP, glTF and STL, and their tables as CSV, into the folder
/// `request.out`: all of them or none. The same project makes the same files byte for byte.
/// @return  the files written, or one sentence about what stood in the way
[[nodiscard]] Expected<std::vector<std::string>, std::string> writeExports(const Request& request,
                                                                           const core::Project& project,
                                                                           const core::LoftedHull& hull,
                                                                           const core::Plan& plan);

} // namespace sheerlay::app
