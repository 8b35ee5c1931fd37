#include "geometry/offset_surface.hpp"
#include "geometry/surface_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

constexpr double R = 450; // mm, a bilge's size

TensorSurface spherePatch() {
    return splineOf(
        [](double u, double v) {
            const double a = u / R, b = v / R;
            return Vector3d(R * std::sin(a), R * std::cos(a) * std::cos(b), -R * std::cos(a) * std::sin(b));
        },
        {-350, 50, 14},
        {-250, 50, 10});
}

TensorSurface cylinderPatch() {
    return splineOf([](double u, double v) { return Vector3d(u, R * std::cos(v / R), -R * std::sin(v / R)); },
                    {-350, 50, 14},
                    {-250, 50, 10});
}

/// Largest of f over a grid inside the domain.
double largest(const TensorSurface& s, const std::function<double(double, double)>& f) {
    double e = 0;
    for (double u = s.knotsU().first; u <= s.knotsU().last(); u += 9.7)
        for (double v = s.knotsV().first; v <= s.knotsV().last(); v += 9.7)
            e = std::max(e, std::abs(f(u, v)));
    return e;
}

} // namespace

TEST_CASE("a sphere's offset is the larger sphere, over the same parameters") {
    const TensorSurface s = spherePatch();
    for (const double d : {3.175, 6.35, -6.35}) {
        const TensorSurface o = offsetSurface(s, d);
        CHECK(largest(o, [&](double u, double v) { return o.point(u, v).norm() - (R + d); }) < 1e-3);
        CHECK(largest(o, [&](double u, double v) {
                  const SurfaceJet j = s.jet(u, v);
                  return (o.point(u, v) - j.p - d * j.normal()).norm();
              }) < 1e-3);
        // derivatives matter to the planking: edge bend and twist are read off them
        CHECK(largest(o, [&](double u, double v) {
                  return fundamentalForms(o.jet(u, v)).gauss() * (R + d) * (R + d) - 1;
              }) < 1e-3);
    }
}

TEST_CASE("a cylinder's offset is the larger cylinder") {
    const TensorSurface o = offsetSurface(cylinderPatch(), 6.35);
    CHECK(largest(o, [&](double u, double v) {
              const Vector3d p = o.point(u, v);
              return std::hypot(p.y(), p.z()) - (R + 6.35);
          }) < 1e-3);
    CHECK(largest(o, [&](double u, double v) { return o.point(u, v).x() - u; }) < 1e-6);
}

TEST_CASE("out and back again returns") {
    const TensorSurface s = spherePatch();
    const TensorSurface back = offsetSurface(offsetSurface(s, 6.35), -6.35, 1);
    CHECK(largest(s, [&](double u, double v) { return (back.point(u, v) - s.point(u, v)).norm(); }) < 1e-3);
}

TEST_CASE("no distance, no change; and `refine` sets the spans") {
    const TensorSurface s = cylinderPatch();
    const TensorSurface same = offsetSurface(s, 0.0, 3);
    CHECK(same.knotsU().spans == 3 * s.knotsU().spans);
    CHECK(same.knotsV().spans == 3 * s.knotsV().spans);
    CHECK_THAT(same.knotsU().last(), WithinAbs(s.knotsU().last(), 1e-9));
    CHECK(largest(s, [&](double u, double v) { return (same.point(u, v) - s.point(u, v)).norm(); }) < 1e-8);
}
