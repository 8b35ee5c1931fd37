#include "geometry/plane_line.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerlay::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double stride = 5.0;   // mm along the line
constexpr double sameEnd = 12.0; // mm: a line that ends this near a crossing of the edge ends in it
constexpr int mostSteps = 20000;

class Tracer {
public:
    Tracer(const TensorSurface& surface, const Trims& trims, const CutPlane& plane)
        : m_surface(surface), m_trims(trims), m_plane(plane) {}

    [[nodiscard]] double off(const Vector2d& uv) const {
        return m_plane.normal.dot(m_surface.point(uv.x(), uv.y())) - m_plane.offset;
    }

    /// Where the plane crosses the edge between two of its points.
    [[nodiscard]] Vector2d crossing(Vector2d a, Vector2d b) const {
        const double side = off(a);
        for (int i = 0; i < 60; ++i) {
            const Vector2d m = 0.5 * (a + b);
            (off(m) * side > 0 ? a : b) = m;
        }
        return 0.5 * (a + b);
    }

    /// From an edge to the other; empty where the line only touches the edge.
    [[nodiscard]] std::vector<Vector2d> trace(const Vector2d& from) const {
        for (const double sign : {1.0, -1.0}) {
            const std::optional<Vector2d> second = step(from, sign * alongAt(from), stride);
            if (!second || !inside(*second))
                continue;
            // the edge's polygon has chords; back from inside the line finds the edge itself
            const Vector2d back = from - *second;
            const Vector2d homeward = alongAt(*second);
            const std::optional<Vector2d> first =
                toEdge(*second, homeward.dot(back) < 0 ? Vector2d(-homeward) : homeward, 2 * stride);
            std::vector<Vector2d> line{first.value_or(from), *second};
            Vector2d heading = *second - from;
            for (int i = 0; i < mostSteps; ++i) {
                Vector2d along = alongAt(line.back());
                if (along.dot(heading) < 0)
                    along = -along;
                const std::optional<Vector2d> next = step(line.back(), along, stride);
                if (!next)
                    return line; // the surface lies in the plane from here on
                if (!inside(*next)) {
                    if (const auto last = toEdge(line.back(), along, stride))
                        line.push_back(*last);
                    return line;
                }
                heading = *next - line.back();
                line.push_back(*next);
            }
            return line;
        }
        return {};
    }

    /// The same line with a point of its own where it crosses the crease.
    [[nodiscard]] std::vector<Vector2d> withCorners(const std::vector<Vector2d>& line, double crease) const {
        constexpr double met = 1e-6;
        std::vector<Vector2d> out;
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (i > 0 && (line[i - 1].y() - crease) * (line[i].y() - crease) < 0 &&
                std::abs(line[i - 1].y() - crease) > met && std::abs(line[i].y() - crease) > met) {
                const double f = (crease - line[i - 1].y()) / (line[i].y() - line[i - 1].y());
                Vector2d at(line[i - 1].x() + f * (line[i].x() - line[i - 1].x()), crease);
                for (int k = 0; k < 12; ++k) {
                    const double slope = m_plane.normal.dot(m_surface.jet(at.x(), crease).u);
                    if (std::abs(slope) > 1e-9)
                        at.x() -= off(at) / slope;
                }
                if (std::abs(off(at)) < met && std::abs(at.x() - line[i].x()) < 2 * stride)
                    out.push_back(at);
            }
            out.push_back(line[i]);
        }
        return out;
    }

