#pragma once

#include "core/project/project.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// A number further from what the rest of the table wants than this, mm, is no rounding and no unfair spot:
/// the loft is made without it.
[[nodiscard]] inline double grossError(const HullTable& table) noexcept {
    constexpr double units = 6.0;
    constexpr double least = 15.0; // mm
    return table.roundedTo * units > least ? table.roundedTo * units : least;
}

/// The knuckle of each station as the others' bear it out: as printed, but with what its neighbours say in
/// place of a number grossly off their line. It tells which points lie on sides and which on bottom, which a
/// misprint would turn about. An outermost one stands as printed unless it is off by half a foot or more.
/// @return one per station; none at a station without
[[nodiscard]] std::vector<std::optional<TablePoint>> plausibleKnuckle(const HullTable& table);

} // namespace sheerlay::core
