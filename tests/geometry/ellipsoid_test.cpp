#include "geometry/geodesic.hpp"
#include "geometry/surface_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <GeographicLib/GeodesicExact.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay::geometry;
using namespace sheerlay::test;

// Outside reference: GeographicLib's GeodesicExact (C. F. F. Karney, elliptic integrals). A hull's worth of
// size and flattening; 17 mm is one step per strip.

namespace {

constexpr double degrees = 180 / std::numbers::pi;
constexpr double equator = 680.0, flattening = 0.3, step = 17.0;

struct Worst {
    double place = 0.0, scale = 0.0, reduced = 0.0;
};

Worst compare(double latitude, double azimuth, double stepLength, int steps) {
    const RevolutionSurface s = ellipsoid(equator, equator * (1 - flattening));
    const GeographicLib::GeodesicExact reference(equator, flattening);
    // u is the reduced latitude, and the longitude grows with falling v
    const double u = std::atan((1 - flattening) * std::tan(latitude));
    const SurfaceJet j = s.jet(u, 0);
    const Eigen::Vector3d north = j.u.normalized(), east = -j.v.normalized();
    GeodesicState even{{u, 0},
                       parameterComponents(j, std::cos(azimuth) * north + std::sin(azimuth) * east),
                       1.0,
                       0.0};  // J(0) = 1: geodesic scale
    GeodesicState fan = even; // J(0) = 0, J' = 1: reduced length
    fan.jacobi = 0.0;
    fan.jacobiRate = 1.0;
    Worst worst;
    for (int i = 1; i <= steps; ++i) {
        even = geodesicStep(s, s.jet(even.uv.x(), even.uv.y()), even, stepLength);
        fan = geodesicStep(s, s.jet(fan.uv.x(), fan.uv.y()), fan, stepLength);
        double lat = 0, lon = 0, azi = 0, reduced = 0, scale = 0, scaleBack = 0;
        reference.Direct(latitude * degrees,
                         0,
                         azimuth * degrees,
                         i * stepLength,
                         lat,
                         lon,
                         azi,
                         reduced,
                         scale,
                         scaleBack);
        const double u2 = std::atan((1 - flattening) * std::tan(lat / degrees));
        const Eigen::Vector3d expected = s.jet(u2, -lon / degrees).p;
        worst.place = std::max(worst.place, (s.jet(even.uv.x(), even.uv.y()).p - expected).norm());
        worst.scale = std::max(worst.scale, std::abs(even.jacobi - scale));
        worst.reduced = std::max(worst.reduced, std::abs(fan.jacobi - reduced) / reduced);
    }
    return worst;
}

} // namespace

TEST_CASE("geodesics on an ellipsoid of revolution agree with GeographicLib") {
    // from the equator toward the pole's shoulder, from mid latitude both ways; 0.6 m each
    for (const auto& [latitude, azimuth] :
         {std::pair{0.0, 0.7}, std::pair{0.3, 1.2}, std::pair{-0.5, 0.9}, std::pair{0.4, 2.2}}) {
        const Worst strip = compare(latitude, azimuth, step, 36);
        INFO("from latitude " << latitude << " toward " << azimuth << ": place " << strip.place
                              << " mm, scale " << strip.scale << ", reduced length " << strip.reduced);
        CHECK(strip.place < 1e-5);
        CHECK(strip.scale < 5e-8);
        CHECK(strip.reduced < 5e-8);
        // the planking takes two steps per strip
        const Worst half = compare(latitude, azimuth, step / 2, 72);
        CHECK(half.place < 1e-6);
        CHECK(half.scale < 1e-8);
        CHECK(half.reduced < 1e-8);
    }
}

TEST_CASE("half the step is sixteen times nearer to GeographicLib") {
    const Worst coarse = compare(0.3, 1.2, 4 * step, 9), fine = compare(0.3, 1.2, 2 * step, 18);
    CHECK(coarse.place / fine.place > 13);
    CHECK(coarse.place / fine.place < 20);
}
