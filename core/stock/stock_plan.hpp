#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/stock/milling.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A scarf in a strip; its middle.
struct StripJoint {
    double along = 0.0; ///< mm along the strip's middle from its bow end, as StripSample::s
    double x = 0.0;     ///< mm from the bow
    int bay = 0;        ///< between LoftedHull::stationX[bay] and the next
};

/// A piece of a strip and the milled strip it is cut from.
struct StockPiece {
    int number = 1;     ///< 1 at the bow
    double from = 0.0;  ///< mm from the strip's bow cut, scarf included
    double to = 0.0;    ///< mm
    double toCut = 0.0; ///< mm to mark out: rounded up to 1/4 in
    std::string stick;  ///< Stick::name
};

/// How a strip of the plan is made.
struct StockStrip {
    std::string strip; ///< id
    std::string wood;
    std::vector<StripJoint> joints; ///< bow to stern
    std::vector<StockPiece> pieces; ///< one more than joints
};

/// One milled strip of full board length, and what is cut from it.
struct Stick {
    std::string name; ///< "A1-07": lot, board, number from the board's jointed edge
    std::size_t lot = 0;
    int board = 0;  ///< 1, 2, …
    int number = 0; ///< 1, 2, … side by side on the board
    struct Part {
        std::string strip;
        int number = 1;
        double toCut = 0.0;    ///< mm
        std::size_t clear = 0; ///< which of Milling::clear it is cut from
    };
    std::vector<Part> parts; ///< in the order of cutting
    double left = 0.0;       ///< mm, the longest end that remains
};

/// What is bought of a lot and what comes of it.
struct LotUse {
    BoardLot lot;
    Milling milling;
    int boards = 0;
    int missing = 0;        ///< boards more than there are
    int sticks = 0;         ///< cut to pieces
    int spares = 0;         ///< milled beyond those
    double boardFeet = 0.0; ///< as the yard tallies, all boards
    std::optional<double> cost;
};

/// How well the strips of one wood are cut.
struct WoodCutting {
    std::string wood;
    int strips = 0, pieces = 0, joints = 0;
    double needed = 0.0; ///< mm of strip in the boat, laps, trim and scarfs included
    double cost = 0.0;   ///< of sticks and joints, in money where every lot has a price, else mm of strip
    double bound = 0.0;  ///< no way of cutting costs less
    bool inMoney = false;
    bool closed = false; ///< the bound is the linear program's optimum
    int rounds = 0;      ///< of column generation

    [[nodiscard]] double gap() const noexcept { return bound > 0.0 ? cost / bound - 1.0 : 0.0; }
};

/// From boards to pieces to strips.
struct StockPlan {
    std::vector<StockStrip> strips; ///< in the order of Plan::strips; those that can't be cut have no pieces
    std::vector<Stick> sticks;      ///< by lot, board and number
    std::vector<LotUse> lots;       ///< every lot of the project
    std::vector<WoodCutting> woods;
    double weight = 0.0;           ///< kg, bare planking at 12 percent moisture
    double scarf = 0.0;            ///< mm, length of a scarf
    std::vector<Finding> findings; ///< heaviest first
};

/// Plans boards, pieces and scarfs; a pure function of what it is given.
/// Rules: a scarf's middle lies from one third to two thirds of a mould bay; never in the bay of a joint of
/// the rows above and below (with staggered sides, of the strip opposite), so that joints alternate; never in
/// the bay where the strip is bent or twisted hardest; never beside a stealer's nib. Where a strip can be cut
/// no other way the last but one rule is given up, then the last, and a finding says so. Boards are cut clear
/// of their defects. With book-matched sides the pieces of a pair come from two milled strips that lay side
/// by side on one board.
/// @return  none where the project describes no boards
[[nodiscard]] std::optional<StockPlan>
planStock(const Project& project, const LoftedHull& hull, const Plan& plan);

/// What a builder reads of it first: a line per subject, each ended by a newline.
[[nodiscard]] std::string toText(const StockPlan& stock, Units units);

} // namespace sheerlay::core
