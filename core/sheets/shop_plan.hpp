#pragma once

#include "core/afloat/afloat.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/stock/stock_plan.hpp"

#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A plan with all that is told and drawn of it: planned once, here, for text, JSON and paper alike.
struct ShopPlan {
    Plan plan;                      ///< as laid; its uncertainty weighed, its findings joined by those below
    std::optional<StockPlan> stock; ///< none where no boards are described
    AfterPlanking after;            ///< empty where the project asks for none of it
    std::vector<Finding> findings;  ///< of stock and after, heaviest first
};

/// A pure function of what it is given.
/// @param stage  called with what is begun, in a few words
[[nodiscard]] ShopPlan planShop(const Project& project,
                                const LoftedHull& hull,
                                Plan plan,
                                const std::function<void(std::string_view)>& stage = {});

} // namespace sheerlay::core
