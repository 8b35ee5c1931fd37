#pragma once

#include <optional>
#include <vector>

namespace sheerlay::core {

/// How far the rounding of the table moves one row's figures: one standard deviation each.
struct RowUncertainty {
    int row = 0;
    double edgeBend = 0.0; ///< 1/mm, of the largest edge bend
    double twist = 0.0;    ///< rad/mm, of the largest twist
    double length = 0.0;   ///< mm, of the middle line
};

/// How far the rounding of the table moves a plan's figures: one standard deviation each. It says nothing of
/// what the table leaves out altogether: between stations, and most of all in the last foot of the ends, the
/// true hull can stand further off.
struct PlanUncertainty {
    std::vector<RowUncertainty> rows;   ///< by row; those that most draws have in as many pieces
    double edgeBend = 0.0;              ///< 1/mm, worst over the rows
    double twist = 0.0;                 ///< rad/mm, worst over the rows
    double length = 0.0;                ///< mm, worst over the rows but the shutter's
    double lengthTypical = 0.0;         ///< mm, median over the rows
    double halfGirth = 0.0;             ///< mm, of the widest section
    std::optional<double> shutterWidth; ///< mm, of the shutter's largest width; none without a shutter
    int draws = 0;                      ///< hulls that were planked for it

    /// mm, of the length of one row's pieces; the worst row's where this one comes and goes.
    [[nodiscard]] double lengthOf(int row) const {
        for (const RowUncertainty& r : rows)
            if (r.row == row)
                return r.length;
        return length;
    }
};

} // namespace sheerlay::core
