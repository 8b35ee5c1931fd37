#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"

#include <optional>
#include <string>

namespace sheerlay::core {

/// Adds a note for each stealer of the plan: where it lies, how long it is and how it is let in; and a
/// caution where one of its ends comes too close to a mould.
void tellStealers(const LoftedHull& hull, Plan& plan);

/// What is wrong with the plan's stealers as they came out of the laying, in words; none where they and the
/// strips beside them fit and no strip came out wider than it can be.
[[nodiscard]] std::optional<std::string> stealerFault(const Plan& plan);

/// Says why the plan was laid without stealers though they were wanted.
void tellNoStealers(const std::string& why, Plan& plan);

} // namespace sheerlay::core
