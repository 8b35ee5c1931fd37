#include "geometry/fair_fit.hpp"
#include "tests/support/catch.hpp"

#include <Eigen/QR>

#include <cmath>
#include <functional>
#include <random>
#include <vector>

using namespace sheerlay::geometry;

namespace {

const UniformKnots ku{-1000, 250, 8}, kv{0, 100, 6};

double valueAt(const std::vector<double>& poles, double u, double v) {
    const QuinticBasis a = quinticBasis(ku, u), b = quinticBasis(kv, v);
    double sum = 0;
    for (int i = 0; i < 6; ++i)
        for (int j = 0; j < 6; ++j)
            sum += poles[static_cast<std::size_t>((a.span + i) * kv.poles() + b.span + j)] *
                   a.value[static_cast<std::size_t>(i)] * b.value[static_cast<std::size_t>(j)];
    return sum;
}

/// Scattered conditions on f, some of them on df/dv.
std::vector<FieldRow> rowsOf(const std::function<double(double, double)>& f,
                             const std::function<double(double, double)>& fv,
                             double noise = 0.0) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> d(0, 1);
    std::normal_distribution<double> n(0, 1);
    std::vector<FieldRow> rows;
    for (int i = 0; i < 160; ++i) {
        const double u = -1000 + 2000 * d(random), v = 600 * d(random);
        const bool slope = i % 8 == 0;
        rows.push_back({u, v, (slope ? fv(u, v) : f(u, v) + noise * n(random)), 0.5 + d(random), slope});
    }
    return rows;
}

double residual(const std::vector<double>& poles, const std::vector<FieldRow>& rows) {
    double sum = 0;
    for (const FieldRow& r : rows)
        if (!r.derivativeV)
            sum += std::pow(r.weight * (valueAt(poles, r.u, r.v) - r.value), 2);
    return std::sqrt(sum);
}

double quadratic(double u, double v) {
    return 3 + 0.02 * u - 0.4 * v + 1e-4 * u * u - 3e-4 * u * v + 2e-4 * v * v;
}
double quadraticV(double u, double v) {
    return -0.4 - 3e-4 * u + 4e-4 * v;
}
double wave(double u, double v) {
    return 40 * std::sin(u / 300) * std::cos(v / 150);
}
double waveV(double u, double v) {
    return -40.0 / 150 * std::sin(u / 300) * std::sin(v / 150);
}

} // namespace

TEST_CASE("a field without third derivatives is given back whatever the fairness weight") {
    FairFit fit(ku, kv, 3);
    const auto rows = rowsOf(quadratic, quadraticV);
    for (const double lambda : {1.0, 3e5, 1e9}) {
        const std::vector<double> poles = fit.solve(rows, lambda);
        REQUIRE(poles.size() == static_cast<std::size_t>(ku.poles() * kv.poles()));
        for (double u = -1000; u <= 1000; u += 111)
            for (double v = 0; v <= 600; v += 67) {
                INFO("lambda " << lambda << " at " << u << ", " << v);
                CHECK_THAT(valueAt(poles, u, v), WithinAbs(quadratic(u, v), 1e-5));
            }
    }
}

TEST_CASE("more fairness, more residual, and never a weaker fit for less") {
    FairFit fit(ku, kv, 3);
    const auto rows = rowsOf(wave, waveV, 0.5);
    double before = 0;
    for (const double lambda : {1e-2, 1.0, 1e2, 1e4, 1e6, 1e8}) {
        const double now = residual(fit.solve(rows, lambda), rows);
        CHECK(now > before);
        before = now;
    }
}

TEST_CASE("fairness alone leaves the best quadratic: third derivatives are all it minds") {
    FairFit fit(ku, kv, 3);
    const auto rows = rowsOf(wave, waveV, 0.5);
    Eigen::MatrixXd a(static_cast<Eigen::Index>(rows.size()), 6);
    Eigen::VectorXd b(a.rows());
    for (Eigen::Index i = 0; i < a.rows(); ++i) {
        const FieldRow& r = rows[static_cast<std::size_t>(i)];
        const double u = r.u / 1000, v = r.v / 300;
        if (r.derivativeV)
            a.row(i) << 0, 0, 1 / 300.0, 0, u / 300, 2 * v / 300;
        else
            a.row(i) << 1, u, v, u * u, u * v, v * v;
        a.row(i) *= r.weight;
        b(i) = r.weight * r.value;
    }
    const Eigen::VectorXd c = a.colPivHouseholderQr().solve(b);
    const std::vector<double> poles = fit.solve(rows, 1e13);
    REQUIRE_FALSE(poles.empty());
    for (const auto& [u, v] : {std::pair{-900.0, 20.0}, std::pair{0.0, 300.0}, std::pair{700.0, 580.0}}) {
        const double x = u / 1000, y = v / 300;
        const double quadric = c(0) + c(1) * x + c(2) * y + c(3) * x * x + c(4) * x * y + c(5) * y * y;
        CHECK_THAT(valueAt(poles, u, v), WithinAbs(quadric, 0.05));
    }
}

