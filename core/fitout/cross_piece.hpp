#pragma once

#include "core/fitout/hull_faces.hpp"

#include <optional>

namespace sheerlay::core {

/// A board across the boat from side to side, ends cut to plane faces against the hull's inside. Its own
/// axes: fore and aft along its top (`a`, + aft), across, and square to its top (`c`, + up).
struct CrossPiece {
    Eigen::Vector2d front = Eigen::Vector2d::Zero(); ///< mm, (x, z) of its forward upper edge
    double tilt = 0.0;                               ///< rad, + forward edge lower
    double width = 0.0;                              ///< mm fore and aft
    double height = 0.0;                             ///< mm

    double frontTop = 0.0, backTop = 0.0;       ///< mm, lengths along its upper edges, end to end
    double frontBottom = 0.0, backBottom = 0.0; ///< mm, along its lower edges
    double plan = 0.0;                          ///< rad off square on its top; + longer at its after edge
    double section = 0.0;                       ///< rad off square on its faces; + longer at its top
    double gap = 0.0; ///< mm, largest between an end and the hull, along the hull's normal

    /// (x, z) of a place of it: `a` aft of its forward upper edge, `c` above it.
    [[nodiscard]] Eigen::Vector2d at(double a, double c) const;
    /// mm, half its length at a place by its end's plane.
    [[nodiscard]] double halfAt(double a, double c) const;
};

/// Where a cross piece is wanted.
struct CrossPlace {
    Eigen::Vector2d front = Eigen::Vector2d::Zero(); ///< mm, (x, z) of its forward upper edge
    double tilt = 0.0;                               ///< rad, + forward edge lower
    double width = 0.0, height = 0.0;                ///< mm
};

/// Fits the ends' planes into the hull: touching, never through it, with the smallest gap that keeps both
/// bevels.
/// @return none where a corner of it lies above the sheer, below the bottom or beyond an end
/// @accuracy  tests/core/fitout/cross_piece_test.cpp: cylinder, cone, sphere to 0.05 mm and 0.05 degrees
[[nodiscard]] std::optional<CrossPiece> fitAcross(const TrimmedSurface& inside, const CrossPlace& place);

} // namespace sheerlay::core
