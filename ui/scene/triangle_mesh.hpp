#pragma once

#include <Eigen/Core>

#include <array>
#include <vector>

namespace sheerlay::ui {

/// Triangles with a normal at every point; mm, boat frame. Single precision: it is only looked at.
struct TriangleMesh {
    std::vector<Eigen::Vector3f> points;
    std::vector<Eigen::Vector3f> normals;      ///< unit, one per point
    std::vector<std::array<int, 3>> triangles; ///< indices into points, turning left seen from outside

    /// Adds one point and returns its index.
    int add(const Eigen::Vector3d& point, const Eigen::Vector3d& normal);
    /// Adds a triangle, turned so that it faces the way its points' normals do.
    void face(int a, int b, int c);
    /// Adds a flat quadrilateral with points of its own; corners in order around it, normal as given.
    void quad(const std::array<Eigen::Vector3d, 4>& corners, const Eigen::Vector3d& normal);
    /// Adds a box with edges along the axes.
    void box(const Eigen::Vector3d& low, const Eigen::Vector3d& high);
};

/// Volume inside a closed mesh, mm3, by the divergence theorem: + when the triangles face outward.
[[nodiscard]] double enclosedVolume(const TriangleMesh& mesh);

} // namespace sheerlay::ui
