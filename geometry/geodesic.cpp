#include "geometry/geodesic.hpp"

#include "geometry/surface_frame.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace sheerlay::geometry {
namespace {

struct Acceleration {
    Eigen::Vector2d uv;
    double gauss = 0.0;
};

/// Geodesic acceleration without Christoffel symbols: Q = X_uu u'^2 + 2 X_uv u'v' + X_vv v'^2, (u'', v'') =
/// -I^-1 (X_u.Q, X_v.Q).
Acceleration accelerate(const SurfaceJet& j, const Eigen::Vector2d& w) {
    const Eigen::Vector3d q = j.uu * (w.x() * w.x()) + j.uv * (2 * w.x() * w.y()) + j.vv * (w.y() * w.y());
    const Eigen::Vector3d m = j.cross();
    const double E = j.u.squaredNorm();
    const double F = j.u.dot(j.v);
    const double G = j.v.squaredNorm();
    const double det = E * G - F * F;
    const double a = j.u.dot(q);
    const double b = j.v.dot(q);
    // L N - M^2 with the unnormalised normal carries |m|^2 = det once more
    const double L = j.uu.dot(m);
    const double M = j.uv.dot(m);
    const double N = j.vv.dot(m);
    return {{-(G * a - F * b) / det, -(E * b - F * a) / det}, (L * N - M * M) / (det * det)};
}

} // namespace

GeodesicState geodesicStep(const Surface& surface, const SurfaceJet& here, const GeodesicState& s, double h) {
    const Acceleration a1 = accelerate(here, s.velocity);
    const double jj1 = -a1.gauss * s.jacobi;

    const Eigen::Vector2d v2 = s.velocity + 0.5 * h * a1.uv;
    const Eigen::Vector2d p2 = s.uv + 0.5 * h * s.velocity;
    const double j2 = s.jacobi + 0.5 * h * s.jacobiRate;
    const double r2 = s.jacobiRate + 0.5 * h * jj1;
    const Acceleration a2 = accelerate(surface.jet(p2.x(), p2.y()), v2);
    const double jj2 = -a2.gauss * j2;

    const Eigen::Vector2d v3 = s.velocity + 0.5 * h * a2.uv;
    const Eigen::Vector2d p3 = s.uv + 0.5 * h * v2;
    const double j3 = s.jacobi + 0.5 * h * r2;
    const double r3 = s.jacobiRate + 0.5 * h * jj2;
    const Acceleration a3 = accelerate(surface.jet(p3.x(), p3.y()), v3);
    const double jj3 = -a3.gauss * j3;

    const Eigen::Vector2d v4 = s.velocity + h * a3.uv;
    const Eigen::Vector2d p4 = s.uv + h * v3;
    const double j4 = s.jacobi + h * r3;
    const double r4 = s.jacobiRate + h * jj3;
    const Acceleration a4 = accelerate(surface.jet(p4.x(), p4.y()), v4);
    const double jj4 = -a4.gauss * j4;

    const double k = h / 6;
    return {s.uv + k * (s.velocity + 2 * v2 + 2 * v3 + v4),
            s.velocity + k * (a1.uv + 2 * a2.uv + 2 * a3.uv + a4.uv),
            s.jacobi + k * (s.jacobiRate + 2 * r2 + 2 * r3 + r4),
            s.jacobiRate + k * (jj1 + 2 * jj2 + 2 * jj3 + jj4)};
}

namespace {

/// Acceleration of a line with edge bend kappa: the geodesic's plus kappa D.
Eigen::Vector2d bentAcceleration(const SurfaceJet& j, const Eigen::Vector2d& w, double kappa) {
    Eigen::Vector2d a = accelerate(j, w).uv;
    if (kappa != 0.0) {
        const Eigen::Vector3d t = j.u * w.x() + j.v * w.y();
        a += parameterComponents(j, j.normal().cross(t) * kappa);
    }
    return a;
}

} // namespace

std::vector<BentLineNode> traceBentLine(const Surface& surface,
                                        const Eigen::Vector2d& start,
                                        const Eigen::Vector3d& direction,
                                        const EdgeBendProfile& profile,
                                        const ParameterBox& box,
                                        double spacing,
                                        double maxLength) {
    if (!(spacing > 0))
        throw std::invalid_argument("traceBentLine: spacing " + std::to_string(spacing) +
                                    " must be positive");
    const SurfaceJet first = surface.jet(start.x(), start.y());
    const Eigen::Vector2d w0 = parameterComponents(first, frameAlong(first, direction).tangent);
    const auto run = [&](double h) {
        std::vector<BentLineNode> nodes;
        Eigen::Vector2d uv = start;
        Eigen::Vector2d w = w0;
        double s = 0;
        const int substeps = 2; // the nodes lie farther apart than one accurate step
        while (std::abs(s) < maxLength) {
            for (int k = 0; k < substeps; ++k) {
                const double d = h / substeps;
                const auto f = [&](const Eigen::Vector2d& p, const Eigen::Vector2d& q, double at) {
                    return bentAcceleration(surface.jet(p.x(), p.y()), q, profile.at(at));
                };
                const Eigen::Vector2d a1 = f(uv, w, s);
                const Eigen::Vector2d w2 = w + 0.5 * d * a1;
                const Eigen::Vector2d a2 = f(uv + 0.5 * d * w, w2, s + 0.5 * d);
                const Eigen::Vector2d w3 = w + 0.5 * d * a2;
                const Eigen::Vector2d a3 = f(uv + 0.5 * d * w2, w3, s + 0.5 * d);
                const Eigen::Vector2d w4 = w + d * a3;
                const Eigen::Vector2d a4 = f(uv + d * w3, w4, s + d);
                uv += d / 6 * (w + 2 * w2 + 2 * w3 + w4);
                w += d / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
                s += d;
            }
            if (!uv.allFinite() || !w.allFinite() || !box.contains(uv))
                break;
            nodes.push_back({uv, w, s, profile.at(s)});
        }
        return nodes;
    };
    std::vector<BentLineNode> line = run(-spacing);
    std::reverse(line.begin(), line.end());
    line.push_back({start, w0, 0.0, profile.at(0)});
    const std::vector<BentLineNode> aft = run(spacing);
    line.insert(line.end(), aft.begin(), aft.end());
    return line;
}

} // namespace sheerlay::geometry
