#pragma once

#include "core/sheets/shop_plan.hpp"

#include <atomic>
#include <mutex>

namespace sheerlay::ui {

/// What follows the strips, planned when it is first asked for and then shared by every bench. May be asked
/// from any thread; who asks while it is being planned waits.
class ShopOnDemand {
public:
    const core::ShopPlan&
    of(const core::Project& project, const core::LoftedHull& hull, const core::Plan& plan) {
        std::call_once(m_once, [&] {
            m_shop = core::planShop(project, hull, plan);
            m_ready = true;
        });
        return m_shop;
    }
    /// It has been planned: of() does not wait.
    [[nodiscard]] bool ready() const noexcept { return m_ready; }

private:
    std::once_flag m_once;
    std::atomic<bool> m_ready = false;
    core::ShopPlan m_shop;
};

} // namespace sheerlay::ui
