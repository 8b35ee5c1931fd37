#include "geometry/offset_surface.hpp"

#include <Eigen/Cholesky>

namespace sheerlay::geometry {
namespace {

/// Matrix that turns samples at `sites` into poles, by least squares.
Eigen::MatrixXd samplesToPoles(const UniformKnots& knots, const std::vector<double>& sites) {
    const auto n = static_cast<Eigen::Index>(sites.size());
    Eigen::MatrixXd basis = Eigen::MatrixXd::Zero(n, knots.poles());
    for (Eigen::Index r = 0; r < n; ++r) {
        const QuinticBasis b = quinticBasis(knots, sites[static_cast<std::size_t>(r)]);
        for (int k = 0; k < 6; ++k)
            basis(r, b.span + k) = b.value[static_cast<std::size_t>(k)];
    }
    return (basis.transpose() * basis).llt().solve(basis.transpose());
}

std::vector<double> sitesOf(const UniformKnots& knots) {
    std::vector<double> sites;
    const int perSpan = 2;
    for (int i = 0; i < knots.spans * perSpan; ++i)
        sites.push_back(knots.first + knots.step * (i + 0.5) / perSpan);
    // the end spans carry five poles that only they see
    for (const double f : {0.0, 0.08, 0.16})
        for (const bool atEnd : {false, true})
            sites.push_back(atEnd ? knots.last() - f * knots.step : knots.first + f * knots.step);
    return sites;
}

} // namespace

TensorSurface offsetSurface(const TensorSurface& surface, double distance, int refine) {
    UniformKnots ku = surface.knotsU();
    UniformKnots kv = surface.knotsV();
    for (UniformKnots* k : {&ku, &kv}) {
        k->spans *= refine;
        k->step /= refine;
    }
    const auto su = sitesOf(ku);
    const auto sv = sitesOf(kv);
    std::array<Eigen::MatrixXd, 3> samples;
    for (auto& m : samples)
        m.resize(static_cast<Eigen::Index>(su.size()), static_cast<Eigen::Index>(sv.size()));
    for (std::size_t i = 0; i < su.size(); ++i)
        for (std::size_t j = 0; j < sv.size(); ++j) {
            const SurfaceJet jet = surface.jet(su[i], sv[j]);
            const Eigen::Vector3d p = jet.p + distance * jet.normal();
            for (std::size_t c = 0; c < 3; ++c)
                samples[c](static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
                    p[static_cast<Eigen::Index>(c)];
        }
    const Eigen::MatrixXd mu = samplesToPoles(ku, su);
    const Eigen::MatrixXd mv = samplesToPoles(kv, sv);
    std::array<Eigen::MatrixXd, 3> poles;
    for (std::size_t c = 0; c < 3; ++c)
        poles[c] = mu * samples[c] * mv.transpose();
    std::vector<Eigen::Vector3d> flat;
    flat.reserve(static_cast<std::size_t>(ku.poles() * kv.poles()));
    for (Eigen::Index i = 0; i < ku.poles(); ++i)
        for (Eigen::Index j = 0; j < kv.poles(); ++j)
            flat.emplace_back(poles[0](i, j), poles[1](i, j), poles[2](i, j));
    return {ku, kv, std::move(flat)};
}

} // namespace sheerlay::geometry
