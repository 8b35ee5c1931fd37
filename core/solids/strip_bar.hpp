#pragma once

#include "core/planking/plan.hpp"
#include "geometry/mesh.hpp"
#include "geometry/ruled_bar.hpp"

#include <Eigen/Core>

#include <array>
#include <vector>

namespace sheerlay::core {

/// Where the strip's faces stand, mm along the outward normal from the laid surface.
struct StripFaces {
    double inner = 0.0; ///< <= 0: the face that lies on the moulds
    double outer = 0.0; ///< >= 0
};

/// One edge of a strip with the outward normal at each of its points, taken from the nearest place of the
/// strip's middle: a strip is one board, flat across its width, so both its edges share the middle's normal.
struct BarEdge {
    std::vector<Eigen::Vector3d> points;  ///< mm, bow to stern
    std::vector<Eigen::Vector3d> normals; ///< unit
};

[[nodiscard]] BarEdge barEdge(const Strip& strip, std::vector<Eigen::Vector3d> line);

/// +1 where tangent x outward normal points from the strip's upper edge to its lower one, else -1.
[[nodiscard]] double acrossSign(const BarEdge& upper, const BarEdge& lower);

/// Fills the band between two lines, each time with the shorter of the two diagonals: triples of indices, the
/// upper line's points counted first, the lower line's after them. Which way they turn is the caller's.
[[nodiscard]] std::vector<std::array<int, 3>> bandBetween(const std::vector<Eigen::Vector3d>& upper,
                                                          const std::vector<Eigen::Vector3d>& lower);

/// Keeps those points of a polyline that are needed to stay within `tolerance` mm of it (Douglas and
/// Peucker); both ends always.
[[nodiscard]] std::vector<Eigen::Vector3d> thinned(const std::vector<Eigen::Vector3d>& line,
                                                   double tolerance);

/// The strip as a closed bar of triangles on shared points: both faces, both edges, both ends, inside the
/// trims (laps are not in it).
/// @param tolerance  mm, the edges may be thinned by
[[nodiscard]] geometry::Mesh stripMesh(const Strip& strip, const StripFaces& faces, double tolerance);

/// mm: a strip that runs out to a point is this wide there as a smooth bar, since a solid needs an end.
inline constexpr double pointWidth = 0.05;

/// The strip as a smooth bar: long edges upper outer, lower outer, lower inner, upper inner. Inside the
/// trims. Edges within 0.02 mm of the smooth line through the plan's points.
[[nodiscard]] geometry::RuledBar stripBar(const Strip& strip, const StripFaces& faces);

} // namespace sheerlay::core
