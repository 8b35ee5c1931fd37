#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Boards of one size and wood, as they lie at the mill.
struct BoardLot {
    std::string name;              ///< short, unique: "A", "B", … where the file gives none
    std::string wood;              ///< a name of core/project/wood.hpp
    double thickness = 0.0;        ///< mm, actual
    double width = 0.0;            ///< mm, actual
    double length = 0.0;           ///< mm, actual
    double chargedThickness = 0.0; ///< mm, that board feet are reckoned with; at least 1 in
    std::optional<int> count;      ///< how many can be had; none: as many as are needed
    std::optional<double> price;   ///< of one board, in whatever money the builder counts
    /// What every board of the lot is cut clear of: knots, splits; mm from and to, measured from its first
    /// end, rising and apart. Boards with defects of their own are lots of their own.
    std::vector<std::array<double, 2>> defects;
    int line = 0;

    friend bool operator==(const BoardLot&, const BoardLot&) = default;
};

/// Gives rows a wood other than that of [strips]. Later rules go over earlier ones.
struct WoodRule {
    std::string wood;
    int firstRow = 1; ///< from the start toward the keel; negative above it
    int lastRow = 1;  ///< both rows included
    int every = 1;    ///< 1 all of them, 2 every second counted from the first, …
    /// Instead of rows: those whose middle lies in this band of girth below the sheer, mm.
    std::optional<std::array<double, 2>> girth;
    int line = 0;

    friend bool operator==(const WoodRule&, const WoodRule&) = default;
};

/// How one side is joined against the other: alike, in other bays, or alike and from the same cut, strips of
/// a pair side by side on the board.
enum class JointSides { Mirror, Stagger, BookMatched };

/// The boards and how they are milled. Lengths mm.
struct Stock {
    std::vector<BoardLot> lots;
    std::vector<WoodRule> woodRules;
    double kerf = 3.175;     ///< the saw takes; 1/8 in, a full kerf blade (shop.md, confirmed)
    double planing = 0.5;    ///< taken off the ripped strip's thickness, both faces; judged
    double jointing = 3.175; ///< taken off the board's width before ripping; 1/8 in, from memory
    double surfacing = 0.0;  ///< taken off the board's thickness, both faces; 0: bought planed
    double endTrim = 76.2;   ///< lost at each end of a board to checks and snipe; 3 in, from memory
    double spare = 0.10;     ///< strips beyond those needed, a part of them; 8 to 15 %, common practice
    double scarfSlope = 8.0; ///< length of a scarf over the strip's thickness
    std::optional<double> longestPiece; ///< longest that can be worked in the shop; none: the board's length
    double shortestPiece = 609.6;       ///< of a strip made of several pieces; 2 ft, judged
    double jointWorth = 152.4;          ///< length of strip worth one more joint; 6 in, judged
    JointSides sides = JointSides::Mirror;

    friend bool operator==(const Stock&, const Stock&) = default;
};

} // namespace sheerlay::core
