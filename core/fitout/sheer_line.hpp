#pragma once

#include "core/hull/hull.hpp"
#include "core/project/fitout_choices.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// A place of the sheer, with what a stick bent along it has to do there.
struct SheerPoint {
    double s = 0.0; ///< mm along the sheer from its bow end
    Eigen::Vector3d point = Eigen::Vector3d::Zero();
    Eigen::Vector3d along = Eigen::Vector3d::Zero(); ///< unit, toward the stern
    /// Unit, square to `along`: out of the boat and up. Square: `out` is level. Side: `out` is the face's
    /// normal.
    Eigen::Vector3d out = Eigen::Vector3d::Zero(), up = Eigen::Vector3d::Zero();
    double flare = 0.0; ///< rad, lean of the side from plumb, square to the run; + outward going up
    double bend = 0.0;  ///< 1/mm across the boat, + where it bends round the hull
    double edge = 0.0;  ///< 1/mm up and down, + toward the keel
    double twist = 0.0; ///< rad/mm
};

/// The upper edge of a face, bow to stern, in `parts` equal steps of its parameter.
/// @param stand  whose axes bend, edge and twist are told in
/// @accuracy  tests/core/fitout/sheer_line_test.cpp: length of circles and helices to 0.01 mm
[[nodiscard]] std::vector<SheerPoint>
sheerLine(const TrimmedSurface& face, GunwaleChoices::Stand stand, int parts = 400);

/// Between two points of the line at x, by what stands on both sides; the nearest end beyond it.
[[nodiscard]] SheerPoint sheerPointAt(const std::vector<SheerPoint>& line, double x);

} // namespace sheerlay::core
