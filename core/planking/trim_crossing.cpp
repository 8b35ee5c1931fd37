#include "core/planking/trim_crossing.hpp"

#include <cmath>

namespace sheerlay::core {

using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::Trim;

namespace {

/// Root of a trim's value between f = 0 (inside) and f = 1 (outside) on the first part `scale` of an arc.
double trimRoot(const TrimmedSurface& h, Trim trim, const geometry::ParameterArc& arc, double scale = 1.0) {
    const auto value = [&](double f) {
        const Vector2d uv = arc.at(f * scale);
        return h.trims.value(trim, uv.y(), h.surface.point(uv.x(), uv.y()));
    };
    double a = 0;
    double b = 1;
    double fa = value(0);
    double fb = value(1);
    if (fa <= 0)
        return 0;
    if (fb >= 0)
        return 1;
    for (int i = 0; i < 60 && b - a > 1e-13; ++i) {
        const double m = i % 3 == 2 ? 0.5 * (a + b) : a + (b - a) * fa / (fa - fb);
        const double fm = value(m);
        if (std::abs(fm) < 1e-10)
            return m;
        if (fm > 0) {
            a = m;
            fa = fm;
        } else {
            b = m;
            fb = fm;
        }
    }
    return 0.5 * (a + b);
}

} // namespace

Crossing firstCrossing(const TrimmedSurface& h, const geometry::ParameterArc& arc) {
    Crossing best{1.0, Trim::None};
    const Vector2d end = arc.at(1);
    const Vector3d p = h.surface.point(end.x(), end.y());
    for (const Trim t : {Trim::Sheer, Trim::Centre, Trim::BowPlane, Trim::SternPlane})
        if (h.trims.value(t, end.y(), p) < 0)
            if (const double f = trimRoot(h, t, arc); f < best.f || best.trim == Trim::None)
                best = {f, t};
    if (best.trim == Trim::None) {
        // out and back in between (the extension's far side): look for the way out
        for (double f = 0.1; f < 1.0; f += 0.1) {
            const Vector2d uv = arc.at(f);
            const Trim t = h.trims.violated(uv.y(), h.surface.point(uv.x(), uv.y()));
            if (t != Trim::None)
                return {f * trimRoot(h, t, arc, f), t};
        }
    }
    return best;
}

Vector2d ontoTrim(const TrimmedSurface& hull, Trim trim, Vector2d uv, int steps) {
    for (int k = 0; k < steps; ++k) {
        const geometry::SurfaceJet j = hull.surface.jet(uv.x(), uv.y());
        const Vector2d slope = hull.trims.gradient(trim, j);
        uv -= slope * (hull.trims.value(trim, uv.y(), j.p) / slope.squaredNorm());
    }
    return uv;
}

bool insideHull(const TrimmedSurface& hull, const Vector2d& uv, const Vector3d& p) {
    if (hull.trims.violated(uv.y(), p) != Trim::None)
        return false;
    const geometry::HullRegion& region = hull.outline.region;
    if (region.contains(uv.x(), uv.y()))
        return true;
    // on the very rim the trims' own functions are sharper than the polygon
    constexpr double rim = 1.0;
    for (const double du : {-rim, 0.0, rim})
        for (const double dv : {-rim, rim})
            if (region.contains(uv.x() + du, uv.y() + dv))
                return true;
    return false;
}

} // namespace sheerlay::core
