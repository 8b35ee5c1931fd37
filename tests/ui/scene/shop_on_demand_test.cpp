#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "ui/scene/shop_on_demand.hpp"

#include <thread>
#include <vector>

using namespace sheerlay;

TEST_CASE("whoever asks, from whatever thread, gets the one plan") {
    core::Project project = test::projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay");
    project.stock.reset();
    project.fitout = core::FitoutChoices{};
    const test::Planked boat = test::planked(project);
    ui::ShopOnDemand shop;
    std::vector<const core::ShopPlan*> given(4, nullptr);
    {
        std::vector<std::jthread> threads;
        for (const core::ShopPlan*& one : given)
            threads.emplace_back([&] { one = &shop.of(boat.project, boat.hull, boat.plan); });
    }
    for (const core::ShopPlan* one : given)
        CHECK(one == given.front());
    CHECK(given.front()->after.fitout.has_value());
    CHECK(given.front()->plan.strips.size() == boat.plan.strips.size());
}
