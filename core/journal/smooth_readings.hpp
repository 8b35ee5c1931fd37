#pragma once

#include <Eigen/Core>

#include <span>

namespace sheerlay::core {

/// An edge's offset from the plan, as read at one place.
struct OffsetReading {
    double x = 0.0;      ///< mm from the bow
    double offset = 0.0; ///< mm, + nearer the keel than planned
    double sd = 0.5;     ///< mm, standard deviation of this reading; > 0
};

/// What the readings say between and at the stations: a uniform cubic spline over x with its spread.
class SmoothOffset {
public:
    SmoothOffset() = default;
    SmoothOffset(double from, double to, Eigen::VectorXd coefficients, Eigen::MatrixXd covariance);

    [[nodiscard]] double from() const noexcept { return m_from; } ///< mm, foremost reading
    [[nodiscard]] double to() const noexcept { return m_to; }     ///< mm, aftmost reading

    /// mm. Past the outermost readings the slope runs out to nothing over 600 mm.
    [[nodiscard]] double at(double x) const;
    /// 1/mm, second derivative over x; inside the readings.
    [[nodiscard]] double curvatureAt(double x) const;
    /// mm, standard deviation of `at(x)`, the bend that the smoothing may have taken away included.
    [[nodiscard]] double sdAt(double x) const;
    /// Mean over from..to, mm, and its standard deviation.
    [[nodiscard]] double mean() const;
    [[nodiscard]] double meanSd() const;

private:
    [[nodiscard]] Eigen::VectorXd basis(double x, int derivative) const;
    [[nodiscard]] Eigen::VectorXd meanWeights() const;

    double m_from = 0.0;
    double m_to = 0.0;
    Eigen::VectorXd m_coefficients;
    Eigen::MatrixXd m_covariance;
};

struct SmoothSettings {
    int spans = 10;
    double residual = 0.9; ///< rms of the residuals that is aimed at, in standard deviations of the readings
};

/// Smooths the readings of one edge by a cubic spline with a penalty on second differences of its
/// coefficients, as stiff as the readings' noise allows: the stiffest whose residuals stay within
/// `settings.residual`. Four readings or fewer give a constant if that explains them, else a line.
/// Two readings of one place (both sides) count both.
/// @param readings  at least one, in any order
/// @throws std::invalid_argument  without a reading, or with a standard deviation that is not positive
/// @accuracy  tests/core/journal/smooth_readings_test.cpp: false edge bend 0.065 -> 0.004 /m
/// @source    P. H. C. Eilers, B. D. Marx, Flexible smoothing with B-splines and penalties, Statistical
///            Science 11 (1996); discrepancy principle: V. A. Morozov (1966); spread as a posterior:
///            G. Wahba, Bayesian confidence intervals for the cross-validated smoothing spline (1983)
[[nodiscard]] SmoothOffset smoothReadings(std::span<const OffsetReading> readings,
                                          const SmoothSettings& settings = {});

} // namespace sheerlay::core
