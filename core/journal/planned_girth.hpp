#pragma once

#include "core/hull/hull.hpp"
#include "core/hull/section_tape.hpp"
#include "core/planking/plan.hpp"

#include <optional>

namespace sheerlay::core {

/// What a reading would say if everything were laid as planned.
struct PlannedGirth {
    double left = 0.0;   ///< mm along the mould, from the row's lower edge to the centreline
    double square = 1.0; ///< mm square to the edge for 1 mm along the mould: cosine of the angle between them
};

/// Planned girth left below `row` at x; row 0 is the line the planking starts from. None where the edge does
/// not pass: beyond its ends, or rows the plan does not have.
/// @accuracy  tests/core/journal/planned_girth_test.cpp: pipe within 0.01 mm, canoe against the design
/// figures
[[nodiscard]] std::optional<PlannedGirth>
plannedGirthLeft(const Plan& plan, const LoftedHull& hull, int row, double x);

/// The same for several rows at one station; the tape lies along the mould there.
[[nodiscard]] std::optional<PlannedGirth>
plannedGirthLeft(const Plan& plan, int row, const SectionTape& tape);

/// The last plank by the plan.
struct PlannedLastPlank {
    int lastRow = 0;    ///< last row before it
    double x = 0.0;     ///< mm from the bow, where it is widest
    double width = 0.0; ///< mm there; over both sides when sides is 2
    int sides = 1;      ///< 2 when one plank closes both sides at once
};

/// None where rows do not close on the centreline: a bottom planked by itself, or a plan that stopped.
[[nodiscard]] std::optional<PlannedLastPlank> plannedLastPlank(const Plan& plan, const LoftedHull& hull);

/// Reach of the row's lower edge along the boat, mm from the bow; none when the plan has no such row.
struct Reach {
    double from = 0.0;
    double to = 0.0;
};
[[nodiscard]] std::optional<Reach> reachOf(const Plan& plan, int row);

} // namespace sheerlay::core
