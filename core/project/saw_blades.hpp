#pragma once

#include "core/units/length.hpp"

#include <array>
#include <cmath>
#include <cstddef>
#include <optional>

namespace sheerlay::core {

/// Blades that strips are ripped with.
enum class SawBlade : std::size_t { FullKerf, ThinKerf, BandSaw };

/// What each takes, mm, in the order of SawBlade.
/// @source  shop.md of the handbook notes: full and thin kerf; common practice, no source: a band saw's
inline constexpr std::array sawKerfs{mmPerInch / 8, 3 * mmPerInch / 32, mmPerInch / 32};

[[nodiscard]] constexpr double kerfOf(SawBlade blade) {
    return sawKerfs.at(static_cast<std::size_t>(blade));
}

/// The blade that takes so much, to 0.05 mm; none where none does.
[[nodiscard]] inline std::optional<SawBlade> bladeOf(double kerf) {
    constexpr double nearly = 0.05; // mm
    for (std::size_t i = 0; i < sawKerfs.size(); ++i)
        if (std::abs(sawKerfs[i] - kerf) < nearly)
            return static_cast<SawBlade>(i);
    return std::nullopt;
}

} // namespace sheerlay::core
