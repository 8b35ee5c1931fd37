#include "geometry/trims.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/spheroid_hull.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <vector>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double pi = std::numbers::pi;

/// Wall-sided parabolic hull cut by planes: y = (B/2) (1 - (2x/L)^2) (1 - (z/T)^2), v downward, u aft.
TensorSurface parabolic(double L, double B, double T) {
    return splineOf(
        [=](double u, double v) {
            const double f = v / T;
            return Vector3d(u, B / 2 * (1 - 4 * u * u / (L * L)) * (1 - f * f), -v);
        },
        {-0.55 * L, 1.1 * L / 20, 20},
        {-50, (1.3 * T + 50) / 20, 20});
}

/// Simpson's rule, many steps: the test's own quadrature.
template <class F> double integral(F f, double a, double b, int n = 2000) {
    double sum = f(a) + f(b);
    for (int i = 1; i < n; ++i)
        sum += (i % 2 ? 4 : 2) * f(a + (b - a) * i / n);
    return sum * (b - a) / (3.0 * n);
}

} // namespace

TEST_CASE("a half siding passes through its points, never overshoots and is held beyond them") {
    const std::vector<std::array<double, 2>> points = {
        {0, 3}, {300, 6}, {700, 12}, {2400, 12}, {4500, 4}, {4800, 0}};
    const HalfSiding s(points);
    for (const auto& p : points)
        CHECK_THAT(s.at(p[0]), WithinAbs(p[1], 1e-12));
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double lo = std::min(points[i - 1][1], points[i][1]),
                     hi = std::max(points[i - 1][1], points[i][1]);
        const double sign = points[i][1] >= points[i - 1][1] ? 1 : -1;
        double before = points[i - 1][1];
        for (int k = 1; k <= 50; ++k) {
            const double x = points[i - 1][0] + (points[i][0] - points[i - 1][0]) * k / 50;
            CHECK(s.at(x) >= lo - 1e-9);
            CHECK(s.at(x) <= hi + 1e-9);
            CHECK(sign * (s.at(x) - before) >= -1e-9);
            before = s.at(x);
            CHECK_THAT(s.slopeAt(x - 1), WithinAbs((s.at(x - 0.5) - s.at(x - 1.5)), 1e-4));
        }
    }
    CHECK(s.at(-500) == 3);
    CHECK(s.at(9000) == 0);
    CHECK_THAT(s.shifted(250).at(950), WithinAbs(s.at(700), 1e-12));
    CHECK(HalfSiding(7.5).at(123) == 7.5);
    CHECK(HalfSiding(7.5).slopeAt(123) == 0);
    CHECK(HalfSiding(7.5).shifted(10).at(0) == 7.5);
    CHECK(HalfSiding().at(0) == 0);
}

TEST_CASE("trims are positive inside and name what is violated most") {
    Trims t;
    t.siding = HalfSiding(5);
    t.bow = TransomPlane{100, 0.5, 300};
    t.stern = TransomPlane{4000, -0.2, 300};
    CHECK_THAT(t.bow->xAt(200), WithinAbs(50, 1e-12));
    const Vector3d good(2000, 300, 200);
    CHECK(t.violated(40, good) == Trim::None);
    CHECK(t.value(Trim::Sheer, 40, good) == 40);
    CHECK_THAT(t.value(Trim::Centre, 40, good), WithinAbs(295, 1e-12));
    CHECK_THAT(t.value(Trim::BowPlane, 40, good), WithinAbs(1950, 1e-12));
    CHECK_THAT(t.value(Trim::SternPlane, 40, good), WithinAbs(4020 - 2000, 1e-12));
    CHECK(t.violated(-1, good) == Trim::Sheer);
    CHECK(t.violated(40, {2000, 4, 200}) == Trim::Centre);
    CHECK(t.violated(40, {20, 300, 200}) == Trim::BowPlane);
    CHECK(t.violated(40, {4100, 300, 200}) == Trim::SternPlane);
    CHECK(t.violated(-200, {4100, 300, 200}) == Trim::Sheer); // the worse of the two
    CHECK(Trims().violated(10, {-1e6, 1, 0}) == Trim::None);  // no planes where none are given
}

