#include "core/hull/knuckle.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

struct Sides {
    geometry::TensorSurface above, below;
    double v;
};

KnucklePlace placeAt(const Sides& sides, double u) {
    const geometry::SurfaceJet a = sides.above.jet(u, sides.v);
    const geometry::SurfaceJet b = sides.below.jet(u, sides.v);
    const Vector3d up = a.normal();
    const Vector3d down = b.normal();
    return {u, b.p, std::atan2(down.cross(up).dot(b.u.normalized()), up.dot(down))};
}

Sides sidesOf(const TrimmedSurface& hull) {
    return {hull.surface.oneSide(-1), hull.surface.oneSide(+1), *hull.surface.crease()};
}

} // namespace

std::vector<KnucklePlace> knuckleLine(const TrimmedSurface& hull, double spacing) {
    std::vector<KnucklePlace> line;
    if (!hull.surface.crease())
        return line;
    const Sides sides = sidesOf(hull);
    const auto inside = [&](double u) {
        return hull.trims.violated(sides.v, sides.below.point(u, sides.v)) == geometry::Trim::None;
    };
    const geometry::UniformKnots& knots = hull.surface.knotsU();
    const double mid = 0.5 * (knots.first + knots.last());
    if (!inside(mid))
        return line;
    // from amidships outward: the surface may come back to the centreplane far outside the boat
    const auto end = [&](double step) {
        double in = mid;
        while (in + step > knots.first && in + step < knots.last() && inside(in + step))
            in += step;
        double out = in + step;
        for (int i = 0; i < 60; ++i) {
            const double m = 0.5 * (in + out);
            (inside(m) ? in : out) = m;
        }
        return in;
    };
    const double from = end(-10.0);
    const double to = end(10.0);
    const int n = std::max(1, static_cast<int>(std::ceil((to - from) / spacing)));
    for (int i = 0; i <= n; ++i)
        line.push_back(placeAt(sides, from + (to - from) * i / n));
    return line;
}

KnucklePlace knuckleAt(const TrimmedSurface& hull, const std::vector<KnucklePlace>& line, double x) {
    const Sides sides = sidesOf(hull);
    double from = line.front().u;
    double to = line.back().u;
    for (int i = 0; i < 60; ++i) {
        const double m = 0.5 * (from + to);
        (sides.below.point(m, sides.v).x() < x ? from : to) = m;
    }
    return placeAt(sides, 0.5 * (from + to));
}

} // namespace sheerlay::core