private:
    /// The last point inside, at most `far` mm along a line that leaves the hull within that.
    [[nodiscard]] std::optional<Vector2d>
    toEdge(const Vector2d& from, const Vector2d& along, double far) const {
        double in = 0;
        double out = far;
        for (int k = 0; k < 40; ++k) {
            const double m = 0.5 * (in + out);
            const std::optional<Vector2d> at = step(from, along, m);
            (at && inside(*at) ? in : out) = m;
        }
        return in > 1e-6 ? step(from, along, in) : std::nullopt;
    }

    /// Parameters' change for 1 mm along the line.
    [[nodiscard]] Vector2d alongAt(const Vector2d& uv) const {
        const SurfaceJet j = m_surface.jet(uv.x(), uv.y());
        const Vector2d d(-m_plane.normal.dot(j.v), m_plane.normal.dot(j.u));
        const double length = (d.x() * j.u + d.y() * j.v).norm();
        return length > 0 ? Vector2d(d / length) : Vector2d::Zero();
    }

    [[nodiscard]] std::optional<Vector2d> step(const Vector2d& from, const Vector2d& along, double by) const {
        if (along.isZero() || !along.allFinite())
            return std::nullopt;
        Vector2d uv = from + by * along;
        for (int i = 0; i < 12; ++i) {
            const SurfaceJet j = m_surface.jet(uv.x(), uv.y());
            const double e = m_plane.normal.dot(j.p) - m_plane.offset;
            if (std::abs(e) < 1e-10)
                break;
            const Vector2d slope(m_plane.normal.dot(j.u), m_plane.normal.dot(j.v));
            if (slope.squaredNorm() < 1e-16)
                return std::nullopt;
            const Vector2d back = slope * (e / slope.squaredNorm());
            uv -= back.norm() > stride ? Vector2d(back * (stride / back.norm())) : back;
        }
        return std::abs(off(uv)) < 1e-6 ? std::optional(uv) : std::nullopt;
    }

    [[nodiscard]] bool inside(const Vector2d& uv) const {
        const UniformKnots& ku = m_surface.knotsU();
        const UniformKnots& kv = m_surface.knotsV();
        if (uv.x() < ku.first || uv.x() > ku.last() || uv.y() < kv.first || uv.y() > kv.last())
            return false;
        const Vector3d p = m_surface.point(uv.x(), uv.y());
        for (const Trim t : {Trim::Sheer, Trim::Centre, Trim::BowPlane, Trim::SternPlane})
            if (m_trims.value(t, uv.y(), p) < 0)
                return false;
        return true;
    }

    const TensorSurface& m_surface;
    const Trims& m_trims;
    const CutPlane& m_plane;
};

} // namespace

PlaneLinePoint planeLinePoint(const TensorSurface& surface, const CutPlane& plane, const Vector2d& uv) {
    const SurfaceJet j = surface.jet(uv.x(), uv.y());
    PlaneLinePoint point{uv, j.p, 0.0};
    const Vector2d d(-plane.normal.dot(j.v), plane.normal.dot(j.u));
    const Vector3d tangent = d.x() * j.u + d.y() * j.v;
    const double length2 = tangent.squaredNorm();
    if (length2 == 0)
        return point;
    const Vector3d normal = j.normal();
    const Vector3d bend = d.x() * d.x() * j.uu + 2 * d.x() * d.y() * j.uv + d.y() * d.y() * j.vv;
    // Meusnier: a surface bends every line of one direction alike, less where its plane stands askew
    const double upright = std::abs(plane.normal.cross(tangent).dot(normal)) / std::sqrt(length2);
    point.curvature = -bend.dot(normal) / length2 / std::max(upright, 1e-9);
    return point;
}

std::vector<PlaneLine> planeLines(const TensorSurface& surface,
                                  const Trims& trims,
                                  const HullOutline& outline,
                                  const CutPlane& plane) {
    const Tracer tracer(surface, trims, plane);
    const std::vector<Vector2d>& edge = outline.region.boundary();
    std::vector<Vector2d> ends;
    for (std::size_t i = 0; i < edge.size(); ++i) {
        const Vector2d& a = edge[i];
        const Vector2d& b = edge[(i + 1) % edge.size()];
        if ((tracer.off(a) > 0) != (tracer.off(b) > 0))
            ends.push_back(tracer.crossing(a, b));
    }
    const std::optional<double> crease = surface.crease();
    std::vector<PlaneLine> lines;
    while (!ends.empty()) {
        const Vector2d from = ends.back();
        ends.pop_back();
        std::vector<Vector2d> uv = tracer.trace(from);
        if (uv.size() < 2)
            continue;
        const auto near =
            std::min_element(ends.begin(), ends.end(), [&](const Vector2d& a, const Vector2d& b) {
                return (a - uv.back()).squaredNorm() < (b - uv.back()).squaredNorm();
            });
        if (near != ends.end() && (*near - uv.back()).norm() < sameEnd)
            ends.erase(near);
        PlaneLine line;
        if (crease)
            uv = tracer.withCorners(uv, *crease);
        for (const Vector2d& at : uv)
            line.push_back(planeLinePoint(surface, plane, at));
        if (line.front().p.x() > line.back().p.x())
            std::reverse(line.begin(), line.end());
        lines.push_back(std::move(line));
    }
    std::sort(lines.begin(), lines.end(), [](const PlaneLine& a, const PlaneLine& b) {
        return a.front().p.x() < b.front().p.x();
    });
    return lines;
}

} // namespace sheerlay::geometry
