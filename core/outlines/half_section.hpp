#pragma once

#include "core/outlines/drawing.hpp"
#include "geometry/expected.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Joins curves end to end where their ends meet.
/// @param tolerance  of the drawing; ends nearer than this are the same point
/// @return  as few chains as that makes, in the order of the curves
[[nodiscard]] std::vector<std::vector<DrawnPoint>> joined(std::vector<std::vector<DrawnPoint>> curves,
                                                          double tolerance);

/// A half section about the centreline x = 0 from one chain: on the side of positive x, from sheer to keel. A
/// whole section is cut at the centreline and its right half taken; one on the left is turned over.
/// @param tolerance  how far a half section may reach over the centreline
/// @return  the points, or what is in the way ("a closed outline")
[[nodiscard]] Expected<std::vector<DrawnPoint>, std::string> halfSection(std::vector<DrawnPoint> chain,
                                                                         double tolerance);

/// At most `count` of the points, ends included, spread evenly over the length. Points are chosen, none is
/// made: all of them lie on the curve.
[[nodiscard]] std::vector<DrawnPoint> thinned(const std::vector<DrawnPoint>& points, std::size_t count);

} // namespace sheerlay::core
