#pragma once

#include "core/project/project.hpp"

#include <optional>

namespace sheerlay::core {

/// Strips laid edge to edge to find what one covers: ten cover nine times their cover width, and the tenth
/// its whole width, bead included.
/// @source  common practice, no source
inline constexpr int testStrips = 10;

/// mm, what ten laid strips measure across.
[[nodiscard]] double tenStripsMeasure(const StripStock& strip) noexcept;

/// mm, what one strip covers.
/// @param measured  mm, across ten of them
/// @return          none where strips of that width can't measure so
[[nodiscard]] std::optional<double> coverByTenStrips(double measured, const StripStock& strip) noexcept;

} // namespace sheerlay::core
