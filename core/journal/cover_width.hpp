#pragma once

#include <Eigen/Core>

#include <span>

namespace sheerlay::core {

/// What is known before anything is read: how milled strips, moulds and hands usually err. All standard
/// deviations in mm. Judged values; the design study (closing of the bottom, journal) rests on the same.
struct WidthPrior {
    double common = 0.10;         ///< a strip, bias of all boards alike (setting of the cutter)
    double board = 0.08;          ///< a strip, of the strips of one board
    int stripsPerBoard = 9;       ///< rows laid from one board, boards used up one after the other
    double waviness = 0.15;       ///< a strip, local along the boat
    double wavinessSpan = 1700.0; ///< mm; places that far apart err independently
    double mould = 1.0;           ///< girth of a mould against the loft
};

/// How far on the average an edge lies nearer the keel than planned, over all stations that were read.
struct MeanOffset {
    int row = 0;         ///< 1, 2, …
    double offset = 0.0; ///< mm, + nearer the keel
    double sd = 0.0;     ///< mm, from the readings of this row alone
};

/// What comes with all of them.
struct MeanOffsets {
    std::span<const MeanOffset> rows; ///< in any order
    double sharedSd =
        0.0;             ///< mm, error they all share: of the bare moulds' readings, or of moulds never read
    double length = 0.0; ///< mm of the boat that the mean is taken over
};

/// A figure and its standard deviation.
struct Spread {
    double value = 0.0;
    double sd = 0.0;
};

/// By how much strips cover more than planned: what the readings say, drawn toward nothing as far as their
/// noise and the difference between boards ask for.
class CoverWidth {
public:
    /// `mean` and `covariance` of the common bias, then of one bias per board, mm.
    CoverWidth(const WidthPrior& prior, Eigen::VectorXd mean, Eigen::MatrixXd covariance);

    /// Mean excess of the strips of rows first..last, mm a strip; local waviness apart.
    [[nodiscard]] Spread meanOf(int first, int last) const;
    /// Excess of rows first..last together at one place of the boat, mm; local waviness included. Nothing
    /// when last < first.
    [[nodiscard]] Spread sumOf(int first, int last) const;

private:
    [[nodiscard]] Eigen::VectorXd weights(int first, int last) const;

    WidthPrior m_prior;
    Eigen::VectorXd m_mean;       ///< common bias, then one per board
    Eigen::MatrixXd m_covariance; ///< of these
};

/// Infers the cover width from all rows read so far at once. For a single row k within the first board this
/// is offset / k times V / (V + noise), V = common^2 + board^2, noise = (sd^2 + k waviness^2) / k^2; of that,
/// common^2 / V is expected of the boards to come.
/// @param rows  last row the answer may be asked for; >= 1
/// @param read  may be empty: then the answer is the prior
/// @throws std::invalid_argument  a row read outside 1..rows
/// @accuracy  tests/core/journal/cover_width_test.cpp: 0.02 mm after row 20 with 0.5 mm readings
/// @source    linear prediction with known spreads: G. K. Robinson, That BLUP is a good thing, Statistical
///            Science 6 (1991)
[[nodiscard]] CoverWidth inferCoverWidth(const WidthPrior& prior, int rows, const MeanOffsets& read);

} // namespace sheerlay::core
