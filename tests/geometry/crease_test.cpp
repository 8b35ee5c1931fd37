#include "geometry/fair_fit.hpp"
#include "geometry/offset_surface.hpp"
#include "geometry/tensor_surface.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <vector>

using namespace sheerlay::geometry;
using Eigen::Vector3d;

namespace {

const UniformKnots ku{-1000, 250, 8};
const UniformKnots kv{-80, 40, 12, 7}; // the crease at v = 200

/// Cox - de Boor from the definition, with 0 / 0 = 0 at repeated knots.
double deBoor(const std::vector<double>& t, std::size_t i, std::size_t p, double x) {
    if (p == 0)
        return x >= t[i] && x < t[i + 1] ? 1.0 : 0.0;
    const auto part = [](double over, double under) { return under > 0 ? over / under : 0.0; };
    return part(x - t[i], t[i + p] - t[i]) * deBoor(t, i, p - 1, x) +
           part(t[i + p + 1] - x, t[i + p + 1] - t[i + 1]) * deBoor(t, i + 1, p - 1, x);
}

double ramp(double v, double slope) {
    return slope * std::max(0.0, v - kv.creaseAt());
}

/// Two planes that meet at v = 200: upright above, sloping in by `turn` radians from it below; the line they
/// meet in rises by 0.1 and comes in by 0.05 over x.
TensorSurface twoPlanes(double turn) {
    std::vector<double> greville;
    const std::vector<double> t = kv.fullVector();
    for (std::size_t j = 0; j < static_cast<std::size_t>(kv.poles()); ++j)
        greville.push_back((t[j + 1] + t[j + 2] + t[j + 3] + t[j + 4] + t[j + 5]) / 5);
    std::vector<Vector3d> poles;
    for (int i = 0; i < ku.poles(); ++i)
        for (const double v : greville) {
            const double u = ku.greville(i);
            const double down = v - kv.creaseAt();
            const double angle = down > 0 ? turn : 0.0;
            poles.emplace_back(u, 400 - 0.05 * u - down * std::sin(angle), 0.1 * u - down * std::cos(angle));
        }
    return {ku, kv, poles};
}

} // namespace

TEST_CASE("the knot at a crease stands five times, and the basis is the recurrence's") {
    const std::vector<double> t = kv.fullVector();
    REQUIRE(t.size() == static_cast<std::size_t>(kv.poles()) + 6);
    CHECK(std::count(t.begin(), t.end(), kv.creaseAt()) == 5);
    for (double x = kv.first + 0.3; x < kv.last(); x += 1.7) {
        const QuinticBasis b = quinticBasis(kv, x);
        for (std::size_t i = 0; i < static_cast<std::size_t>(kv.poles()); ++i) {
            const std::size_t k = i - static_cast<std::size_t>(b.span);
            const double value = i >= static_cast<std::size_t>(b.span) && k < 6 ? b.value[k] : 0.0;
            CHECK_THAT(value, WithinAbs(deBoor(t, i, 5, x), 1e-13));
        }
        CHECK_THAT(std::accumulate(b.value.begin(), b.value.end(), 0.0), WithinAbs(1, 1e-13));
    }
}

TEST_CASE("derivatives of the basis near a crease, by differences") {
    constexpr double h = 1e-3;
    for (double x = kv.first + 5.1; x < kv.last() - 5; x += 3.3) {
        const QuinticBasis a = quinticBasis(kv, x - h), b = quinticBasis(kv, x), c = quinticBasis(kv, x + h);
        const auto third = quinticThird(kv, x);
        for (std::size_t i = 0; i < 6; ++i) {
            CHECK_THAT((c.value[i] - a.value[i]) / (2 * h), WithinAbs(b.first[i], 1e-8));
            CHECK_THAT((c.first[i] - a.first[i]) / (2 * h), WithinAbs(b.second[i], 1e-8));
            CHECK_THAT((c.second[i] - a.second[i]) / (2 * h), WithinAbs(third[i], 1e-8));
        }
    }
}

