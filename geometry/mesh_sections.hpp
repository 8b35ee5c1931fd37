#pragma once

#include "geometry/mesh.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <vector>

namespace sheerlay::geometry {

/// Cuts a mesh by planes x = const, as often as wanted: the triangles are put in order once.
class MeshSections {
public:
    /// @param mesh  must outlive this
    explicit MeshSections(const Mesh& mesh);

    /// The lines that the plane cuts, each as points on the sides of triangles; a closed line ends where it
    /// began. Lines end where the mesh does, and where more than two triangles meet. A plane that only
    /// touches the mesh's foremost points cuts nothing.
    [[nodiscard]] std::vector<std::vector<Eigen::Vector3d>> at(double x) const;

    [[nodiscard]] double first() const noexcept { return m_first; } ///< mm, least x of the mesh
    [[nodiscard]] double last() const noexcept { return m_last; }   ///< mm

private:
    const Mesh& m_mesh;
    double m_first = 0.0, m_last = 0.0;
    std::vector<std::vector<std::size_t>> m_bins; // triangles that touch each stretch of x
};

/// The lines along which only one triangle stands, each as numbers of points; a closed one ends with the
/// point it began with. What the triangles face does not matter.
[[nodiscard]] std::vector<std::vector<int>> rimsOf(const Mesh& mesh);

/// Per triangle the number, from 0, of the piece it belongs to; triangles of one piece hang together by their
/// sides.
[[nodiscard]] std::vector<int> piecesOf(const Mesh& mesh);

} // namespace sheerlay::geometry
