#pragma once

#include "geometry/surface.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::geometry {

/// The straightest line between two places of a surface, as a batten lies that is sprung from one to the
/// other: no line near it is shorter.
/// @param from, to  parameters
/// @param pieces    chords it is made of, all of one length; > 0
/// @return          pieces + 1 parameters, `from` and `to` among them
/// @accuracy        tests/geometry/shortest_line_test.cpp: plane, cylinder, cone, sphere
/// @throws std::invalid_argument  pieces not positive
[[nodiscard]] std::vector<Eigen::Vector2d>
shortestLine(const Surface& surface, const Eigen::Vector2d& from, const Eigen::Vector2d& to, int pieces);

/// Length of a smooth line through points that stand at even distances along it, mm: Richardson's step on the
/// chords and every second chord.
/// @param points  an odd number of them is told to the fourth power of the chords, an even one to the second
[[nodiscard]] double smoothLength(const std::vector<Eigen::Vector3d>& points);

/// Parameters of the place of a surface nearest to a point, by Newton's steps from a guess.
[[nodiscard]] Eigen::Vector2d
nearestPlace(const Surface& surface, const Eigen::Vector3d& point, Eigen::Vector2d guess);

} // namespace sheerlay::geometry
