#pragma once

#include "core/project/project.hpp"

#include <array>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Strips ripped side by side from a board: floor((W + kerf) / (s + kerf)).
/// @param width   mm of the board after jointing
/// @param ripped  mm of the strip as it is ripped, planing included; > 0
/// @param kerf    mm, >= 0
/// @source  derived; worked example in tests/reference/shop_strips_per_board.csv
[[nodiscard]] int stripsSideBySide(double width, double ripped, double kerf);

/// Board feet by definition: T in x W in x L ft / 12. Sizes mm.
/// @source  definition of the trade: a board foot is 144 cubic inches of nominal stock
[[nodiscard]] double boardFeet(double thickness, double width, double length);

/// Board feet as a yard tallies them: length rounded down to a whole foot, thickness 1 in at least. Sizes mm,
/// the nominal thickness and the actual width.
/// @source  hardwood dealers' practice, see tests/reference/shop_strips_per_board.csv
[[nodiscard]] double talliedBoardFeet(double thickness, double width, double length);

/// What the boards of a lot give.
struct Milling {
    double thickness = 0.0;   ///< mm of the board, planed
    double width = 0.0;       ///< mm of the board, jointed
    double ripped = 0.0;      ///< mm, thickness of a strip as it comes off the saw
    int sideBySide = 0;       ///< strips across the board's width
    int layers = 0;           ///< strips' widths in the board's thickness
    double stripLength = 0.0; ///< mm, ends trimmed off
    /// mm from and to along the board, from its first end: what is left between trimmed ends and defects.
    std::vector<std::array<double, 2>> clear;
    std::string problem; ///< one sentence where the lot gives no strips; else empty

    [[nodiscard]] int strips() const noexcept { return sideBySide * layers; }
    /// Pairs of strips that lie side by side.
    [[nodiscard]] int pairs() const noexcept { return sideBySide / 2 * layers; }
};

/// Boards are planed to the strip's width at least, jointed, ripped to the strip's thickness and planed.
[[nodiscard]] Milling mill(const BoardLot& lot, const Stock& stock, const StripStock& strip);

} // namespace sheerlay::core
