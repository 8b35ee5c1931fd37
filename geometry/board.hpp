#pragma once

#include "geometry/mesh.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::geometry {

/// A flat board with square edges: what lies inside a boundary in one plane, as thick as `through`.
struct Board {
    /// mm: lines that follow each other end to end round the board and don't cross, the last back to where
    /// the first begins; smooth through their points, straight where there are two
    std::vector<std::vector<Eigen::Vector3d>> boundary;
    Eigen::Vector3d through = Eigen::Vector3d::Zero(); ///< mm, from this face to the other; out of the plane
};

/// The board as closed triangles that face outward; no points but the boundary's, on both faces.
/// @return an empty mesh where the boundary encloses nothing
/// @source Ears cut off one by one: G. H. Meisters, Polygons have ears, American Mathematical Monthly 82
/// (1975), 648-651
[[nodiscard]] Mesh boardMesh(const Board& board);

} // namespace sheerlay::geometry
