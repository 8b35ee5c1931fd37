#pragma once

#include "core/project/paper_choices.hpp"
#include "core/sheets/compose.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// The width that neighbouring pages of a tiled drawing show alike, mm.
inline constexpr double pageOverlap = 15.0;
/// Half a cross's width, mm.
inline constexpr double crossArm = 4.0;

/// "A", "B" … "Z", "AA", "AB" …: what stands on both sides of the joint with this number, from 0.
[[nodiscard]] std::string jointLetters(int number);

/// Where a page of a tiled drawing meets a neighbour.
struct Joint {
    bool upright = false; ///< the neighbour lies beside, else above or below
    double at = 0.0;      ///< mm on paper, the middle of the shared band
    int number = 0;       ///< of the joint; alike on both pages
};

/// Pages in rows and columns.
struct TileGrid {
    int rows = 1, columns = 1;
    [[nodiscard]] std::vector<Joint> jointsOf(int row, int column, const Box& window) const;
};

/// The two lines of a cross to lay over its neighbour's.
[[nodiscard]] std::vector<Item> jointCross(const Eigen::Vector2d& at);

/// Whether a joint's other page is there: blank ones are left out.
template <class Tile> bool hasNeighbour(const Tile& tile, const std::vector<Tile>& all, const Joint& joint) {
    const Eigen::Vector2d middle(0.5 * (tile.window.left + tile.window.right),
                                 0.5 * (tile.window.top + tile.window.bottom));
    const int step = joint.at > (joint.upright ? middle.x() : middle.y()) ? 1 : -1;
    const int row = tile.row + (joint.upright ? 0 : step), column = tile.column + (joint.upright ? step : 0);
    return std::any_of(all.begin(), all.end(), [&](const Tile& other) {
        return other.row == row && other.column == column;
    });
}

/// Draws how the pages lie together, this one filled.
/// @param corner  upper left, mm on paper
/// @param cell    mm, side of a page's square
/// @tparam Tile   with sheet, row and column
template <class Tile>
void addPageMap(Tile& tile, const std::vector<Tile>& all, const Eigen::Vector2d& corner, double cell) {
    for (const Tile& other : all) {
        const double left = corner.x() + other.column * cell, top = corner.y() + other.row * cell;
        const bool here = other.row == tile.row && other.column == tile.column;
        tile.sheet.items.emplace_back(makeBox({left, top, left + cell, top + cell},
                                              LineKind::Thin,
                                              here ? std::optional<Colour>(colours::pencil) : std::nullopt));
    }
}

/// A page of a large sheet, and which part of it it shows.
struct SheetTile {
    Sheet sheet;
    Eigen::Vector2d origin = Eigen::Vector2d::Zero(); ///< mm; the large sheet's corner stands there on paper
    Box window;                                       ///< mm on paper, where the large sheet shows
    int row = 0, column = 0;
};

/// Cuts a sheet that is larger than the paper into pages of it, upright or lying, whichever needs fewer.
/// Neighbours share a band of pageOverlap with two crosses in it, and the same letters stand on both sides of
/// a joint. Every page says its number and carries a map of the pages. Pages that would be blank are left
/// out. Sizes are kept: what is 100 mm long on the sheet is so on the pages.
[[nodiscard]] std::vector<SheetTile> tilesOf(const Sheet& large, PageSize size);

} // namespace sheerlay::core
