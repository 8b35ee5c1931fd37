#pragma once

#include "core/planking/plan.hpp"

namespace sheerlay::core {

/// Numbers the pieces in an order hands can lay them: each waits for its neighbour toward the start; the
/// first side alternates from row to row (even rows port first) and no side is ever more than a row ahead;
/// with ClosingMethod::RunOver all of port's closing rows go before starboard's; a centre piece comes last.
/// Among the free ones: nearest the start, above before below, first side. Fills in Strip::order.
/// @source closing.md section 9
void orderStrips(Plan& plan, ClosingMethod closing);

/// Which side is laid first in a row.
[[nodiscard]] Side firstSide(int row) noexcept;

} // namespace sheerlay::core
