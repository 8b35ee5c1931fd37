#pragma once

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// A strip that may be made of pieces: where along it joints could sit. Index 0 is its bow cut, 1 to P its
/// joint places, P + 1 its stern cut.
struct CutMember {
    std::vector<double> at; ///< mm from the bow cut, rising; of a joint place the middle of the scarf
};

/// Strips whose joints fall on the same places: a strip and its mirror image, or a strip alone.
struct CutUnit {
    std::vector<int> bay; ///< per joint place (index 0 is place 1): the mould bay it lies in
    std::vector<CutMember> members;
    std::vector<std::size_t> neighbours; ///< units whose joints must lie in other bays

    [[nodiscard]] std::size_t places() const noexcept { return bay.size(); }
};

/// Milled strips of one length, as they come off the boards of a lot, before they are cut to pieces.
struct StickKind {
    int capacity = 0;  ///< grid steps of its longest clear length, the cut after the last piece included
    double cost = 0.0; ///< of one, > 0
    std::optional<int> limit; ///< how many there are
    std::vector<int> more{};  ///< capacities of its other clear lengths, where defects part it

    /// Clear lengths of one.
    [[nodiscard]] std::size_t lengths() const noexcept { return 1 + more.size(); }
    /// @param length  0 is the longest
    [[nodiscard]] int capacityOf(std::size_t length) const {
        return length == 0 ? capacity : more[length - 1];
    }
};

/// What is to be cut from what. Lengths of pieces are counted in whole steps of a grid, rounded up, plus
/// what the cut beside each takes: the figures the builder marks out.
struct CuttingProblem {
    std::vector<CutUnit> units;
    std::vector<StickKind> kinds; ///< at least one without a limit, else not everything may be cut
    double grid = 5.0;            ///< mm
    double scarf = 0.0;           ///< mm, length of a scarf along the strip
    int cut = 1;                  ///< grid steps that go with each piece for the saw
    double jointCost = 0.0;       ///< of one joint, in the money of StickKind::cost
    bool matched =
        false; ///< a unit's members lie side by side: cut as one, each piece as long as the longest
    double shortestPiece = 0.0; ///< mm, of a strip made of several pieces
    double longestPiece = 0.0;  ///< mm
};

/// mm of wood a piece between two places takes, its scarfs included.
[[nodiscard]] double pieceLength(
    const CuttingProblem& problem, const CutUnit& unit, std::size_t member, std::size_t from, std::size_t to);

/// Grid steps a piece of this length takes of a stick, its cut included.
[[nodiscard]] int stepsOf(const CuttingProblem& problem, double length);

/// All pieces a unit could be cut into, each once: what the searches work on.
class UnitPieces {
public:
    UnitPieces(const CuttingProblem& problem, const CutUnit& unit);

    /// Steps of member m's piece between two places; 0 where no such piece may be cut.
    [[nodiscard]] int steps(std::size_t m, std::size_t from, std::size_t to) const {
        return m_steps[(m * m_nodes + from) * m_nodes + to];
    }
    [[nodiscard]] bool allowed(std::size_t from, std::size_t to) const { return steps(0, from, to) > 0; }
    [[nodiscard]] std::size_t nodes() const noexcept { return m_nodes; }
    /// How many are cut of each piece: one per member of the unit, matched members as one.
    [[nodiscard]] std::size_t members() const noexcept { return m_members; }

    /// Cheapest way from bow to stern.
    struct Way {
        std::vector<std::size_t> joints;                       ///< places 1 to P, rising
        double cost = std::numeric_limits<double>::infinity(); ///< infinite where there is no way
    };
    /// @param price  of a piece by its steps; infinite for one that can't be had
    /// @param joint  per joint place (index 0 is place 1), what a joint there costs
    [[nodiscard]] Way cheapest(const std::vector<double>& price, const std::vector<double>& joint) const;

private:
    std::size_t m_nodes = 0, m_members = 0;
    std::vector<int> m_steps;
};

/// Largest worth that fits into each capacity from 0 to `most`, pieces taken as often as wanted.
/// @param worth  by steps; index 0 is not used
[[nodiscard]] std::vector<double> bestFilling(const std::vector<double>& worth, int most);

/// What a cheapest filling of one capacity holds: how many pieces of each size, by steps.
[[nodiscard]] std::vector<std::pair<int, int>>
fillingOf(const std::vector<double>& worth, const std::vector<double>& best, int capacity);

} // namespace sheerlay::core
