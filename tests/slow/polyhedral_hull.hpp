#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <memory>
#include <vector>

namespace sheerlay::test {

/// Parameter steps of a mesh, about mm on a lofted hull.
struct MeshSteps {
    double u = 10.0, v = 5.0;
};

/// A hull's surface as flat triangles whose corners lie on it, and CGAL's two ways to measure distances over
/// them from a line: an outside judge of our geodesics, which shares nothing with them but the surface. The
/// mesh goes 60 mm past the centreplane, as the fans do, and over the whole of the surface otherwise.
class PolyhedralHull {
public:
    /// @param line  parameters of the points the distances are measured from; each becomes a corner of the
    /// mesh. Points `s` apart stand for the line itself to s * s / (8 distance), always too long.
    PolyhedralHull(const core::TrimmedSurface& hull,
                   const std::vector<Eigen::Vector2d>& line,
                   MeshSteps steps);
    ~PolyhedralHull();
    PolyhedralHull(PolyhedralHull&&) noexcept;
    PolyhedralHull& operator=(PolyhedralHull&&) noexcept;
    PolyhedralHull(const PolyhedralHull&) = delete;
    PolyhedralHull& operator=(const PolyhedralHull&) = delete;

    [[nodiscard]] std::size_t vertices() const;
    /// Largest distance of these points from the mesh, mm: its chord error, and a check that it reaches them.
    [[nodiscard]] double farthest(const std::vector<Eigen::Vector3d>& points) const;

    /// Exact shortest distance over the polyhedron from each target to the line's points, mm. A target is
    /// taken to the nearest place on the mesh.
    /// @source  S. Xin, G. Wang, Improving Chen and Han's algorithm on the discrete geodesic problem, 2009
    /// (as built by CGAL 5.5's Surface_mesh_shortest_path)
    [[nodiscard]] std::vector<double> exactDistances(const std::vector<Eigen::Vector3d>& targets) const;

    /// The same by the heat method; linear inside a triangle.
    /// @source  K. Crane, C. Weischedel, M. Wardetzky, Geodesics in heat, 2013 (CGAL 5.5's Heat_method_3,
    /// intrinsic Delaunay)
    [[nodiscard]] std::vector<double> heatDistances(const std::vector<Eigen::Vector3d>& targets) const;

private:
    struct Mesh;
    std::unique_ptr<Mesh> m_mesh;
};

/// What distances over a polyhedron would be on an ever finer one: their error falls with the square of the
/// step, so two meshes, the second of half the steps, tell what is left.
[[nodiscard]] std::vector<double> extrapolated(const std::vector<double>& coarse,
                                               const std::vector<double>& fine);

} // namespace sheerlay::test
