#pragma once

#include "core/stock/stock_plan.hpp"
#include "ui/scene/boat.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <vector>

namespace sheerlay::ui {

/// A scarf on the map: a stroke across its strip, slanted as the wall map has it.
struct ScarfMark {
    std::size_t strip = 0;                           ///< index into Plan::strips
    Eigen::Vector2d upper = Eigen::Vector2d::Zero(); ///< x, girth of its end at the upper edge, mm
    Eigen::Vector2d lower = Eigen::Vector2d::Zero(); ///< at the lower edge
    double along = 0.0; ///< mm along the strip's middle from its bow end to the scarf's middle
    double x = 0.0;     ///< mm from the bow
};

/// The scarfs of all strips, in the order of Plan::strips.
/// @param map  of the hull whose strips they are
[[nodiscard]] std::vector<ScarfMark>
scarfMarks(const core::Plan& plan, const core::StockPlan& stock, const GirthMap& map);

} // namespace sheerlay::ui
