#pragma once

#include "core/planking/plan.hpp"
#include "core/stock/cutting_problem.hpp"
#include "core/stock/joint_places.hpp"

#include <string>

namespace sheerlay::core {

/// No lot of a wood gives strips that so many units need.
[[nodiscard]] Finding noBoardsOf(const std::string& wood, std::size_t units);

/// A strip that can be cut only against a rule of scarfs, and how long boards would do without.
/// @param rules       what was left of them, not All
/// @param byTheRules  its joint places with all rules kept
/// @param endTrim     mm that each end of a board loses
[[nodiscard]] Finding scarfAgainstRule(const std::string& strip,
                                       RuleKept rules,
                                       const CuttingProblem& problem,
                                       const CutUnit& byTheRules,
                                       double endTrim);

/// A strip that can't be cut at all, and how long boards or a longest piece would do.
/// @param endTrim  mm that each end of a board loses
[[nodiscard]] Finding
boardsTooShort(const std::string& strip, const CuttingProblem& problem, const CutUnit& unit, double endTrim);

/// A strip joined in the bay where the one beside it is.
[[nodiscard]] Finding scarfsSideBySide(const std::string& strip);

} // namespace sheerlay::core
