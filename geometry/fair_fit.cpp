#include "geometry/fair_fit.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::geometry {
namespace {

/// m-th derivative (0 to 3) of the six basis functions on a span.
std::array<double, 6> derivative(const UniformKnots& k, double t, int m) {
    if (m == 3)
        return quinticThird(k, t);
    const QuinticBasis b = quinticBasis(k, t);
    return m == 0 ? b.value : m == 1 ? b.first : b.second;
}

/// Gram matrix of m-th derivatives over the whole domain, as its bands 0 to 5 above the diagonal.
std::vector<std::array<double, 6>> gramBands(const UniformKnots& k, int m) {
    // six-point Gauss is exact for the tenth-degree products
    constexpr std::array<double, 3> node = {0.2386191860831969, 0.6612093864662645, 0.9324695142031521};
    constexpr std::array<double, 3> weight = {0.4679139345726910, 0.3607615730481386, 0.1713244923791704};
    std::vector<std::array<double, 6>> bands(static_cast<std::size_t>(k.poles()), std::array<double, 6>{});
    for (int span = 0; span < k.spans; ++span)
        for (std::size_t q = 0; q < 6; ++q) {
            const double x = (q < 3 ? -node[q] : node[q - 3]);
            const double t = k.first + k.step * (span + 0.5 + 0.5 * x);
            const auto d = derivative(k, t, m);
            const auto pole = static_cast<std::size_t>(quinticBasis(k, t).span);
            const double w = 0.5 * k.step * weight[q % 3];
            for (std::size_t a = 0; a < 6; ++a)
                for (std::size_t b = a; b < 6; ++b)
                    bands[pole + a][b - a] += w * d[a] * d[b];
        }
    return bands;
}

} // namespace

FairFit::FairFit(UniformKnots u, UniformKnots v, double alpha) : m_u(u), m_v(v) {
    const int nu = u.poles();
    const int nv = v.poles();
    std::array<std::vector<std::array<double, 6>>, 4> gu;
    std::array<std::vector<std::array<double, 6>>, 4> gv;
    for (int m = 0; m < 4; ++m) {
        gu[static_cast<std::size_t>(m)] = gramBands(u, m);
        gv[static_cast<std::size_t>(m)] = gramBands(v, m);
    }
    // sum over k of C(3,k) alpha^(2(3-k)-1) |d3 f / du(3-k) dv(k)|^2
    std::array<double, 4> factor{};
    constexpr std::array<double, 4> binomial = {1, 3, 3, 1};
    for (int k = 0; k < 4; ++k)
        factor[static_cast<std::size_t>(k)] =
            binomial[static_cast<std::size_t>(k)] * std::pow(alpha, 2 * (3 - k) - 1);

    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(static_cast<std::size_t>(nu * nv) * 66);
    for (int i = 0; i < nu; ++i)
        for (int di = 0; di < 6 && i + di < nu; ++di)
            for (int j = 0; j < nv; ++j)
                for (int dj = (di == 0 ? 0 : -5); dj < 6; ++dj) {
                    if (j + dj < 0 || j + dj >= nv)
                        continue;
                    double e = 0;
                    const auto lowJ = static_cast<std::size_t>(std::min(j, j + dj));
                    for (std::size_t k = 0; k < 4; ++k)
                        e += factor[k] *
                             gu[3 - k][static_cast<std::size_t>(i)][static_cast<std::size_t>(di)] *
                             gv[k][lowJ][static_cast<std::size_t>(std::abs(dj))];
                    entries.emplace_back((i + di) * nv + j + dj, i * nv + j, e);
                }
    m_energy.resize(nu * nv, nu * nv);
    m_energy.setFromTriplets(entries.begin(), entries.end());
    m_energy.makeCompressed();
}

std::vector<double> FairFit::solve(const std::vector<FieldRow>& rows, double lambda) {
    const int nv = m_v.poles();
    Eigen::SparseMatrix<double> a = m_energy * lambda;
    Eigen::VectorXd rhs = Eigen::VectorXd::Zero(a.cols());
    double* values = a.valuePtr();
    const int* outer = a.outerIndexPtr();
    const int* inner = a.innerIndexPtr();
    for (const FieldRow& row : rows) {
        const QuinticBasis bu = quinticBasis(m_u, row.u);
        const QuinticBasis bv = quinticBasis(m_v, row.v);
        const auto& fv = row.derivativeV ? bv.first : bv.value;
        const double w2 = row.weight * row.weight;
        for (int i = 0; i < 6; ++i)
            for (int j = 0; j < 6; ++j) {
                const double b = bu.value[static_cast<std::size_t>(i)] * fv[static_cast<std::size_t>(j)];
                const int column = (bu.span + i) * nv + bv.span + j;
                rhs[column] += w2 * b * row.value;
                // within a column the rows of one u-offset are contiguous
                const int* first = inner + outer[column];
                const int* last = inner + outer[column + 1];
                for (int p = i; p < 6; ++p) {
                    const int q0 = p == i ? j : 0;
                    const int target = (bu.span + p) * nv + bv.span + q0;
                    const auto at = std::lower_bound(first, last, target) - inner;
                    for (int q = q0; q < 6; ++q)
                        values[at + (q - q0)] +=
                            w2 * b * bu.value[static_cast<std::size_t>(p)] * fv[static_cast<std::size_t>(q)];
                }
            }
    }
    if (!m_analysed) {
        m_solver.analyzePattern(a);
        m_analysed = true;
    }
    m_solver.factorize(a);
    if (m_solver.info() != Eigen::Success)
        return {};
    const Eigen::VectorXd x = m_solver.solve(rhs);
    if (!x.allFinite())
        return {};
    return {x.data(), x.data() + x.size()};
}

} // namespace sheerlay::geometry