TEST_CASE("a half spheroid closes at its poles and has its closed-form area") {
    const SpheroidHull s;
    const TensorSurface surface = s.surface();
    const auto outline = traceOutline(surface, Trims());
    REQUIRE(outline.has_value());
    CHECK(outline->bowClosed);
    CHECK(outline->sternClosed);
    CHECK_THAT(outline->sheer.front().x(), WithinAbs(-s.a * pi / 2, 1));
    CHECK_THAT(outline->sheer.back().x(), WithinAbs(s.a * pi / 2, 1));
    for (std::size_t i = 1; i < outline->sheer.size(); ++i)
        CHECK(outline->sheer[i].x() > outline->sheer[i - 1].x());
    for (const Vector2d& uv : outline->profile) {
        const Vector3d p = surface.point(uv.x(), uv.y());
        CHECK_THAT(p.y(), WithinAbs(0, 1e-6));
        CHECK_THAT(std::pow(p.x() / s.a, 2) + std::pow(p.z() / s.b, 2), WithinAbs(1, 1e-6));
        CHECK_THAT(uv.y(), WithinAbs(s.b * std::cos(uv.x() / s.a), 1e-2));
    }
    const double e = std::sqrt(1 - s.b * s.b / (s.a * s.a));
    const double both = pi * s.b * s.b * (1 + s.a / (s.b * e) * std::asin(e)); // analytic_hulls.md section 2
    CHECK_THAT(both, WithinAbs(4990448.6, 0.05));
    CHECK_THAT(2 * areaInside(surface, outline->region), WithinRel(both, 2e-5));
}

TEST_CASE("a parabolic hull between two planes: area by quadrature, ends on the planes") {
    const double L = 5000, B = 800, T = 400;
    const TensorSurface surface = parabolic(L, B, T);
    Trims trims;
    trims.bow = TransomPlane{-2300, 0, 0};
    trims.stern = TransomPlane{2000, 0, 0};
    const auto outline = traceOutline(surface, trims);
    REQUIRE(outline.has_value());
    CHECK_FALSE(outline->bowClosed);
    CHECK_FALSE(outline->sternClosed);
    CHECK_THAT(outline->sheer.front().x(), WithinAbs(-2300, 1e-6));
    CHECK_THAT(outline->sheer.back().x(), WithinAbs(2000, 1e-6));
    CHECK_THAT(surface.point(outline->profile.front().x(), outline->profile.front().y()).x(),
               WithinAbs(-2300, 1e-6));
    const double area = integral(
        [&](double x) {
            return integral(
                [&](double z) {
                    const double yx = -B / 2 * 8 * x / (L * L) * (1 - z * z / (T * T));
                    const double yz = -B / 2 * (1 - 4 * x * x / (L * L)) * 2 * z / (T * T);
                    return std::sqrt(1 + yx * yx + yz * yz);
                },
                0,
                T,
                200);
        },
        -2300,
        2000,
        200);
    CHECK_THAT(areaInside(surface, outline->region), WithinRel(area, 1e-6));
    CHECK(outline->region.contains(0, 200));
    CHECK_FALSE(outline->region.contains(2001, 200));
    CHECK_FALSE(outline->region.contains(0, 401));
}

TEST_CASE("a sloping transom plane cuts sheer and keel where it should") {
    const TensorSurface surface = parabolic(5000, 800, 400);
    Trims trims;
    trims.bow = TransomPlane{-2300, 0, 0};
    trims.stern = TransomPlane{2100, 0.3, 0}; // raked: 120 mm further forward at the keel
    const auto outline = traceOutline(surface, trims);
    REQUIRE(outline.has_value());
    const Vector3d keel = surface.point(outline->profile.back().x(), outline->profile.back().y());
    CHECK_THAT(keel.z(), WithinAbs(-400, 1e-4));
    CHECK_THAT(keel.x(), WithinAbs(2100 - 0.3 * 400, 1e-4));
    for (const Vector2d& uv : outline->region.boundary()) {
        const Vector3d p = surface.point(uv.x(), uv.y());
        CHECK(trims.value(Trim::SternPlane, uv.y(), p) > -1e-6);
    }
}

TEST_CASE("planking that ends on a siding stops at that half-breadth") {
    const TensorSurface surface = parabolic(5000, 800, 400);
    Trims trims;
    trims.siding = HalfSiding(20);
    trims.bow = TransomPlane{-2300, 0, 0};
    trims.stern = TransomPlane{2300, 0, 0};
    const auto outline = traceOutline(surface, trims);
    REQUIRE(outline.has_value());
    for (const Vector2d& uv : outline->profile)
        CHECK_THAT(surface.point(uv.x(), uv.y()).y(), WithinAbs(20, 1e-6));
}

TEST_CASE("a hull that does not close says which end, or that it never reaches the keel") {
    const TensorSurface surface = parabolic(5000, 800, 400); // ends are plumb: keel and sheer never meet
    Trims onlyStern;
    onlyStern.stern = TransomPlane{2000, 0, 0};
    // cut short before the plumb stem
    const TensorSurface open = splineOf(
        [](double u, double v) { return Vector3d(u, 400 - v, -v); }, {-1000, 100, 20}, {-50, 50, 12});
    const auto outline = traceOutline(open, onlyStern);
    REQUIRE_FALSE(outline.has_value());
    CHECK(outline.error().find("bow") != std::string::npos);
    const auto bottomless = traceOutline(
        splineOf([](double u, double v) { return Vector3d(u, 400, -v); }, {-1000, 100, 20}, {-50, 50, 12}),
        Trims());
    REQUIRE_FALSE(bottomless.has_value());
    CHECK(bottomless.error().find("centreplane") != std::string::npos);
}
