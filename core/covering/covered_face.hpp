#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <array>
#include <vector>

namespace sheerlay::core {

/// How far the weave of a cloth laid straight amidships has had to slide by the time it reaches a place
/// nearer an end. Cloth laid along and across a surface slides by the Gauss curvature under it (Chebyshev's
/// net), and by what the keel line itself turns where the cloth is folded over it.
struct WeaveTurn {
    double x = 0.0; ///< mm from the bow
    double surface =
        0.0;           ///< rad, integral of the Gauss curvature of one side from the widest section to here
    double keel = 0.0; ///< rad, turn of the profile line within the side, + toward the sheer, to here
};

/// One face of the hull, to be covered.
struct CoveredFace {
    double area = 0.0;                                ///< mm2, both sides
    Eigen::Vector3d centre = Eigen::Vector3d::Zero(); ///< mm, of that area
    double halfGirth = 0.0;                           ///< mm, the largest, sheer to keel
    double length = 0.0;     ///< mm, the longest line of even part of the girth, or the sheer
    double keelLength = 0.0; ///< mm, along the profile
    std::array<std::vector<WeaveTurn>, 2> turns; ///< toward the bow, toward the stern; from amidships outward
};

/// @accuracy  tests/core/covering/covered_face_test.cpp: pipe and sphere
[[nodiscard]] CoveredFace measureFace(const TrimmedSurface& face);

} // namespace sheerlay::core
