#pragma once

#include "core/planking/plan.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// Why one piece waits for another.
enum class Waits {
    ForNeighbour,  ///< lies against it, on its own side
    ForPassing,    ///< the other side of the same row is laid first, and passes where the ends are woven
    ForBothSides,  ///< no side runs more than a row ahead of the other
    ForTrimming,   ///< the other side's closing rows are all laid and cut back to the centreline
    ForItsStealer, ///< it is notched to the stealer beside it, after a dry fit
};

/// `then` can't be laid before `first`; both are places in Plan::strips.
struct Dependency {
    std::size_t first = 0, then = 0;
    Waits why = Waits::ForNeighbour;
};

/// Everything that must lie before something else. Free of circles.
/// Each piece waits for what it lies against toward the start. A row's second side waits for its first, the
/// first one for both sides of the row before; fillers wait on their own side only, unless woven. With
/// ClosingMethod::RunOver all of port's closing rows go before any of starboard's. A stealer goes before the
/// strip of its row that is notched to it.
/// @source closing.md section 9
[[nodiscard]] std::vector<Dependency> dependencies(const Plan& plan, ClosingMethod closing);

/// Numbers the pieces in an order that keeps every dependency. Among the free ones: nearest the start, above
/// before below, first side; a shutter after everything else. Fills in Strip::order.
void orderStrips(Plan& plan, ClosingMethod closing);

/// Which side is laid first in a row: by turns, even rows port first; port in all run-over closing rows.
[[nodiscard]] Side firstSide(const Plan& plan, ClosingMethod closing, int row);

/// Sides by turns: even rows port first.
[[nodiscard]] Side firstSide(int row) noexcept;

/// First row of those that one whole side is run over the centreline in, before the other side follows; none
/// with another method or where nothing lands on the keel. Rows still woven at one end are left to take
/// turns.
[[nodiscard]] std::optional<int> runOverFrom(const Plan& plan, ClosingMethod closing);

} // namespace sheerlay::core
