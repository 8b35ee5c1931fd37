#include "core/journal/smooth_readings.hpp"

#include <Eigen/Cholesky>

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <vector>

namespace sheerlay::core {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double runOut = 600.0; // mm, over which the slope fades past the outermost reading
constexpr int fewReadings = 4;
constexpr double softest = 1e-6; // penalty weights, in units of the data's; beyond them nothing changes
constexpr double stiffest = 1e7;

/// The four uniform cubic B-splines over one span, or their derivatives over t in 0..1.
std::array<double, 4> bumps(double t, int derivative) {
    const double s = 1 - t;
    if (derivative == 0)
        return {s * s * s / 6,
                (3 * t * t * t - 6 * t * t + 4) / 6,
                (3 * s * s * s - 6 * s * s + 4) / 6,
                t * t * t / 6};
    if (derivative == 1)
        return {-s * s / 2, (3 * t * t - 4 * t) / 2, (4 * s - 3 * s * s) / 2, t * t / 2};
    return {s, 3 * t - 2, 3 * s - 2, t};
}

struct Grid {
    double from = 0.0;
    double to = 0.0;
    int spans = 1;
};

VectorXd basisOn(const Grid& grid, double x, int derivative) {
    const double span = (grid.to - grid.from) / grid.spans;
    const double place = std::clamp((x - grid.from) / span, 0.0, static_cast<double>(grid.spans));
    const int first = std::min(static_cast<int>(place), grid.spans - 1);
    const auto b = bumps(place - first, derivative);
    VectorXd row = VectorXd::Zero(grid.spans + 3);
    for (int i = 0; i < 4; ++i)
        row[first + i] = b[static_cast<std::size_t>(i)] / std::pow(span, derivative);
    return row;
}

/// Readings as a least-squares problem, each row divided by its standard deviation.
struct Problem {
    MatrixXd rows;
    VectorXd values;
};

double residualOf(const Problem& problem, const VectorXd& solution) {
    return std::sqrt((problem.values - problem.rows * solution).squaredNorm() /
                     static_cast<double>(problem.values.size()));
}

struct Solution {
    VectorXd value;
    MatrixXd covariance;
};

Solution solve(const MatrixXd& normal, const VectorXd& right) {
    const Eigen::LDLT<MatrixXd> factor(normal);
    return {factor.solve(right), factor.solve(MatrixXd::Identity(normal.rows(), normal.cols()))};
}

Solution leastSquares(const Problem& problem) {
    return solve(problem.rows.transpose() * problem.rows, problem.rows.transpose() * problem.values);
}

/// A constant, or a line where a constant leaves too much: coefficients of both are a + b * their own places.
Solution
constantOrLine(std::span<const OffsetReading> readings, const Grid& grid, const SmoothSettings& settings) {
    const auto n = static_cast<Index>(readings.size());
    const double middle = 0.5 * (grid.from + grid.to);
    Problem line{MatrixXd(n, 2), VectorXd(n)};
    for (Index i = 0; i < n; ++i) {
        const OffsetReading& r = readings[static_cast<std::size_t>(i)];
        line.rows.row(i) << 1 / r.sd, (r.x - middle) / r.sd;
        line.values[i] = r.offset / r.sd;
    }
    const Problem constant{line.rows.leftCols(1), line.values};
    const Solution level = leastSquares(constant);
    const bool onePlace = line.rows.rows() < 2 || std::all_of(readings.begin(), readings.end(), [&](auto& r) {
                              return r.x == readings.front().x;
                          });
    const double span = (grid.to - grid.from) / grid.spans;
    MatrixXd spread(grid.spans + 3, 2);
    for (Index i = 0; i < spread.rows(); ++i)
        spread.row(i) << 1, grid.from + span * static_cast<double>(i - 1) - middle;
    if (onePlace || residualOf(constant, level.value) <= settings.residual) {
        const VectorXd ones = spread.col(0);
        return {ones * level.value[0], ones * level.covariance(0, 0) * ones.transpose()};
    }
    const Solution slope = leastSquares(line);
    return {spread * slope.value, spread * slope.covariance * spread.transpose()};
}

Solution
stiffestSpline(std::span<const OffsetReading> readings, const Grid& grid, const SmoothSettings& settings) {
    const auto n = static_cast<Index>(readings.size());
    const Index m = grid.spans + 3;
    Problem problem{MatrixXd(n, m), VectorXd(n)};
    for (Index i = 0; i < n; ++i) {
        const OffsetReading& r = readings[static_cast<std::size_t>(i)];
        problem.rows.row(i) = basisOn(grid, r.x, 0).transpose() / r.sd;
        problem.values[i] = r.offset / r.sd;
    }
    MatrixXd differences = MatrixXd::Zero(m - 2, m);
    for (Index i = 0; i < m - 2; ++i)
        differences.block(i, i, 1, 3) << 1, -2, 1;
    const MatrixXd data = problem.rows.transpose() * problem.rows;
    const MatrixXd penalty = differences.transpose() * differences;
    const VectorXd right = problem.rows.transpose() * problem.values;
    const double unit = data.trace() / static_cast<double>(m);
    const auto with = [&](double weight) { return solve(data + weight * unit * penalty, right); };

    Solution best = with(stiffest);
    if (residualOf(problem, best.value) <= settings.residual)
        return best;
    double low = std::log(softest);
    double high = std::log(stiffest);
    for (int i = 0; i < 40; ++i) { // residuals grow with the weight
        const double weight = 0.5 * (low + high);
        best = with(std::exp(weight));
        (residualOf(problem, best.value) <= settings.residual ? low : high) = weight;
    }
    return with(std::exp(low));
}

} // namespace

