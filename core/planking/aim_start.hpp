#pragma once

#include "core/planking/measures.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/tapered_boat.hpp"

#include <optional>

namespace sheerlay::core {

/// Moves the start, and as a last resort planes every strip a little, until the shutter has the width the
/// project wants. The midship arithmetic only proposes; each try is laid and judged by what comes out, and
/// the plan's findings say what was changed. The tapers stay as they were solved where they keep the limit
/// from the moved start as well; else they are solved anew from there.
/// @param boat   as laid from the start without that wish
/// @param empty  the plan before a strip was laid and tapers were solved
void aimShutter(const LaidBoat& boat, const LayingContext& context, const Plan& empty, Plan& plan);

/// Moves a start that the program chose by up to 9 mm so that no piece at the sheer is thinner than 6 mm and
/// few are short, unless that would bend a strip harder. The plan's findings say so.
/// @source closing.md section 3
void clearTop(const Widths& widths, const LayingContext& context, const Plan& empty, Plan& plan);

/// For a start that the builder chose: mm toward the keel that it would have to move for no piece at the
/// sheer to be thinner than 6 mm. None where there is no such piece, where up to 9 mm do not help, or where
/// rows are tapered, which a moved start would have solved anew.
/// @param plan  with rows above its start
[[nodiscard]] std::optional<double>
moveForTop(const LayingContext& context, const Plan& empty, const Plan& plan);

} // namespace sheerlay::core
