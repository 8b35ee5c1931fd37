#pragma once

#include "core/hull/hull.hpp"
#include "core/surfaces/half_skin.hpp"

#include <Eigen/Core>

namespace sheerlay::core {

/// How far a lofted hull leaves the skin it was taken from.
struct SkinDeviation {
    double rms = 0.0;  ///< mm, along the loft's normal
    double most = 0.0; ///< mm, signed, + where the given skin lies outside the loft
    Eigen::Vector3d where = Eigen::Vector3d::Zero(); ///< mm, boat's frame of the skin
    double sheer = 0.0;                              ///< mm, the farthest that the sheers lie apart
    double lower = 0.0;                              ///< mm, the same of stem and keel
    int points = 0;
};

/// Measures the loft's drawn surface against points of the skin, which lie on the given surface itself.
/// @accuracy  tests/core/surfaces/skin_deviation_test.cpp: 1e-4 mm on a pipe
[[nodiscard]] SkinDeviation skinDeviation(const HalfSkin& skin, const LoftedHull& hull);

} // namespace sheerlay::core
