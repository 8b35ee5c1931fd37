#include "core/afloat/float_body.hpp"
#include "core/afloat/submerged.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/floating_shapes.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Wigley's hull carried on 120 mm above her water, as a trimmed spline surface like any lofted hull.
TrimmedSurface wigleySurface(double L, double B, double T, const geometry::Trims& trims = {}) {
    const auto breadth = test::wigley(L, B, T);
    const double top = 120;
    const auto surface =
        test::splineOf([&](double u, double v) { return Vector3d(u, breadth(u, top - v).y, top - v); },
                       {-L / 2 - 400, 200, static_cast<int>((L + 800) / 200)},
                       {0, (T + top + 100) / 10, 10});
    return trimSurface(surface, trims).value();
}

} // namespace

TEST_CASE("pieces follow a circle to the fourth power of their length") {
    // quarter circle of radius 400 in 40 pieces
    const FloatBody body = test::ellipticBody([](double) { return test::Axes{400, 0, 400, 0}; }, 4000);
    double area = 0, moment = 0, girth = 0;
    for (const SectionPiece& p : body.sections()[40].pieces) {
        area += p.whole.area;
        moment += p.whole.heightMoment;
        girth += p.whole.skin;
    }
    const double pi = std::numbers::pi, r = 400;
    CHECK(area == Approx(-pi * r * r / 4).epsilon(1e-8)); // y dz runs down: negative
    CHECK(moment == Approx(r * r * r / 3).epsilon(1e-8));
    CHECK(girth == Approx(pi * r / 2).epsilon(1e-8));
}

TEST_CASE("part of a piece and the rest make the whole") {
    const FloatBody body = test::halfSpheroid(2500, 400);
    const SectionPiece& p = body.sections()[50].pieces[7];
    const LineSums a = p.sums(0, 0.37), b = p.sums(0.37, 1);
    CHECK(a.area + b.area == Approx(p.whole.area).epsilon(1e-12));
    CHECK(a.acrossMoment + b.acrossMoment == Approx(p.whole.acrossMoment).epsilon(1e-12));
    CHECK(a.heightMoment + b.heightMoment == Approx(p.whole.heightMoment).epsilon(1e-12));
    CHECK(a.skin + b.skin == Approx(p.whole.skin).epsilon(1e-9));
    CHECK((p.at(0) - p.from).norm() < 1e-12);
    CHECK((p.at(1) - p.to).norm() < 1e-12);
}

TEST_CASE("Wigley's hull as a trimmed surface floats within a tenth of a percent of the exact values") {
    const double L = 5000, B = 800, T = 400;
    const FloatBody body = floatBodyOf(wigleySurface(L, B, T));
    const Submerged s = submerged(body, {});
    CHECK(s.volume == Approx(4.0 / 9 * L * B * T).epsilon(1e-3));
    CHECK(s.plane == Approx(2.0 / 3 * L * B).epsilon(1e-3));
    CHECK(T + s.centre.z() == Approx(5.0 / 8 * T).epsilon(1e-3));
    CHECK(std::abs(s.centre.x()) < 1e-3 * L);
    CHECK(s.planeInertia(1, 1) / s.volume == Approx(3 * B * B / (35 * T)).epsilon(1e-3));
    CHECK(s.planeInertia(0, 0) / s.volume == Approx(3 * L * L / (40 * T)).epsilon(1e-3));
    CHECK(s.wettedSkin == Approx(5121927.486).epsilon(1e-3));
    CHECK(s.length == Approx(L).epsilon(1e-3));
}

TEST_CASE("a transom is wetted up to the water, plumb or raked") {
    const double L = 5000, B = 800, T = 400, x = 0.3 * L;
    const double fullness = 1 - 4 * x * x / (L * L);
    geometry::Trims trims;
    trims.stern = geometry::TransomPlane{x, 0.0, 0.0};
    const Submerged plumb = submerged(floatBodyOf(wigleySurface(L, B, T, trims)), {});
    // both sides of B/2 f (1 - (z/T)^2) from the keel up to the water
    CHECK(plumb.wettedTransom == Approx(2.0 / 3 * B * T * fullness).epsilon(1e-3));
    CHECK(submerged(floatBodyOf(wigleySurface(L, B, T)), {}).wettedTransom == 0.0);
    trims.stern->slope = 0.2;
    const Submerged raked = submerged(floatBodyOf(wigleySurface(L, B, T, trims)), {});
    double seen = 0.0; // along x: each strip of dz at its own x
    for (int i = 0; i < 4000; ++i) {
        const double z = -T * (i + 0.5) / 4000, at = x + 0.2 * z;
        seen += T / 4000 * B * (1 - 4 * at * at / (L * L)) * (1 - z * z / (T * T));
    }
    CHECK(raked.wettedTransom == Approx(seen * std::hypot(1.0, 0.2)).epsilon(1e-3));
}

TEST_CASE("finer sections change less and less") {
    const auto breadth = test::wigley(5000, 800, 400);
    const auto volumeAt = [&](int intervals) {
        const FloatBody body = test::bodyOf(breadth, 5000, 100, -400, intervals);
        return submerged(body, {-73, 0.015, 0.21}).volume;
    };
    const double coarse = volumeAt(80), usual = volumeAt(160), fine = volumeAt(640);
    CHECK(std::abs(usual - fine) < 2e-5 * fine);
    CHECK(std::abs(coarse - fine) < 2e-4 * fine);
}

TEST_CASE("a body without length or pairs of intervals is refused") {
    const auto none = [](double) { return std::vector<SectionPoint>{}; };
    CHECK_THROWS_AS(FloatBody(none, 0, 0, {}, {}), std::invalid_argument);
    CHECK_THROWS_AS(FloatBody(none, 0, 100, {}, {}, 7), std::invalid_argument);
}
