#include "core/stock/cutting_problem.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace sheerlay::core {

namespace {

constexpr double hair = 1e-6; // mm, so that 400.0000001 is not rounded up to the next step

} // namespace

double pieceLength(const CuttingProblem& problem,
                   const CutUnit& unit,
                   std::size_t member,
                   std::size_t from,
                   std::size_t to) {
    const std::vector<double>& at = unit.members[member].at;
    const std::size_t last = at.size() - 1;
    return at[to] - at[from] + (from > 0 ? problem.scarf / 2 : 0.0) + (to < last ? problem.scarf / 2 : 0.0);
}

int stepsOf(const CuttingProblem& problem, double length) {
    return static_cast<int>(std::ceil((length - hair) / problem.grid)) + problem.cut;
}

UnitPieces::UnitPieces(const CuttingProblem& problem, const CutUnit& unit)
    : m_nodes(unit.places() + 2), m_members(problem.matched ? 1 : unit.members.size()),
      m_steps(m_members * m_nodes * m_nodes, 0) {
    int most = 0;
    for (const StickKind& kind : problem.kinds)
        most = std::max(most, kind.capacity);
    for (std::size_t from = 0; from + 1 < m_nodes; ++from)
        for (std::size_t to = from + 1; to < m_nodes; ++to) {
            const bool whole = from == 0 && to + 1 == m_nodes;
            bool good = true;
            for (std::size_t m = 0; m < unit.members.size() && good; ++m) {
                const double length = pieceLength(problem, unit, m, from, to);
                good = length <= problem.longestPiece + hair && stepsOf(problem, length) <= most &&
                       (whole || length >= problem.shortestPiece - hair);
            }
            for (std::size_t m = 0; m < unit.members.size() && good; ++m) {
                int& steps = m_steps[((problem.matched ? 0 : m) * m_nodes + from) * m_nodes + to];
                steps = std::max(steps, stepsOf(problem, pieceLength(problem, unit, m, from, to)));
            }
        }
}

UnitPieces::Way UnitPieces::cheapest(const std::vector<double>& price,
                                     const std::vector<double>& joint) const {
    constexpr double infinite = std::numeric_limits<double>::infinity();
    std::vector<double> cost(m_nodes, infinite);
    std::vector<std::size_t> before(m_nodes, 0);
    cost[0] = 0.0;
    for (std::size_t to = 1; to < m_nodes; ++to) {
        const double here = to + 1 < m_nodes ? joint[to - 1] : 0.0;
        for (std::size_t from = 0; from < to; ++from) {
            if (!allowed(from, to) || cost[from] == infinite)
                continue;
            double all = cost[from] + here;
            for (std::size_t m = 0; m < m_members; ++m)
                all += price[static_cast<std::size_t>(steps(m, from, to))];
            if (all < cost[to]) {
                cost[to] = all;
                before[to] = from;
            }
        }
    }
    Way way;
    way.cost = cost.back();
    if (way.cost == infinite)
        return way;
    for (std::size_t at = before.back(); at > 0; at = before[at])
        way.joints.push_back(at);
    std::ranges::reverse(way.joints);
    return way;
}

std::vector<double> bestFilling(const std::vector<double>& worth, int most) {
    std::vector<double> best(static_cast<std::size_t>(most) + 1, 0.0);
    std::vector<std::size_t> sizes; // a size is of use only if it is worth more than all smaller ones
    double record = 0.0;
    for (std::size_t k = 1; k < worth.size(); ++k)
        if (worth[k] > record) {
            record = worth[k];
            sizes.push_back(k);
        }
    for (std::size_t c = 1; c < best.size(); ++c) {
        best[c] = best[c - 1];
        for (const std::size_t k : sizes) {
            if (k > c)
                break;
            best[c] = std::max(best[c], best[c - k] + worth[k]);
        }
    }
    return best;
}

std::vector<std::pair<int, int>>
fillingOf(const std::vector<double>& worth, const std::vector<double>& best, int capacity) {
    std::map<int, int> counts;
    auto c = static_cast<std::size_t>(capacity);
    while (c > 0) {
        std::size_t taken = 0;
        for (std::size_t k = std::min(c, worth.size() - 1); k > 0 && taken == 0; --k)
            if (worth[k] > 0.0 && best[c - k] + worth[k] >= best[c])
                taken = k;
        if (taken == 0) {
            --c;
            continue;
        }
        ++counts[static_cast<int>(taken)];
        c -= taken;
    }
    return {counts.begin(), counts.end()};
}

} // namespace sheerlay::core
