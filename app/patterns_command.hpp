#pragma once

#include "app/request.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "ui/exports/staging.hpp"

namespace sheerlay::app {

/// Writes moulds, stem forms and pointed strips at true scale into the folder `request.out`: tiled and roll
/// PDF, DXF, SVG. Needs no display; starts Qt's offscreen platform.
[[nodiscard]] ui::Outcome writePatterns(const Request& request,
                                        const core::Project& project,
                                        const core::LoftedHull& hull,
                                        const core::Plan& plan);

} // namespace sheerlay::app