TEST_CASE("a fit goes round a corner at the crease without any loss of fairness") {
    FairFit fit(ku, kv, 3);
    std::vector<FieldRow> rows;
    for (double u = -900; u <= 900; u += 300)
        for (double v = -60; v <= 380; v += 40)
            rows.push_back({u, v, 0.01 * u + 0.2 * v + ramp(v, -0.9), 1.0});
    // a weight that would iron out anything the energy charges for
    const std::vector<double> poles = fit.solve(rows, 1e9);
    REQUIRE(poles.size() == static_cast<std::size_t>(ku.poles() * kv.poles()));
    std::vector<Vector3d> net;
    for (const double p : poles)
        net.emplace_back(0, 0, p);
    const TensorSurface s(ku, kv, net);
    for (double u = -950; u <= 950; u += 130)
        for (double v = -70; v <= 395; v += 9)
            CHECK_THAT(s.point(u, v).z(), WithinAbs(0.01 * u + 0.2 * v + ramp(v, -0.9), 1e-5));
}

TEST_CASE("one side of a creased surface runs on smoothly past the crease") {
    const TensorSurface s = twoPlanes(0.9);
    REQUIRE(s.crease());
    CHECK(*s.crease() == 200);
    const TensorSurface before = s.oneSide(-1), after = s.oneSide(+1);
    CHECK_FALSE(before.crease());
    for (double u = -700; u < 700; u += 100) {
        CHECK((before.point(u, 260) - Vector3d(u, 400 - 0.05 * u, 0.1 * u - 60)).norm() < 1e-9);
        CHECK((after.point(u, 150) -
               Vector3d(u, 400 - 0.05 * u + 50 * std::sin(0.9), 0.1 * u + 50 * std::cos(0.9)))
                  .norm() < 1e-9);
        CHECK((s.point(u, 150) - before.point(u, 150)).norm() < 1e-12);
        CHECK((s.point(u, 260) - after.point(u, 260)).norm() < 1e-12);
        CHECK((before.point(u, 200) - after.point(u, 200)).norm() < 1e-9);
    }
}

TEST_CASE("the offset of two planes is two planes that meet at the crease's own parameter") {
    for (const double turn : {0.3, 0.9, 1.4})
        for (const double d : {-6.35, 3.175, 6.35}) {
            const TensorSurface s = twoPlanes(turn);
            const TensorSurface o = offsetSurface(s, d);
            REQUIRE(o.crease());
            CHECK_THAT(*o.crease(), WithinAbs(200, 1e-9));
            const Vector3d above = s.jet(0, 100).normal(), below = s.jet(0, 300).normal();
            const Vector3d onLine = s.point(0, 200);
            double off = 0;
            for (double u = -900; u <= 900; u += 87) {
                for (double v = -70; v <= 390; v += 7.3)
                    off = std::max(off, std::abs((o.point(u, v) - onLine).dot(v < 200 ? above : below) - d));
                for (const Vector3d& n : {above, below}) // the corner lies in both
                    off = std::max(off, std::abs((o.point(u, 200) - onLine).dot(n) - d));
                // v = 0 is the offset of v = 0
                off = std::max(off, (o.point(u, 0) - s.point(u, 0) - d * above).norm());
            }
            CHECK(off < 1e-6);
        }
}

TEST_CASE("knots that can't hold a crease are refused") {
    const std::vector<Vector3d> poles(static_cast<std::size_t>(ku.poles()) * 21, Vector3d::Zero());
    CHECK_NOTHROW(TensorSurface(ku, kv, poles));
    CHECK_THROWS_AS(TensorSurface(ku, {-80, 40, 12, 12}, poles), std::invalid_argument);
    CHECK_THROWS_AS(TensorSurface(kv, ku, std::vector<Vector3d>(21 * 13)), std::invalid_argument);
}
