#pragma once

#include "geometry/tensor_surface.hpp"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include <vector>

namespace sheerlay::geometry {

/// One linear condition on a scalar spline field f(u, v).
struct FieldRow {
    double u = 0.0, v = 0.0;
    double value = 0.0;       ///< what f (or df/dv) should be there
    double weight = 1.0;      ///< 1 / spread of `value`
    bool derivativeV = false; ///< the condition is on df/dv
};

/// Fair fitting of scalar fields over one uniform quintic net: least squares plus lambda times the integral
/// of the squared third derivatives over the whole rectangle, with u shrunk by `alpha` (minimum variation in
/// the shrunk frame). Across a crease of v nothing is asked to be fair. The energy and the factor's pattern
/// are made once; each solve is one sparse Cholesky factorisation.
/// @source shared reasoning: planking.md section 2; minimum-variation fairing in general
class FairFit {
public:
    /// @param alpha  about station spacing over the girth spacing of the points; 2 to 5 hardly differ
    FairFit(UniformKnots u, UniformKnots v, double alpha);

    /// @return poles of f, u-major, or an empty vector when the rows do not determine f
    [[nodiscard]] std::vector<double> solve(const std::vector<FieldRow>& rows, double lambda);

    [[nodiscard]] const UniformKnots& knotsU() const noexcept { return m_u; }
    [[nodiscard]] const UniformKnots& knotsV() const noexcept { return m_v; }

    /// Lower triangle of the energy's matrix over the poles, u-major; for systems that couple several fields.
    [[nodiscard]] const Eigen::SparseMatrix<double>& energy() const noexcept { return m_energy; }

private:
    UniformKnots m_u, m_v;
    Eigen::SparseMatrix<double> m_energy; // lower triangle
    Eigen::SimplicialLLT<Eigen::SparseMatrix<double>, Eigen::Lower, Eigen::NaturalOrdering<int>> m_solver;
    bool m_analysed = false;
};

} // namespace sheerlay::geometry
