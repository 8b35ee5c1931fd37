#include "ui/scene/strip_mesh.hpp"

#include <Eigen/Geometry>

#include <algorithm>

namespace sheerlay::ui {
namespace {

Eigen::Vector3d tangentAt(const std::vector<Eigen::Vector3d>& line, std::size_t i) {
    const std::size_t before = i > 0 ? i - 1 : i;
    const std::size_t after = std::min(i + 1, line.size() - 1);
    const Eigen::Vector3d along = line[after] - line[before];
    return along.norm() > 0.0 ? Eigen::Vector3d(along.normalized()) : Eigen::Vector3d::UnitX();
}

void addBand(
    TriangleMesh& mesh, const core::BarEdge& upper, const core::BarEdge& lower, double offset, bool outward) {
    std::vector<int> ids;
    const double sign = outward ? 1.0 : -1.0;
    for (const core::BarEdge* edge : {&upper, &lower})
        for (std::size_t i = 0; i < edge->points.size(); ++i)
            ids.push_back(mesh.add(edge->points[i] + offset * edge->normals[i], sign * edge->normals[i]));
    const auto id = [&](int i) { return ids[static_cast<std::size_t>(i)]; };
    for (const auto& t : core::bandBetween(upper.points, lower.points))
        mesh.face(id(t[0]), id(t[1]), id(t[2]));
}

/// The face along one edge of the board; `away` points to the side the edge faces.
void addSide(TriangleMesh& mesh, const core::BarEdge& edge, const core::StripFaces& faces, double turn) {
    for (std::size_t i = 0; i + 1 < edge.points.size(); ++i) {
        std::array<Eigen::Vector3d, 4> corners;
        const Eigen::Vector3d n0 = edge.normals[i];
        const Eigen::Vector3d n1 = edge.normals[i + 1];
        corners[0] = edge.points[i] + faces.inner * n0;
        corners[1] = edge.points[i + 1] + faces.inner * n1;
        corners[2] = edge.points[i + 1] + faces.outer * n1;
        corners[3] = edge.points[i] + faces.outer * n0;
        const Eigen::Vector3d away = turn * tangentAt(edge.points, i).cross(n0).normalized();
        mesh.quad(corners, away);
    }
}

void addEnd(TriangleMesh& mesh,
            const core::BarEdge& upper,
            const core::BarEdge& lower,
            const core::StripFaces& faces,
            bool bow) {
    const std::size_t i = bow ? 0 : upper.points.size() - 1;
    const std::size_t j = bow ? 0 : lower.points.size() - 1;
    if ((upper.points[i] - lower.points[j]).norm() < 1e-6)
        return; // the strip ends in a point
    std::array<Eigen::Vector3d, 4> corners;
    corners[0] = upper.points[i] + faces.inner * upper.normals[i];
    corners[1] = lower.points[j] + faces.inner * lower.normals[j];
    corners[2] = lower.points[j] + faces.outer * lower.normals[j];
    corners[3] = upper.points[i] + faces.outer * upper.normals[i];
    const Eigen::Vector3d along = tangentAt(upper.points, i);
    mesh.quad(corners, bow ? Eigen::Vector3d(-along) : along);
}

TriangleMesh
solidBetween(const core::BarEdge& upper, const core::BarEdge& lower, const core::StripFaces& faces) {
    TriangleMesh mesh;
    addBand(mesh, upper, lower, faces.outer, true);
    addBand(mesh, upper, lower, faces.inner, false);
    const double turn = core::acrossSign(upper, lower);
    addSide(mesh, upper, faces, -turn);
    addSide(mesh, lower, faces, turn);
    addEnd(mesh, upper, lower, faces, true);
    addEnd(mesh, upper, lower, faces, false);
    return mesh;
}

std::vector<Eigen::Vector3d>
loopAround(const core::BarEdge& upper, const core::BarEdge& lower, const core::StripFaces& faces) {
    std::vector<Eigen::Vector3d> loop;
    const double lift = faces.outer + 0.4; // just proud of the face, so that face and line do not fight
    for (std::size_t i = 0; i < upper.points.size(); ++i)
        loop.push_back(upper.points[i] + lift * upper.normals[i]);
    for (std::size_t i = lower.points.size(); i-- > 0;)
        loop.push_back(lower.points[i] + lift * lower.normals[i]);
    loop.push_back(loop.front());
    return loop;
}

} // namespace

BarShape barShape(const core::Strip& strip, const core::StripFaces& faces, double thinning) {
    if (strip.upperEdge.empty() || strip.lowerEdge.empty())
        return {};
    const core::BarEdge upper = core::barEdge(strip, core::thinned(strip.upperEdge, thinning));
    const core::BarEdge lower = core::barEdge(strip, core::thinned(strip.lowerEdge, thinning));
    return {solidBetween(upper, lower, faces), loopAround(upper, lower, faces)};
}

} // namespace sheerlay::ui
