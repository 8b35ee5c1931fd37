#pragma once

#include "core/hull/hull.hpp"

#include <string>

namespace sheerlay::core {

/// Traces the outline of `surface`, and fills in length, beam, area and girth. Where the keel line does not
/// turn up into a plumb stem by itself, up to 0.4 mm of siding is added to the trims to lead it round.
/// @return the trimmed surface, or in words why it does not close
[[nodiscard]] Expected<TrimmedSurface, std::string> trimSurface(geometry::TensorSurface surface,
                                                                geometry::Trims trims);

/// True girth of the section at x from the sheer to the profile, mm; 0 where the plane misses the hull.
[[nodiscard]] double halfGirthAt(const TrimmedSurface& hull, double x);

/// Surface parameters of the point `girth` mm below the sheer along the section at x.
[[nodiscard]] Eigen::Vector2d parametersAtGirth(const TrimmedSurface& hull, double x, double girth);

} // namespace sheerlay::core
