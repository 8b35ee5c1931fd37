#pragma once

#include "core/planking/row_width.hpp"

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace sheerlay::core {

inline constexpr double nibWidth = 5.0;          ///< mm, square end of a stealer and depth of its notch
inline constexpr double shortestStealer = 300.0; ///< mm; shorter ones are planned away

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

/// Looks for the few rows that are best made bands, one after another: each is tried at rows all over the
/// field, and kept when it brings at least two more edges within the limit, or the last one, or takes off a
/// third of what all edges are over.
/// @param plain   of the field without bands
/// @param forced  of a field that could be narrowed at will: what the start itself forces
/// @param rows    in the field
/// @param score   of the field with bands at the given places, ascending; none where it can't be solved
/// @return their places, ascending; none where plain tapers do, or stealers do not help
[[nodiscard]] std::vector<std::size_t>
chooseBands(const FieldScore& plain,
            const FieldScore& forced,
            std::size_t rows,
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
