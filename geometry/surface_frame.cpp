#include "geometry/surface_frame.hpp"

namespace sheerlay::geometry {

FundamentalForms fundamentalForms(const SurfaceJet& jet) {
    const Eigen::Vector3d n = jet.normal();
    return {jet.u.squaredNorm(),
            jet.u.dot(jet.v),
            jet.v.squaredNorm(),
            jet.uu.dot(n),
            jet.uv.dot(n),
            jet.vv.dot(n)};
}

Eigen::Vector2d parameterComponents(const SurfaceJet& jet, const Eigen::Vector3d& tangent) {
    const double E = jet.u.squaredNorm();
    const double F = jet.u.dot(jet.v);
    const double G = jet.v.squaredNorm();
    const double a = jet.u.dot(tangent);
    const double b = jet.v.dot(tangent);
    const double det = E * G - F * F;
    return {(G * a - F * b) / det, (E * b - F * a) / det};
}

Frame frameAlong(const SurfaceJet& jet, const Eigen::Vector3d& direction) {
    Frame f;
    f.normal = jet.normal();
    f.tangent = (direction - direction.dot(f.normal) * f.normal).normalized();
    f.across = f.normal.cross(f.tangent);
    return f;
}

StripShape stripShape(const SurfaceJet& jet, const Frame& frame) {
    const Eigen::Vector2d t = parameterComponents(jet, frame.tangent);
    const Eigen::Vector2d d = parameterComponents(jet, frame.across);
    const double L = jet.uu.dot(frame.normal);
    const double M = jet.uv.dot(frame.normal);
    const double N = jet.vv.dot(frame.normal);
    return {-(L * t.x() * t.x() + 2 * M * t.x() * t.y() + N * t.y() * t.y()),
            L * t.x() * d.x() + M * (t.x() * d.y() + t.y() * d.x()) + N * t.y() * d.y()};
}

double edgeBendOfULine(const SurfaceJet& jet) {
    const Frame f = frameAlong(jet, jet.u);
    return jet.uu.dot(f.across) / jet.u.squaredNorm();
}

} // namespace sheerlay::geometry
