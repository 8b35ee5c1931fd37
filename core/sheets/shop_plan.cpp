#include "core/sheets/shop_plan.hpp"

#include "core/planking/uncertainty.hpp"

#include <utility>

namespace sheerlay::core {

ShopPlan planShop(const Project& project,
                  const LoftedHull& hull,
                  Plan plan,
                  const std::function<void(std::string_view)>& stage) {
    const auto begin = [&stage](std::string_view what) {
        if (stage)
            stage(what);
    };
    ShopPlan shop;
    shop.plan = std::move(plan);
    begin("Weighing the table's rounding");
    shop.plan.uncertainty = uncertainty(project, hull, shop.plan);
    if (project.stock)
        begin("Cutting the strips from boards");
    shop.stock = planStock(project, hull, shop.plan);
    if (shop.stock)
        shop.findings = shop.stock->findings;
    shop.after = afterPlanking(project, hull, shop.plan);
    shop.findings.insert(shop.findings.end(), shop.after.findings.begin(), shop.after.findings.end());
    std::vector<Finding>& all = shop.plan.findings;
    all.insert(all.end(), shop.findings.begin(), shop.findings.end());
    shop.findings = heaviestFirst(std::move(shop.findings));
    return shop;
}

} // namespace sheerlay::core
