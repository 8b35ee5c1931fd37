#include "core/fitout/sheer_line.hpp"

#include "geometry/surface_frame.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

SheerPoint sheerPoint(const geometry::SurfaceJet& jet, GunwaleChoices::Stand stand) {
    const double speed = jet.u.norm();
    SheerPoint p;
    p.point = jet.p;
    p.along = jet.u / speed;
    const Vector3d turn = (jet.uu - jet.uu.dot(p.along) * p.along) / (speed * speed); // of `along`, 1/mm
    const Vector3d plumb = Vector3d::UnitZ();
    const Vector3d level = plumb.cross(p.along).normalized();
    const Vector3d upright = p.along.cross(level);
    const geometry::Frame frame = geometry::frameAlong(jet, jet.u);
    p.flare = std::atan2(-frame.across.dot(level), -frame.across.dot(upright));
    if (stand == GunwaleChoices::Stand::Side) {
        p.out = frame.normal;
        p.up = -frame.across;
        p.twist = geometry::stripShape(jet, frame).twist;
    } else {
        p.out = level;
        p.up = upright;
        const double breadth = plumb.cross(p.along).norm();
        const Vector3d change = plumb.cross(turn) / breadth;
        p.twist = (change - change.dot(level) * level).dot(upright);
    }
    p.bend = -turn.dot(p.out);
    p.edge = -turn.dot(p.up);
    return p;
}

} // namespace

std::vector<SheerPoint> sheerLine(const TrimmedSurface& face, GunwaleChoices::Stand stand, int parts) {
    const double from = face.outline.sheer.front().x();
    const double step = (face.outline.sheer.back().x() - from) / parts;
    // three-point Gauss over each part: exact to the fifth power
    const double far = std::sqrt(0.6);
    const std::array<std::array<double, 2>, 3> gauss{
        {{0.5 * (1 - far), 5.0 / 18}, {0.5, 8.0 / 18}, {0.5 * (1 + far), 5.0 / 18}}};
    std::vector<SheerPoint> line;
    double s = 0.0;
    for (int i = 0; i <= parts; ++i) {
        const double u = from + i * step;
        line.push_back(sheerPoint(face.surface.jet(u, 0.0), stand));
        line.back().s = s;
        for (const auto& [at, weight] : gauss)
            s += weight * step * face.surface.jet(u + at * step, 0.0).u.norm();
    }
    return line;
}

SheerPoint sheerPointAt(const std::vector<SheerPoint>& line, double x) {
    const auto after = std::upper_bound(
        line.begin(), line.end(), x, [](double at, const SheerPoint& p) { return at < p.point.x(); });
    if (after == line.begin())
        return line.front();
    if (after == line.end())
        return line.back();
    const SheerPoint& a = *(after - 1);
    const SheerPoint& b = *after;
    const double t = (x - a.point.x()) / (b.point.x() - a.point.x());
    const auto mix = [t](const auto& p, const auto& q) { return p + t * (q - p); };
    SheerPoint p;
    p.s = mix(a.s, b.s);
    p.point = mix(a.point, b.point);
    p.along = mix(a.along, b.along).eval().normalized();
    p.out = mix(a.out, b.out).eval().normalized();
    p.up = mix(a.up, b.up).eval().normalized();
    p.flare = mix(a.flare, b.flare);
    p.bend = mix(a.bend, b.bend);
    p.edge = mix(a.edge, b.edge);
    p.twist = mix(a.twist, b.twist);
    return p;
}

} // namespace sheerlay::core
