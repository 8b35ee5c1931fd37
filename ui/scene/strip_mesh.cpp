#include "ui/scene/strip_mesh.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr double thinning = 0.15; // mm; a tenth of a pixel with a canoe filling the screen

double distanceToChord(const Eigen::Vector3d& p, const Eigen::Vector3d& a, const Eigen::Vector3d& b) {
    const Eigen::Vector3d chord = b - a;
    const double square = chord.squaredNorm();
    const double t = square > 0.0 ? std::clamp((p - a).dot(chord) / square, 0.0, 1.0) : 0.0;
    return (p - a - t * chord).norm();
}

/// An edge with the outward normal at each of its points, taken from the nearest place of the middle: the
/// strip is one board, so both its edges share the middle's normal.
struct Edge {
    std::vector<Eigen::Vector3d> points;
    std::vector<Eigen::Vector3d> normals;
};

Eigen::Vector3d fallbackNormal(const core::Strip& strip, const Eigen::Vector3d& p) {
    if (strip.side == core::Side::Centre)
        return {0.0, 0.0, -1.0};
    return {0.0, p.y() < 0.0 ? -1.0 : 1.0, 0.0};
}

Edge edgeOf(const core::Strip& strip, const std::vector<Eigen::Vector3d>& line) {
    Edge edge;
    edge.points = thinned(line, thinning);
    std::size_t near = 0;
    const std::size_t count = std::min(strip.middle.size(), strip.middleNormal.size());
    for (const Eigen::Vector3d& p : edge.points) {
        if (count == 0) {
            edge.normals.push_back(fallbackNormal(strip, p));
            continue;
        }
        // both run bow to stern, so the nearest place only moves aft
        while (near + 1 < count &&
               (strip.middle[near + 1] - p).squaredNorm() <= (strip.middle[near] - p).squaredNorm())
            ++near;
        edge.normals.push_back(strip.middleNormal[near]);
    }
    return edge;
}

Eigen::Vector3d tangentAt(const std::vector<Eigen::Vector3d>& line, std::size_t i) {
    const std::size_t before = i > 0 ? i - 1 : i;
    const std::size_t after = std::min(i + 1, line.size() - 1);
    const Eigen::Vector3d along = line[after] - line[before];
    return along.norm() > 0.0 ? Eigen::Vector3d(along.normalized()) : Eigen::Vector3d::UnitX();
}

/// Fills the band between two lines, each time with the shorter of the two diagonals.
void addBand(TriangleMesh& mesh, const Edge& upper, const Edge& lower, double offset, bool outward) {
    std::vector<int> top;
    std::vector<int> bottom;
    const double sign = outward ? 1.0 : -1.0;
    const auto addLine = [&](const Edge& edge, std::vector<int>& ids) {
        for (std::size_t i = 0; i < edge.points.size(); ++i)
            ids.push_back(mesh.add(edge.points[i] + offset * edge.normals[i], sign * edge.normals[i]));
    };
    addLine(upper, top);
    addLine(lower, bottom);
    std::size_t i = 0;
    std::size_t j = 0;
    while (i + 1 < top.size() || j + 1 < bottom.size()) {
        const double alongTop = i + 1 < top.size() ? (upper.points[i + 1] - lower.points[j]).squaredNorm()
                                                   : std::numeric_limits<double>::max();
        const double alongBottom = j + 1 < bottom.size()
                                       ? (lower.points[j + 1] - upper.points[i]).squaredNorm()
                                       : std::numeric_limits<double>::max();
        if (alongTop <= alongBottom) {
            mesh.face(top[i], top[i + 1], bottom[j]);
            ++i;
        } else {
            mesh.face(top[i], bottom[j + 1], bottom[j]);
            ++j;
        }
    }
}

/// The face along one edge of the board; `away` points to the side the edge faces.
void addSide(TriangleMesh& mesh, const Edge& edge, const StripFaces& faces, double turn) {
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

void addEnd(TriangleMesh& mesh, const Edge& upper, const Edge& lower, const StripFaces& faces, bool bow) {
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

} // namespace

std::vector<Eigen::Vector3d> thinned(const std::vector<Eigen::Vector3d>& line, double tolerance) {
    if (line.size() < 3)
        return line;
    std::vector<bool> keep(line.size(), false);
    keep.front() = keep.back() = true;
    std::vector<std::pair<std::size_t, std::size_t>> open{{0, line.size() - 1}};
    while (!open.empty()) {
        const auto [first, last] = open.back();
        open.pop_back();
        double worst = tolerance;
        std::size_t at = first;
        for (std::size_t i = first + 1; i < last; ++i) {
            const double distance = distanceToChord(line[i], line[first], line[last]);
            if (distance > worst) {
                worst = distance;
                at = i;
            }
        }
        if (at != first) {
            keep[at] = true;
            open.emplace_back(first, at);
            open.emplace_back(at, last);
        }
    }
    std::vector<Eigen::Vector3d> result;
    for (std::size_t i = 0; i < line.size(); ++i)
        if (keep[i])
            result.push_back(line[i]);
    return result;
}

TriangleMesh stripSolid(const core::Strip& strip, const StripFaces& faces) {
    TriangleMesh mesh;
    if (strip.upperEdge.empty() || strip.lowerEdge.empty())
        return mesh;
    const Edge upper = edgeOf(strip, strip.upperEdge);
    const Edge lower = edgeOf(strip, strip.lowerEdge);
    addBand(mesh, upper, lower, faces.outer, true);
    addBand(mesh, upper, lower, faces.inner, false);
    // tangent x outward normal points to the keel on starboard and to the sheer on port; ask the strip which
    // it is
    const std::size_t mid = upper.points.size() / 2;
    const Eigen::Vector3d across = tangentAt(upper.points, mid).cross(upper.normals[mid]);
    const Eigen::Vector3d toLower = lower.points[lower.points.size() / 2] - upper.points[mid];
    const double turn =
        across.dot(toLower - toLower.dot(tangentAt(upper.points, mid)) * tangentAt(upper.points, mid)) >= 0.0
            ? 1.0
            : -1.0;
    addSide(mesh, upper, faces, -turn);
    addSide(mesh, lower, faces, turn);
    addEnd(mesh, upper, lower, faces, true);
    addEnd(mesh, upper, lower, faces, false);
    return mesh;
}

std::vector<Eigen::Vector3d> stripLoop(const core::Strip& strip, const StripFaces& faces) {
    std::vector<Eigen::Vector3d> loop;
    if (strip.upperEdge.empty() || strip.lowerEdge.empty())
        return loop;
    const Edge upper = edgeOf(strip, strip.upperEdge);
    const Edge lower = edgeOf(strip, strip.lowerEdge);
    const double lift = faces.outer + 0.4; // just proud of the face, so that face and line do not fight
    for (std::size_t i = 0; i < upper.points.size(); ++i)
        loop.push_back(upper.points[i] + lift * upper.normals[i]);
    for (std::size_t i = lower.points.size(); i-- > 0;)
        loop.push_back(lower.points[i] + lift * lower.normals[i]);
    loop.push_back(loop.front());
    return loop;
}

} // namespace sheerlay::ui
