#include "core/surfaces/skin_deviation.hpp"

#include "geometry/polyline.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

constexpr std::size_t mostPoints = 20'000;
constexpr double look = 15.0; // mm of girth between the places where a point's foot is first looked for

/// Distance of a point from the surface along its normal, + outside.
double distanceFrom(const geometry::TensorSurface& surface, const Vector3d& p) {
    double best = 1e300;
    double u = p.x();
    double v = 0.0;
    for (double at = surface.knotsV().first; at <= surface.knotsV().last(); at += look) {
        const double d = (surface.point(p.x(), at) - p).squaredNorm();
        if (d < best) {
            best = d;
            v = at;
        }
    }
    for (int i = 0; i < 12; ++i) {
        const geometry::SurfaceJet j = surface.jet(u, v);
        const Vector3d e = p - j.p;
        const double a = j.u.dot(j.u);
        const double b = j.u.dot(j.v);
        const double c = j.v.dot(j.v);
        const double du = (c * j.u.dot(e) - b * j.v.dot(e)) / (a * c - b * b);
        const double dv = (a * j.v.dot(e) - b * j.u.dot(e)) / (a * c - b * b);
        u += std::clamp(du, -look, look);
        v += std::clamp(dv, -look, look);
        if (std::abs(du) + std::abs(dv) < 1e-9)
            break;
    }
    const geometry::SurfaceJet j = surface.jet(u, v);
    const Vector3d off = p - j.p;
    return off.dot(j.normal()) < 0.0 ? -off.norm() : off.norm();
}

double farthest(const std::vector<Vector3d>& points, const std::vector<Vector3d>& line, double shift) {
    double far = 0.0;
    const std::size_t step = 1 + points.size() / 400;
    for (std::size_t k = 0; k < points.size(); k += step)
        far = std::max(far, geometry::distanceTo(line, points[k] + Vector3d(shift, 0, 0)));
    return far;
}

} // namespace

SkinDeviation skinDeviation(const HalfSkin& skin, const LoftedHull& hull) {
    SkinDeviation deviation;
    double squares = 0.0;
    const std::size_t step = 1 + skin.mesh.points.size() / mostPoints;
    for (std::size_t k = 0; k < skin.mesh.points.size(); k += step) {
        const double d = distanceFrom(hull.drawn.surface, skin.mesh.points[k] + Vector3d(hull.xShift, 0, 0));
        squares += d * d;
        ++deviation.points;
        if (std::abs(d) > std::abs(deviation.most)) {
            deviation.most = d;
            deviation.where = skin.mesh.points[k];
        }
    }
    deviation.rms = std::sqrt(squares / std::max(deviation.points, 1));
    deviation.sheer = farthest(skin.sheer, hull.drawn.sheer, hull.xShift);
    deviation.lower = farthest(skin.lower, hull.drawn.profile, hull.xShift);
    return deviation;
}

} // namespace sheerlay::core
