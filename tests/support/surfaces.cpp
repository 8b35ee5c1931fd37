#include "tests/support/surfaces.hpp"

#include <Eigen/Cholesky>

#include <array>
#include <cstddef>
#include <vector>

namespace sheerlay::test {

geometry::TensorSurface splineOf(const std::function<Eigen::Vector3d(double, double)>& point,
                                 const geometry::UniformKnots& ku,
                                 const geometry::UniformKnots& kv) {
    const auto sites = [](const geometry::UniformKnots& k) {
        std::vector<double> t;
        for (int i = 0; i <= 3 * k.spans; ++i)
            t.push_back(k.first + k.step * i / 3);
        for (const double f : {0.1, 0.2, 0.5}) {
            t.push_back(k.first + f * k.step);
            t.push_back(k.last() - f * k.step);
        }
        return t;
    };
    const auto toPoles = [](const geometry::UniformKnots& k, const std::vector<double>& t) {
        Eigen::MatrixXd basis = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(t.size()), k.poles());
        for (std::size_t r = 0; r < t.size(); ++r) {
            const geometry::QuinticBasis b = geometry::quinticBasis(k, t[r]);
            for (int q = 0; q < 6; ++q)
                basis(static_cast<Eigen::Index>(r), b.span + q) = b.value[static_cast<std::size_t>(q)];
        }
        return Eigen::MatrixXd((basis.transpose() * basis).ldlt().solve(basis.transpose()));
    };
    const auto su = sites(ku), sv = sites(kv);
    const Eigen::MatrixXd mu = toPoles(ku, su), mv = toPoles(kv, sv);
    std::array<Eigen::MatrixXd, 3> poles;
    for (Eigen::Index c = 0; c < 3; ++c) {
        Eigen::MatrixXd samples(mu.cols(), mv.cols());
        for (std::size_t i = 0; i < su.size(); ++i)
            for (std::size_t j = 0; j < sv.size(); ++j)
                samples(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) = point(su[i], sv[j])[c];
        poles[static_cast<std::size_t>(c)] = mu * samples * mv.transpose();
    }
    std::vector<Eigen::Vector3d> flat;
    for (Eigen::Index i = 0; i < ku.poles(); ++i)
        for (Eigen::Index j = 0; j < kv.poles(); ++j)
            flat.emplace_back(poles[0](i, j), poles[1](i, j), poles[2](i, j));
    return {ku, kv, std::move(flat)};
}

} // namespace sheerlay::test
