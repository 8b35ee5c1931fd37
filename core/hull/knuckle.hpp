#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// One place of the line where a hull's surface turns sharply.
struct KnucklePlace {
    double u = 0.0;    ///< surface parameter; v is the surface's crease
    Eigen::Vector3d p; ///< mm
    double turn = 0.0; ///< rad between the planes of the two sides; + outward, as a chine, - hollow
};

inline constexpr double softKnuckle = 15 * 0.017453292519943295; ///< rad: strips could lie over less (judged)

/// The knuckle inside the trims, bow to stern, its ends exactly on them; empty on a smooth hull, and on one
/// whose knuckle lies outside the trims.
/// @param spacing  mm between places, at most
[[nodiscard]] std::vector<KnucklePlace> knuckleLine(const TrimmedSurface& hull, double spacing = 25.0);

/// The same at one x; the nearest place where the line does not reach so far. Only of a line with places.
[[nodiscard]] KnucklePlace
knuckleAt(const TrimmedSurface& hull, const std::vector<KnucklePlace>& line, double x);

} // namespace sheerlay::core
