#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

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

/// A point of a section with the surface's unit normal there, outward.
struct SectionPoint {
    Eigen::Vector3d point, normal;
};

/// Section by the plane x = const, sheer to keel, at about `points` places even in girth; empty where the
/// plane misses the hull. The points lie on the surface; only the chords between them are short.
[[nodiscard]] std::vector<SectionPoint>
sectionWithNormals(const TrimmedSurface& hull, double x, int points = 60);

} // namespace sheerlay::core