TEST_CASE("the field found is the least of data misfit plus fairness: any push makes it worse") {
    // the energy is measured here by brute force, not by the fit's own matrix
    FairFit fit(ku, kv, 2);
    const double lambda = 1e9, alpha = 2;
    const auto rows = rowsOf(wave, waveV, 0.5);
    const std::vector<double> poles = fit.solve(rows, lambda);
    const auto cost = [&](const std::vector<double>& p) {
        double sum = 0;
        const double h = 1e-2;
        const auto slopeV = [&](double u, double v) {
            return (valueAt(p, u, v + h) - valueAt(p, u, v - h)) / (2 * h);
        };
        for (const FieldRow& r : rows) {
            const double value = r.derivativeV ? slopeV(r.u, r.v) : valueAt(p, r.u, r.v);
            sum += std::pow(r.weight * (value - r.value), 2);
        }
        // midpoint rule on third differences of the spline
        const int nu = 8 * 8, nv = 6 * 8;
        const double du = 2000.0 / nu, dv = 600.0 / nv, e = 5;
        const auto third = [&](double u, double v, int a) {
            // mixed third derivative by central differences of tensor type: a times in u, 3 - a in v
            static constexpr double c[4][4] = {
                {0, 1, 0, 0}, {-0.5, 0, 0.5, 0}, {1, -2, 1, 0}, {-1, 3, -3, 1}};
            double total = 0;
            for (int i = 0; i < 4; ++i)
                for (int j = 0; j < 4; ++j) {
                    const double cu = c[a][i], cv = c[3 - a][j];
                    if (cu != 0 && cv != 0)
                        total += cu * cv *
                                 valueAt(p,
                                         u + e * (a == 3 ? i - 1.5 : i - 1),
                                         v + e * (a == 0 ? j - 1.5 : j - 1));
                }
            return total / (e * e * e);
        };
        const double factor[4] = {1 / alpha, 3 * alpha, 3 * std::pow(alpha, 3), std::pow(alpha, 5)};
        for (int i = 0; i < nu; ++i)
            for (int j = 0; j < nv; ++j)
                for (int a = 0; a < 4; ++a)
                    sum += lambda * du * dv * factor[a] *
                           std::pow(third(-1000 + du * (i + 0.5), dv * (j + 0.5), a), 2);
        return sum;
    };
    const double least = cost(poles);
    // smooth pushes: on these the four parts of the energy weigh differently, and none drowns the rest
    for (int a = 0; a <= 4; ++a)
        for (int b = 0; b <= 4; ++b) {
            if (a + b < 3 || a + b > 4)
                continue;
            INFO("push u^" << a << " v^" << b);
            std::vector<double> up = poles, down = poles;
            for (int i = 0; i < ku.poles(); ++i)
                for (int k = 0; k < kv.poles(); ++k) {
                    const double push =
                        std::pow(ku.greville(i) / 1000, a) * std::pow(kv.greville(k) / 300 - 1, b);
                    up[static_cast<std::size_t>(i * kv.poles() + k)] += push;
                    down[static_cast<std::size_t>(i * kv.poles() + k)] -= push;
                }
            const double rise = 0.5 * (cost(up) + cost(down)) - least; // curvature along the push
            const double slope = 0.5 * (cost(up) - cost(down));
            CHECK(rise > 0);
            CHECK(std::abs(slope) < 0.05 * rise); // stands in the valley, as far as the brute force can tell
        }
}

TEST_CASE("heavier rows are followed more closely") {
    FairFit fit(ku, kv, 3);
    auto rows = rowsOf(wave, waveV, 0.5);
    const FieldRow odd{0, 300, wave(0, 300) + 20, 1.0, false};
    rows.push_back(odd);
    const double light = valueAt(fit.solve(rows, 1e5), 0, 300);
    rows.back().weight = 100;
    const double heavy = valueAt(fit.solve(rows, 1e5), 0, 300);
    CHECK(std::abs(heavy - odd.value) < 0.1);
    CHECK(std::abs(light - odd.value) > 5);
}

TEST_CASE("conditions that do not determine the field give nothing") {
    FairFit fit(ku, kv, 3);
    CHECK(fit.solve({}, 1e5).empty());
    // all on one line v = const: what is square to it stays free
    std::vector<FieldRow> line;
    for (int i = 0; i < 40; ++i)
        line.push_back({-900.0 + 45 * i, 250, 1.0, 1.0, false});
    CHECK(fit.solve(line, 1e5).empty());
    // and the same object still works afterwards
    CHECK_FALSE(fit.solve(rowsOf(quadratic, quadraticV), 1e5).empty());
}
