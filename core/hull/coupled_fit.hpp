#pragma once

#include "geometry/fair_fit.hpp"

#include <Eigen/Core>
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include <utility>
#include <vector>

namespace sheerlay::core {

/// One linear condition on half-breadth y and height z at a place of the surface: ny y + nz z = value, or the
/// same on their derivatives by v.
struct CoupledRow {
    double u = 0.0, v = 0.0;
    double ny = 0.0, nz = 0.0;
    double sigma = 1.0; ///< spread of `value`
    bool derivativeV = false;
};

/// The fairing of half-breadth and height together, coupled by rows along the sections' normals, which let a
/// point slide along its section: what the points say of the shape alone. One factorisation serves any
/// number of solutions. Poles are stacked y, z, y, z, … in the order of the fields.
/// @source table_checks.md section 2.1
class CoupledFit {
public:
    /// @param fields    the net and its fairing energy; only read here
    /// @param fairness  the energy's weight for rows weighted 1 / sigma
    CoupledFit(const geometry::FairFit& fields, double fairness);

    /// Takes the rows into the system and factors it; false when they do not determine a surface.
    bool factor(const std::vector<CoupledRow>& rows);

    /// Poles that meet the factored rows' values best, the energy weighed in.
    /// @param values  one per row of the last factor()
    [[nodiscard]] Eigen::VectorXd solve(const std::vector<double>& values) const;

    /// The energy of these poles, weighed by the fairness: what the fit pays for their shape, in the units of
    /// a squared residual over its spread.
    [[nodiscard]] double shapeCost(const Eigen::VectorXd& poles) const;

    /// What a row reads off these poles: ny y + nz z at its place.
    [[nodiscard]] double reading(const CoupledRow& row, const Eigen::VectorXd& poles) const;

    /// How much of the fit at a row there would be that very row, 0 to 1, were it among the factored ones.
    [[nodiscard]] double leverage(const CoupledRow& row) const;

private:
    [[nodiscard]] std::vector<std::pair<int, double>> coefficients(const CoupledRow& row) const;

    geometry::UniformKnots m_u, m_v;
    int m_n = 0;
    Eigen::SparseMatrix<double> m_energy; // lower triangle over the stacked fields
    std::vector<CoupledRow> m_rows;
    Eigen::SimplicialLLT<Eigen::SparseMatrix<double>, Eigen::Lower, Eigen::NaturalOrdering<int>> m_solver;
};

} // namespace sheerlay::core
