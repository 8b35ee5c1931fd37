#include "core/hull/coupled_fit.hpp"

#include <algorithm>

namespace sheerlay::core {

using geometry::QuinticBasis;

CoupledFit::CoupledFit(const geometry::FairFit& fields, double fairness)
    : m_u(fields.knotsU()), m_v(fields.knotsV()), m_n(2 * m_u.poles() * m_v.poles()) {
    // the pattern also holds every coupling of the two fields that a row can bring
    std::vector<Eigen::Triplet<double>> entries;
    const auto& energy = fields.energy();
    for (int k = 0; k < energy.outerSize(); ++k)
        for (Eigen::SparseMatrix<double>::InnerIterator it(energy, k); it; ++it) {
            const int row = 2 * static_cast<int>(it.row());
            const int column = 2 * static_cast<int>(it.col());
            entries.emplace_back(row, column, fairness * it.value());
            entries.emplace_back(row + 1, column + 1, fairness * it.value());
            entries.emplace_back(row + 1, column, 0.0);
            if (row > column)
                entries.emplace_back(row, column + 1, 0.0);
        }
    m_energy.resize(m_n, m_n);
    m_energy.setFromTriplets(entries.begin(), entries.end());
    m_energy.makeCompressed();
    m_solver.analyzePattern(m_energy);
}

bool CoupledFit::factor(const std::vector<CoupledRow>& rows) {
    m_rows = rows;
    Eigen::SparseMatrix<double> a = m_energy;
    double* values = a.valuePtr();
    const int* outer = a.outerIndexPtr();
    const int* inner = a.innerIndexPtr();
    for (const CoupledRow& r : rows) {
        const auto b = coefficients(r);
        const double w = 1 / (r.sigma * r.sigma);
        for (std::size_t i = 0; i < b.size(); ++i) {
            if (b[i].second == 0)
                continue;
            // the twelve entries of one pole row follow one another in the column
            const int* begin = inner + outer[b[i].first];
            const int* end = inner + outer[b[i].first + 1];
            for (std::size_t k = i; k < b.size();) {
                const std::size_t rowEnd = (k / 12 + 1) * 12;
                auto at = std::lower_bound(begin, end, b[k].first) - inner;
                for (; k < rowEnd; ++k, ++at)
                    values[at] += w * b[i].second * b[k].second;
            }
        }
    }
    m_solver.factorize(a);
    return m_solver.info() == Eigen::Success;
}

Eigen::VectorXd CoupledFit::solve(const std::vector<double>& values) const {
    Eigen::VectorXd rhs = Eigen::VectorXd::Zero(m_n);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (values[i] == 0)
            continue;
        const double w = 1 / (m_rows[i].sigma * m_rows[i].sigma);
        for (const auto& [k, b] : coefficients(m_rows[i]))
            rhs[k] += w * b * values[i];
    }
    return m_solver.solve(rhs);
}

double CoupledFit::shapeCost(const Eigen::VectorXd& poles) const {
    return poles.dot(m_energy.selfadjointView<Eigen::Lower>() * poles);
}

double CoupledFit::reading(const CoupledRow& row, const Eigen::VectorXd& poles) const {
    double sum = 0;
    for (const auto& [k, b] : coefficients(row))
        sum += b * poles[k];
    return sum;
}

double CoupledFit::leverage(const CoupledRow& row) const {
    Eigen::VectorXd b = Eigen::VectorXd::Zero(m_n);
    for (const auto& [k, value] : coefficients(row))
        b[k] += value;
    m_solver.matrixL().solveInPlace(b); // natural ordering: b' A^-1 b = |L^-1 b|^2
    return b.squaredNorm() / (row.sigma * row.sigma);
}

std::vector<std::pair<int, double>> CoupledFit::coefficients(const CoupledRow& r) const {
    const QuinticBasis bu = geometry::quinticBasis(m_u, r.u);
    const QuinticBasis bv = geometry::quinticBasis(m_v, r.v);
    const auto& around = r.derivativeV ? bv.first : bv.value;
    std::vector<std::pair<int, double>> list;
    list.reserve(72);
    for (int i = 0; i < 6; ++i)
        for (int j = 0; j < 6; ++j) {
            const double b = bu.value[static_cast<std::size_t>(i)] * around[static_cast<std::size_t>(j)];
            const int k = 2 * ((bu.span + i) * m_v.poles() + bv.span + j);
            list.emplace_back(k, r.ny * b);
            list.emplace_back(k + 1, r.nz * b);
        }
    return list;
}

} // namespace sheerlay::core
