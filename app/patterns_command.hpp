#pragma once

#include "app/request.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <vector>

namespace sheerlay::app {

/// Writes moulds, stem forms and pointed strips at true scale into the folder `request.out`: tiled and roll
/// PDF, DXF, SVG.
/// @return  the files written, or one sentence about what stood in the way
[[nodiscard]] Expected<std::vector<std::string>, std::string> writePatterns(const Request& request,
                                                                            const core::Project& project,
                                                                            const core::LoftedHull& hull,
                                                                            const core::Plan& plan);

} // namespace sheerlay::app
