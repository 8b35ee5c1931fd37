#pragma once

#include <Eigen/Core>

#include <array>
#include <vector>

namespace sheerlay::geometry {

/// Triangles on shared points; mm.
struct Mesh {
    std::vector<Eigen::Vector3d> points;
    std::vector<std::array<int, 3>> triangles; ///< indices into points, turning left seen from outside
};

/// Volume inside a closed mesh, mm3, by the divergence theorem: + when the triangles face outward.
[[nodiscard]] double enclosedVolume(const Mesh& mesh);

/// True where every side of a triangle is walked just as often one way as the other: nothing is open, and
/// all triangles face the same way. Empty meshes are not closed.
[[nodiscard]] bool isClosed(const Mesh& mesh);

/// The mirror image in the centreplane y = 0, facing outward again.
[[nodiscard]] Mesh mirrored(const Mesh& mesh);

/// Both meshes in one, nothing joined.
[[nodiscard]] Mesh together(Mesh one, const Mesh& other);

/// A half with its mirror image, closed across the centreplane: each open side of the half is joined to its
/// image, so that a half hull becomes a body with a lid from sheer to sheer. Points of the rim within `reach`
/// mm of the centreplane are put on it and belong to both halves.
[[nodiscard]] Mesh closedAcrossCentre(const Mesh& half, double reach = 1e-6);

} // namespace sheerlay::geometry
