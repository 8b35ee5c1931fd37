#include "geometry/tensor_surface.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numeric>
#include <random>
#include <stdexcept>
#include <vector>

using namespace sheerlay::geometry;
using Eigen::Vector3d;

namespace {

const UniformKnots knots{-30.0, 12.5, 9};

TensorSurface randomSurface(unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> d(-40, 40);
    const UniformKnots u{-100, 35, 7}, v{10, 20, 5};
    std::vector<Vector3d> poles;
    for (int i = 0; i < u.poles(); ++i)
        for (int j = 0; j < v.poles(); ++j)
            poles.emplace_back(u.greville(i) + d(random), d(random), v.greville(j) + d(random));
    return {u, v, poles};
}

/// Cox - de Boor, written from the definition: degree p over the full knot vector, pole i.
double deBoor(const std::vector<double>& t, std::size_t i, std::size_t p, double x) {
    if (p == 0)
        return x >= t[i] && x < t[i + 1] ? 1.0 : 0.0;
    return (x - t[i]) / (t[i + p] - t[i]) * deBoor(t, i, p - 1, x) +
           (t[i + p + 1] - x) / (t[i + p + 1] - t[i + 1]) * deBoor(t, i + 1, p - 1, x);
}

/// Polar form of t^m: the mean of all products of m of the five knots gives the pole that reproduces t^m.
double polar(const std::vector<double>& five, std::size_t m) {
    std::vector<double> e(6, 0.0); // elementary symmetric functions
    e[0] = 1;
    for (const double k : five)
        for (std::size_t j = 5; j >= 1; --j)
            e[j] += k * e[j - 1];
    constexpr double binomial[] = {1, 5, 10, 10, 5, 1};
    return e[m] / binomial[m];
}

} // namespace

TEST_CASE("the knots are uniform and run five spans past both ends") {
    const std::vector<double> t = knots.fullVector();
    REQUIRE(t.size() == static_cast<std::size_t>(knots.poles()) + 6);
    CHECK(t[5] == knots.first);
    CHECK_THAT(t[t.size() - 6], WithinAbs(knots.last(), 1e-12));
    for (std::size_t i = 1; i < t.size(); ++i)
        CHECK_THAT(t[i] - t[i - 1], WithinAbs(12.5, 1e-12));
    for (int i = 0; i < knots.poles(); ++i) {
        const auto k = static_cast<std::size_t>(i);
        CHECK_THAT(knots.greville(i),
                   WithinAbs((t[k + 1] + t[k + 2] + t[k + 3] + t[k + 4] + t[k + 5]) / 5, 1e-12));
    }
}

TEST_CASE("the basis is the recurrence's, adds up to one and is nowhere negative") {
    const std::vector<double> t = knots.fullVector();
    for (double x = knots.first; x < knots.last(); x += 1.7) {
        const QuinticBasis b = quinticBasis(knots, x);
        for (std::size_t i = 0; i < static_cast<std::size_t>(knots.poles()); ++i) {
            const std::size_t k = i - static_cast<std::size_t>(b.span);
            const double value = i >= static_cast<std::size_t>(b.span) && k < 6 ? b.value[k] : 0.0;
            CHECK_THAT(value, WithinAbs(deBoor(t, i, 5, x), 1e-14));
            CHECK(value >= 0.0);
        }
        CHECK_THAT(std::accumulate(b.value.begin(), b.value.end(), 0.0), WithinAbs(1, 1e-14));
        CHECK_THAT(std::accumulate(b.first.begin(), b.first.end(), 0.0), WithinAbs(0, 1e-14));
        CHECK_THAT(std::accumulate(b.second.begin(), b.second.end(), 0.0), WithinAbs(0, 1e-14));
    }
}

TEST_CASE("derivatives of the basis, by differences") {
    const double h = 1e-3;
    for (double x = knots.first + 1; x < knots.last() - 1; x += 3.1) {
        const QuinticBasis b = quinticBasis(knots, x), m = quinticBasis(knots, x - h),
                           p = quinticBasis(knots, x + h);
        if (m.span != p.span)
            continue;
        for (std::size_t k = 0; k < 6; ++k) {
            CHECK_THAT(b.first[k], WithinAbs((p.value[k] - m.value[k]) / (2 * h), 1e-9));
            CHECK_THAT(b.second[k], WithinAbs((p.first[k] - m.first[k]) / (2 * h), 1e-9));
        }
    }
}

