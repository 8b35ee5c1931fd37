#pragma once

#include "core/planking/row_width.hpp"

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace sheerlay::core {

inline constexpr double nibWidth = 5.0;          ///< mm, square end of a stealer and depth of its notch
inline constexpr double shortestStealer = 300.0; ///< mm; shorter ones are planned away
inline constexpr double nibClear = 30.0;         ///< mm that a nib keeps off a mould where it can

/// Two neighbouring rows taken together: only their sum is planned, and only its far edge is laid fair. Where
/// they are wider than one strip a stealer lies in them, let in to the strip beside it; elsewhere that strip
/// is alone.
struct Band {
    std::size_t row = 0; ///< place among the field's rows, from 0; the band counts as one row
    RowWidth width;      ///< mm of both together, between the narrowest strip and two full ones
};

/// How a band's width is shared.
struct BandShares {
    double stealer = 0.0, beside = 0.0; ///< mm
};

/// @param combined, cover  mm. At combined == cover the stealer is nibWidth wide; full bands are two full
/// strips. A little less than cover (a nib that was moved outward) is let pass.
/// @source closing.md section 2
[[nodiscard]] BandShares bandShares(double combined, double cover) noexcept;

/// What a field of rows reaches; less is better, the first thing first.
struct FieldScore {
    int edgesOver = 0;  ///< edges that do not keep the limit
    double slack = 0.0; ///< 1/mm, what they are over, summed
    int touched = 0;    ///< strips planed narrower
};
[[nodiscard]] bool operator<(const FieldScore& a, const FieldScore& b) noexcept;

/// What the rows of a field would do if they might be planed as narrow as they like.
struct BandNeed {
    std::vector<double> below; ///< mm, most that each row goes below the narrowest strip; 0 for bands
    FieldScore reached;        ///< what that would reach: the rest is forced by the start itself
};

/// Rows that are best made bands. So many bands are spread over the rows that would go below the narrowest
/// strip that each takes its share of what they want; as few as keep the limit, or as far as each more brings
/// two more edges within it or takes off a third of what all are over.
/// @param plain      of the field without bands
/// @param need       of the same field
/// @param narrowest  mm
/// @param score      of the field with bands at the given places, ascending; none where it can't be solved
/// @return their places, ascending, each band counted as one row; none where stealers do not help
[[nodiscard]] std::vector<std::size_t>
chooseBands(const FieldScore& plain,
            const BandNeed& need,
            double narrowest,
            const std::function<std::optional<FieldScore>(const std::vector<std::size_t>&)>& score);

/// A stretch of a band that holds a stealer, in columns, both included. The columns at its nibs belong to it.
struct StealerRun {
    std::size_t first = 0, last = 0;
    bool bowNib = false, sternNib = false; ///< it ends in the surface there, else at the hull's end
};

/// One column of a band.
struct BandColumn {
    double combined = 0.0; ///< mm, width of both strips
    double x = 0.0;        ///< mm from the bow
    bool inside = false;   ///< the hull
};

/// Where the stealers of a band lie. A nib stands on the first column on which the band is no wider than one
/// strip, or up to 40 mm further out where that keeps it 30 mm clear of a mould.
/// @param moulds  mm from the bow
[[nodiscard]] std::vector<StealerRun>
stealerRuns(const std::vector<BandColumn>& columns, double cover, const std::vector<double>& moulds);

} // namespace sheerlay::core
