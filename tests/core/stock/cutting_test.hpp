#pragma once

#include "core/stock/cutting_search.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace sheerlay::test {

/// A strip alone whose joints may sit at these places, each in a bay of its own.
inline core::CutUnit unitOf(double length, const std::vector<double>& places, int firstBay = 0) {
    core::CutUnit unit;
    unit.members.resize(1);
    unit.members[0].at.push_back(0.0);
    for (const double place : places) {
        unit.members[0].at.push_back(place);
        unit.bay.push_back(firstBay++);
    }
    unit.members[0].at.push_back(length);
    return unit;
}

/// Least sum of stick costs that holds all pieces, by trying every assignment.
inline double cheapestSticks(const core::CuttingProblem& problem, std::vector<int> pieces) {
    std::ranges::sort(pieces, std::ranges::greater{});
    double best = std::numeric_limits<double>::infinity();
    std::vector<int> left;
    const auto place = [&](auto&& self, std::size_t p, double cost) -> void {
        if (cost >= best)
            return;
        if (p == pieces.size()) {
            best = cost;
            return;
        }
        for (std::size_t s = 0; s < left.size(); ++s)
            if (left[s] >= pieces[p]) {
                left[s] -= pieces[p];
                self(self, p + 1, cost);
                left[s] += pieces[p];
            }
        for (const core::StickKind& kind : problem.kinds)
            if (kind.capacity >= pieces[p]) {
                left.push_back(kind.capacity - pieces[p]);
                self(self, p + 1, cost + kind.cost);
                left.pop_back();
            }
    };
    place(place, 0, 0.0);
    return best;
}

/// The known optimum: every way of joining every unit, neighbours in different bays, times every way of
/// filling sticks.
inline double optimumByTrial(const core::CuttingProblem& problem) {
    double best = std::numeric_limits<double>::infinity();
    std::vector<std::vector<int>> bays(problem.units.size());
    const auto choose = [&](auto&& self, std::size_t u, std::vector<int> pieces, double joints) -> void {
        if (u == problem.units.size()) {
            best = std::min(best, joints + cheapestSticks(problem, pieces));
            return;
        }
        const core::CutUnit& unit = problem.units[u];
        for (unsigned mask = 0; mask < (1U << unit.places()); ++mask) {
            std::vector<std::size_t> nodes{0};
            bays[u].clear();
            bool good = true;
            for (std::size_t p = 0; p < unit.places(); ++p)
                if ((mask >> p & 1U) != 0) {
                    nodes.push_back(p + 1);
                    bays[u].push_back(unit.bay[p]);
                    for (const std::size_t n : unit.neighbours)
                        good = good && (n > u || std::ranges::find(bays[n], unit.bay[p]) == bays[n].end());
                }
            nodes.push_back(unit.places() + 1);
            std::vector<int> all = pieces;
            for (std::size_t i = 1; i < nodes.size() && good; ++i)
                for (std::size_t m = 0; m < unit.members.size() && good; ++m) {
                    const double length = core::pieceLength(problem, unit, m, nodes[i - 1], nodes[i]);
                    const int steps = core::stepsOf(problem, length);
                    good = length <= problem.longestPiece &&
                           (nodes.size() == 2 || length >= problem.shortestPiece) &&
                           std::ranges::any_of(problem.kinds,
                                               [&](const auto& kind) { return kind.capacity >= steps; });
                    all.push_back(steps);
                }
            if (good)
                self(self,
                     u + 1,
                     all,
                     joints +
                         problem.jointCost * static_cast<double>((nodes.size() - 2) * unit.members.size()));
        }
    };
    choose(choose, 0, {}, 0.0);
    return best;
}

inline std::vector<core::UnitPieces> piecesOf(const core::CuttingProblem& problem) {
    std::vector<core::UnitPieces> pieces;
    for (const core::CutUnit& unit : problem.units)
        pieces.emplace_back(problem, unit);
    return pieces;
}

/// What is wrong with a cutting: empty when it holds what it says.
inline std::string wrongWith(const core::CuttingProblem& problem, const core::Cutting& cutting) {
    double cost = 0.0;
    std::vector<std::vector<int>> seen(problem.units.size()); // per unit, how often each piece was cut
    for (std::size_t u = 0; u < problem.units.size(); ++u) {
        const std::size_t pieces = cutting.joints[u].size() + 1;
        seen[u].assign(pieces * problem.units[u].members.size(), 0);
        cost += problem.jointCost * static_cast<double>(cutting.joints[u].size()) *
                static_cast<double>(problem.units[u].members.size());
        for (const std::size_t n : problem.units[u].neighbours)
            for (const std::size_t p : cutting.joints[u])
                for (const std::size_t q : cutting.joints[n])
                    if (problem.units[u].bay[p - 1] == problem.units[n].bay[q - 1])
                        return "neighbours are joined in one bay";
    }
    std::vector<int> used(problem.kinds.size(), 0);
    std::map<int, std::set<std::size_t>> clearLengths; // by stick
    for (const core::CutStick& stick : cutting.sticks) {
        int filled = 0;
        for (const core::PlacedPiece& piece : stick.pieces) {
            const core::CutUnit& unit = problem.units[piece.unit];
            std::vector<std::size_t> nodes{0};
            nodes.insert(nodes.end(), cutting.joints[piece.unit].begin(), cutting.joints[piece.unit].end());
            nodes.push_back(unit.places() + 1);
            const double length =
                core::pieceLength(problem, unit, piece.member, nodes[piece.piece], nodes[piece.piece + 1]);
            if (core::stepsOf(problem, length) != piece.steps)
                return "a piece is not as long as its joints say";
            filled += piece.steps;
            ++seen[piece.unit][piece.piece * unit.members.size() + piece.member];
        }
        const core::StickKind& kind = problem.kinds[stick.kind];
        if (filled > kind.capacityOf(stick.length))
            return "a stick holds more than its length";
        if (filled + stick.left != kind.capacityOf(stick.length))
            return "what is left is not what remains";
        if (!clearLengths[stick.stick].insert(stick.length).second)
            return "a stick has a clear length twice";
        if (stick.length == 0) {
            cost += kind.cost;
            ++used[stick.kind];
        }
    }
    for (const auto& [stick, lengths] : clearLengths)
        if (!lengths.contains(0))
            return "a stick without its longest clear length";
    for (const auto& unit : seen)
        for (const int times : unit)
            if (times != 1)
                return "a piece is cut " + std::to_string(times) + " times";
    for (std::size_t k = 0; k < used.size(); ++k)
        if (problem.kinds[k].limit && used[k] > *problem.kinds[k].limit)
            return "more sticks than there are";
    if (std::abs(cost - cutting.cost) > 1e-9 * (1 + cost))
        return "the cost told is not the cost";
    return {};
}

} // namespace sheerlay::test
