#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Geometry>

namespace sheerlay::ui {

int TriangleMesh::add(const Eigen::Vector3d& point, const Eigen::Vector3d& normal) {
    points.push_back(point.cast<float>());
    normals.push_back(normal.cast<float>());
    return static_cast<int>(points.size()) - 1;
}

void TriangleMesh::face(int a, int b, int c) {
    const auto at = [](const std::vector<Eigen::Vector3f>& v, int i) -> const Eigen::Vector3f& {
        return v[static_cast<std::size_t>(i)];
    };
    const Eigen::Vector3f turn = (at(points, b) - at(points, a)).cross(at(points, c) - at(points, a));
    const Eigen::Vector3f facing = at(normals, a) + at(normals, b) + at(normals, c);
    if (turn.dot(facing) >= 0.0F)
        triangles.push_back({a, b, c});
    else
        triangles.push_back({a, c, b});
}

void TriangleMesh::quad(const std::array<Eigen::Vector3d, 4>& corners, const Eigen::Vector3d& normal) {
    const int a = add(corners[0], normal);
    const int b = add(corners[1], normal);
    const int c = add(corners[2], normal);
    const int d = add(corners[3], normal);
    face(a, b, c);
    face(a, c, d);
}

void TriangleMesh::box(const Eigen::Vector3d& low, const Eigen::Vector3d& high) {
    for (int axis = 0; axis < 3; ++axis) {
        const int second = (axis + 1) % 3;
        const int third = (axis + 2) % 3;
        for (const bool top : {false, true}) {
            Eigen::Vector3d a = low;
            a[axis] = top ? high[axis] : low[axis];
            Eigen::Vector3d b = a;
            b[second] = high[second];
            Eigen::Vector3d c = b;
            c[third] = high[third];
            Eigen::Vector3d d = a;
            d[third] = high[third];
            Eigen::Vector3d normal = Eigen::Vector3d::Zero();
            normal[axis] = top ? 1.0 : -1.0;
            quad({a, b, c, d}, normal);
        }
    }
}

double enclosedVolume(const TriangleMesh& mesh) {
    double six = 0.0;
    for (const auto& triangle : mesh.triangles) {
        const auto corner = [&](std::size_t i) -> Eigen::Vector3d {
            return mesh.points[static_cast<std::size_t>(triangle[i])].cast<double>();
        };
        six += corner(0).dot(corner(1).cross(corner(2)));
    }
    return six / 6.0;
}

} // namespace sheerlay::ui
