#pragma once

#include "core/journal/what_was_laid.hpp"
#include "core/planking/planking.hpp"

#include <optional>

namespace sheerlay::core {

/// A boat's plan, and what the journal made of it.
struct PlanAsLaid {
    Plan plan;                       ///< from the measured edge on, where there is one; else as planned
    std::optional<WhatWasLaid> laid; ///< none without a usable reading
};

/// Planks the boat and, where the journal holds readings, plans the rows still to lay anew from the lowest
/// edge that was measured, with the cover width to be expected of the strips still to come. Its findings are
/// in the plan.
/// @accuracy  tests/core/journal/replan_test.cpp: from its own edges a plan reproduces itself within 0.01 mm
[[nodiscard]] Expected<PlanAsLaid, PlanError>
plankAsLaid(const Project& project, const LoftedHull& hull, const PlankingWatch& watch = {});

/// Plans the rows below a measured edge anew. @param plan  what the rows above were laid by
[[nodiscard]] Expected<Plan, PlanError> replan(const Project& project,
                                               const LoftedHull& hull,
                                               const Plan& plan,
                                               const MeasuredEdge& edge,
                                               double coverWidth,
                                               const PlankingWatch& watch = {});

} // namespace sheerlay::core
