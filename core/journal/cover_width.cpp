#include "core/journal/cover_width.hpp"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>

namespace sheerlay::core {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

double squared(double value) {
    return value * value;
}

/// How many strips of rows first..last are cut from each board; the common bias counts them all.
VectorXd stripCounts(int stripsPerBoard, Index size, int first, int last) {
    VectorXd counts = VectorXd::Zero(size);
    for (int row = first; row <= last; ++row) {
        counts[0] += 1;
        counts[1 + std::min<Index>((row - 1) / stripsPerBoard, size - 2)] += 1;
    }
    return counts;
}

} // namespace

CoverWidth::CoverWidth(const WidthPrior& prior, VectorXd mean, MatrixXd covariance)
    : m_prior(prior), m_mean(std::move(mean)), m_covariance(std::move(covariance)) {}

VectorXd CoverWidth::weights(int first, int last) const {
    return stripCounts(m_prior.stripsPerBoard, m_mean.size(), first, last);
}

Spread CoverWidth::meanOf(int first, int last) const {
    if (last < first)
        return {};
    const VectorXd w = weights(first, last) / (last - first + 1);
    return {w.dot(m_mean), std::sqrt(std::max(0.0, w.dot(m_covariance * w)))};
}

Spread CoverWidth::sumOf(int first, int last) const {
    if (last < first)
        return {};
    const VectorXd w = weights(first, last);
    const double local = squared(m_prior.waviness) * (last - first + 1);
    return {w.dot(m_mean), std::sqrt(std::max(0.0, w.dot(m_covariance * w)) + local)};
}

CoverWidth inferCoverWidth(const WidthPrior& prior, int rows, const MeanOffsets& read) {
    if (rows < 1 || prior.stripsPerBoard < 1)
        throw std::invalid_argument("inferCoverWidth: rows and strips per board must be 1 or more");
    const Index size = 2 + (rows - 1) / prior.stripsPerBoard;
    MatrixXd covariance = MatrixXd::Zero(size, size);
    covariance.diagonal().setConstant(squared(prior.board));
    covariance(0, 0) = squared(prior.common);
    VectorXd mean = VectorXd::Zero(size);
    if (read.rows.empty())
        return {prior, mean, covariance};

    const auto n = static_cast<Index>(read.rows.size());
    const double localVariance =
        squared(prior.waviness) / std::max(1.0, read.length / prior.wavinessSpan); // of a mean over the boat
    MatrixXd strips(n, size);
    MatrixXd noise = MatrixXd::Constant(n, n, squared(read.sharedSd));
    VectorXd offsets(n);
    for (Index i = 0; i < n; ++i) {
        const MeanOffset& a = read.rows[static_cast<std::size_t>(i)];
        if (a.row < 1 || a.row > rows)
            throw std::invalid_argument("inferCoverWidth: row " + std::to_string(a.row) +
                                        " is not on the boat");
        strips.row(i) = stripCounts(prior.stripsPerBoard, size, 1, a.row).transpose();
        offsets[i] = a.offset;
        noise(i, i) += squared(a.sd) + 1e-12; // rows read twice without noise stay solvable
        for (Index j = 0; j < n; ++j)         // a later edge carries all the waves of an earlier one
            noise(i, j) += localVariance * std::min(a.row, read.rows[static_cast<std::size_t>(j)].row);
    }
    const MatrixXd cross = covariance * strips.transpose();
    const Eigen::LDLT<MatrixXd> total(strips * cross + noise);
    mean = cross * total.solve(offsets);
    covariance -= cross * total.solve(cross.transpose());
    return {prior, std::move(mean), std::move(covariance)};
}

} // namespace sheerlay::core
