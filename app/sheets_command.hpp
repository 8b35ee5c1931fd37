#pragma once

#include "app/request.hpp"
#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/sheets/shop_plan.hpp"
#include "ui/exports/staging.hpp"

namespace sheerlay::app {

/// Paints the shop's sheets into the folder `request.out`. Needs no display; starts Qt's offscreen platform.
[[nodiscard]] ui::Outcome writeSheets(const Request& request,
                                      core::Project project,
                                      const core::LoftedHull& hull,
                                      const core::ShopPlan& shop);

} // namespace sheerlay::app