SmoothOffset::SmoothOffset(double from, double to, VectorXd coefficients, MatrixXd covariance)
    : m_from(from), m_to(to), m_coefficients(std::move(coefficients)), m_covariance(std::move(covariance)) {}

VectorXd SmoothOffset::basis(double x, int derivative) const {
    return basisOn({m_from, m_to, static_cast<int>(m_coefficients.size()) - 3}, x, derivative);
}

double SmoothOffset::at(double x) const {
    const double end = std::clamp(x, m_from, m_to);
    const double value = basis(end, 0).dot(m_coefficients);
    const double past = std::clamp(x - end, -runOut, runOut);
    if (past == 0.0)
        return value;
    return value + basis(end, 1).dot(m_coefficients) * (past - past * std::abs(past) / (2 * runOut));
}

double SmoothOffset::curvatureAt(double x) const {
    return basis(x, 2).dot(m_coefficients);
}

double SmoothOffset::sdAt(double x) const {
    const double end = std::clamp(x, m_from, m_to);
    const double past = std::clamp(x - end, -runOut, runOut);
    VectorXd weights = basis(end, 0);
    if (past != 0.0)
        weights += basis(end, 1) * (past - past * std::abs(past) / (2 * runOut));
    return std::sqrt(std::max(0.0, weights.dot(m_covariance * weights)));
}

VectorXd SmoothOffset::meanWeights() const {
    // a cubic over each span: two Gauss points are exact
    const auto spans = static_cast<int>(m_coefficients.size()) - 3;
    const double span = (m_to - m_from) / spans;
    VectorXd weights = VectorXd::Zero(m_coefficients.size());
    for (int i = 0; i < spans; ++i)
        for (const double side : {-1.0, 1.0})
            weights += basis(m_from + span * (i + 0.5 + side * 0.5 / std::sqrt(3.0)), 0) / (2.0 * spans);
    return weights;
}

double SmoothOffset::mean() const {
    return meanWeights().dot(m_coefficients);
}

double SmoothOffset::meanSd() const {
    const VectorXd weights = meanWeights();
    return std::sqrt(std::max(0.0, weights.dot(m_covariance * weights)));
}

SmoothOffset smoothReadings(std::span<const OffsetReading> readings, const SmoothSettings& settings) {
    if (readings.empty())
        throw std::invalid_argument("smoothReadings: no reading");
    if (settings.spans < 1)
        throw std::invalid_argument("smoothReadings: spans must be 1 or more");
    for (const OffsetReading& r : readings)
        if (!(r.sd > 0.0))
            throw std::invalid_argument("smoothReadings: a reading's sd must be above 0");
    const auto [least, most] = std::minmax_element(
        readings.begin(), readings.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
    Grid grid{least->x, most->x, settings.spans};
    std::vector<double> places;
    for (const OffsetReading& r : readings)
        places.push_back(r.x);
    std::sort(places.begin(), places.end());
    const auto different = std::unique(places.begin(), places.end()) - places.begin();
    if (different == 1) { // a spline needs some length to stand on
        grid.from -= 0.5;
        grid.to += 0.5;
    }
    Solution s = different <= fewReadings ? constantOrLine(readings, grid, settings)
                                          : stiffestSpline(readings, grid, settings);
    return {grid.from, grid.to, std::move(s.value), std::move(s.covariance)};
}

} // namespace sheerlay::core