TEST_CASE("polynomials up to the fifth degree come out exactly, outside the domain too") {
    const std::vector<double> t = knots.fullVector();
    for (std::size_t m = 0; m <= 5; ++m)
        for (const double x : {-45.0, -30.0, -7.2, 0.0, 33.3, 82.5, 95.0}) { // domain -30 to 82.5
            const QuinticBasis b = quinticBasis(knots, x);
            double value = 0, first = 0, second = 0;
            for (std::size_t k = 0; k < 6; ++k) {
                const auto i = static_cast<std::ptrdiff_t>(k) + b.span;
                const double pole = polar({t.begin() + i + 1, t.begin() + i + 6}, m);
                value += pole * b.value[k];
                first += pole * b.first[k];
                second += pole * b.second[k];
            }
            const double n = static_cast<double>(m), size = std::pow(100.0, n);
            INFO("degree " << m << " at " << x);
            CHECK_THAT(value, WithinAbs(std::pow(x, n), 1e-11 * size));
            CHECK_THAT(first, WithinAbs(m == 0 ? 0 : n * std::pow(x, n - 1), 1e-11 * size));
            CHECK_THAT(second, WithinAbs(m < 2 ? 0 : n * (n - 1) * std::pow(x, n - 2), 1e-11 * size));
        }
}

TEST_CASE("a surface's jet is the sum over poles and its own differences") {
    const TensorSurface s = randomSurface(31);
    const std::vector<double> tu = s.knotsU().fullVector(), tv = s.knotsV().fullVector();
    const double h = 1e-3;
    for (const auto& [u, v] : {std::pair{-91.0, 15.0}, std::pair{3.0, 47.0}, std::pair{140.0, 108.0}}) {
        const SurfaceJet j = s.jet(u, v);
        Vector3d sum = Vector3d::Zero();
        for (int a = 0; a < s.knotsU().poles(); ++a)
            for (int b = 0; b < s.knotsV().poles(); ++b)
                sum += s.pole(a, b) * deBoor(tu, static_cast<std::size_t>(a), 5, u) *
                       deBoor(tv, static_cast<std::size_t>(b), 5, v);
        CHECK((j.p - sum).norm() < 1e-11);
        CHECK((s.point(u, v) - j.p).norm() < 1e-12);
        const SurfaceJet u1 = s.jet(u + h, v), u0 = s.jet(u - h, v), v1 = s.jet(u, v + h),
                         v0 = s.jet(u, v - h);
        CHECK((j.u - (u1.p - u0.p) / (2 * h)).norm() < 1e-7);
        CHECK((j.v - (v1.p - v0.p) / (2 * h)).norm() < 1e-7);
        CHECK((j.uu - (u1.u - u0.u) / (2 * h)).norm() < 1e-8);
        CHECK((j.uv - (v1.u - v0.u) / (2 * h)).norm() < 1e-8);
        CHECK((j.vv - (v1.v - v0.v) / (2 * h)).norm() < 1e-8);
    }
}

TEST_CASE("second derivatives do not jump at a knot") {
    const TensorSurface s = randomSurface(32);
    const double knot = s.knotsU().first + 3 * s.knotsU().step, e = 1e-9;
    const SurfaceJet a = s.jet(knot - e, 33), b = s.jet(knot + e, 33);
    CHECK((a.uu - b.uu).norm() < 1e-8);
    CHECK((a.uv - b.uv).norm() < 1e-8);
}

TEST_CASE("poles that do not fit the knots are refused") {
    const UniformKnots one{0, 1, 1};
    CHECK_NOTHROW(TensorSurface(one, one, std::vector<Vector3d>(36, Vector3d::Zero())));
    CHECK_THROWS_AS(TensorSurface(one, one, std::vector<Vector3d>(35, Vector3d::Zero())),
                    std::invalid_argument);
    CHECK_THROWS_AS(TensorSurface({0, 0, 1}, one, std::vector<Vector3d>(36, Vector3d::Zero())),
                    std::invalid_argument);
    CHECK_THROWS_AS(TensorSurface({0, 1, 0}, one, std::vector<Vector3d>(30, Vector3d::Zero())),
                    std::invalid_argument);
}

TEST_CASE("a sampled sphere converges with the sixth power of the span") {
    // this also proves the helper that other tests make their splines with
    const auto point = [](double u, double v) {
        const double a = u / 500, b = v / 500;
        return Vector3d(500 * std::sin(a), 500 * std::cos(a) * std::cos(b), -500 * std::cos(a) * std::sin(b));
    };
    const auto worst = [&](int spans) {
        const TensorSurface s =
            sheerlay::test::splineOf(point, {-300, 600.0 / spans, spans}, {-200, 400.0 / spans, spans});
        double e = 0;
        for (double u = -299; u < 300; u += 13)
            for (double v = -199; v < 200; v += 13)
                e = std::max(e, std::abs(s.point(u, v).norm() - 500));
        return e;
    };
    const double e3 = worst(3), e6 = worst(6);
    CHECK(e3 / e6 > 30);
    CHECK(e6 < 2e-5);
}
