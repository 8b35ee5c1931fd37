#include "core/stock/cutting_search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <random>
#include <set>

namespace sheerlay::core {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double conflictSticks = 20.0; // what a broken rule is set at, in sticks: more than any saving
constexpr double gatherPart = 0.1;      // of a stick: leftovers together are worth more than apart
constexpr double whimPart = 0.3;        // of a stick: what a whim may add to a price
constexpr double goodEnough = 0.02;     // over the bound: a strip or two of a whole boat
constexpr std::size_t fewUnits = 10;    // up to so many the search goes on to the end of its rounds
constexpr int leastRounds = 500;        // before the search is content with that
constexpr std::size_t mostUnits = 7;    // cut again at a time
constexpr std::size_t mostSticks = 3;   // taken apart at a time

/// The state of the search: what is cut from what.
class Search {
public:
    Search(const CuttingProblem& problem, const std::vector<UnitPieces>& pieces, const CuttingBound& bound)
        : m_problem(problem), m_pieces(pieces), m_bound(bound) {
        for (const StickKind& kind : problem.kinds)
            m_most = std::max(m_most, kind.capacity);
        m_filling = bestFilling(bound.worth, m_most);
        m_used.assign(problem.kinds.size(), 0);
        m_now.joints.resize(problem.units.size());
        m_done.assign(problem.units.size(), false);
        for (const double price : bound.price)
            m_stickPrice = std::max(m_stickPrice, price);
    }

    Cutting run(int rounds) {
        begin();
        double score = scoreNow();
        Cutting best = m_now;
        double bestCost = costNow();
        std::mt19937 random(1); // the same numbers on every machine
        for (int round = 0; round < rounds && !m_now.sticks.empty(); ++round) {
            const double gap = best.conflicts > 0 ? infinite : bestCost / m_bound.cost - 1;
            if (gap < 1e-9 || (round >= leastRounds && gap < goodEnough && m_pieces.size() > fewUnits))
                break;
            const State before{m_now, m_used, m_done};
            const std::vector<std::size_t> units = takeApart(random);
            m_whim = random() % 2 == 0 ? &random : nullptr;
            m_trust = m_whim == nullptr ? 1.0 : static_cast<double>(random() % 3) / 2.0;
            for (const std::size_t unit : units)
                cut(unit);
            m_whim = nullptr;
            m_trust = 1.0;
            const double after = scoreNow();
            if (after <= score + 1e-12 * std::abs(score)) {
                score = after;
                const double cost = costNow();
                if (m_now.conflicts < best.conflicts ||
                    (m_now.conflicts == best.conflicts && cost < bestCost - 1e-12 * std::abs(bestCost))) {
                    best = m_now;
                    bestCost = cost;
                }
            } else {
                m_now = before.now;
                m_used = before.used;
                m_done = before.done;
            }
        }
        best.cost = bestCost;
        for (CutStick& stick : best.sticks)
            std::ranges::stable_sort(stick.pieces, std::ranges::greater{}, &PlacedPiece::steps);
        return best;
    }

private:
    struct State {
        Cutting now;
        std::vector<int> used;
        std::vector<bool> done;
    };

    [[nodiscard]] double filling(int capacity) const {
        return m_trust * m_filling[static_cast<std::size_t>(capacity)];
    }
    [[nodiscard]] bool canOpen(std::size_t kind) const {
        return !m_problem.kinds[kind].limit || m_used[kind] < *m_problem.kinds[kind].limit;
    }

    /// What it costs to take `steps` from a stick that has `left`: the worth of what can no longer be cut.
    [[nodiscard]] double loss(int left, int steps) const {
        constexpr double grain = 1e-6; // of the stick's price: of equal losses the fuller stick
        return filling(left) - filling(left - steps) +
               grain * m_stickPrice * (left - steps) / std::max(1, m_most);
    }
    /// What it costs to begin a stick with a piece on the clear length where that leaves most.
    struct Opening {
        double cost = infinite;
        std::size_t length = 0;
    };
    [[nodiscard]] Opening opening(std::size_t kindIndex, int steps) const {
        const StickKind& kind = m_problem.kinds[kindIndex];
        Opening best;
        if (!canOpen(kindIndex))
            return best;
        double rest = m_bound.price[kindIndex] + 1e-6 * m_stickPrice;
        for (std::size_t c = 0; c < kind.lengths(); ++c)
            rest -= filling(kind.capacityOf(c));
        for (std::size_t c = 0; c < kind.lengths(); ++c) {
            const int capacity = kind.capacityOf(c);
            if (steps > capacity)
                continue;
            const double cost = rest + filling(capacity) - filling(capacity - steps);
            if (cost < best.cost)
                best = {cost, c};
        }
        return best;
    }
    /// Begins a stick. @return its first clear length among the present ones; the others follow it
    std::size_t beginStick(std::size_t kind) {
        ++m_used[kind];
        ++m_begun;
        for (std::size_t c = 0; c < m_problem.kinds[kind].lengths(); ++c)
            m_now.sticks.push_back({kind, {}, m_problem.kinds[kind].capacityOf(c), c, m_begun});
        return m_now.sticks.size() - m_problem.kinds[kind].lengths();
    }

    /// By steps: the least a piece costs as the sticks are now.
    [[nodiscard]] std::vector<double> prices() const {
        std::set<int> lefts;
        for (const CutStick& stick : m_now.sticks)
            lefts.insert(stick.left);
        std::vector<double> price(static_cast<std::size_t>(m_most) + 1, infinite);
        for (int k = 1; k <= m_most; ++k) {
            double& p = price[static_cast<std::size_t>(k)];
            for (std::size_t l = 0; l < m_problem.kinds.size(); ++l)
                p = std::min(p, opening(l, k).cost);
            for (auto left = lefts.lower_bound(k); left != lefts.end(); ++left)
                p = std::min(p, loss(*left, k));
        }
        return price;
    }

    /// The better of two beginnings: each unit in turn, or the ways the linear program leans to, packed.
    void begin() {
        const State nothing{m_now, m_used, m_done};
        for (std::size_t i = 0; i < m_pieces.size(); ++i)
            cut(i);
        if (m_bound.joints.size() != m_pieces.size())
            return;
        const double score = scoreNow();
        const State inTurn{m_now, m_used, m_done};
        m_now = nothing.now;
        m_used = nothing.used;
        m_done = nothing.done;
        pack();
        if (scoreNow() <= score)
            return;
        m_now = inTurn.now;
        m_used = inTurn.used;
        m_done = inTurn.done;
    }

    /// Takes the program's ways and fills stick after stick: the longest piece left, and of the others those
    /// that fill the rest best.
    void pack() {
        std::vector<PlacedPiece> open;
        std::vector<std::size_t> without;
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            std::vector<PlacedPiece> pieces = piecesOf(i, m_bound.joints[i]);
            if (pieces.empty()) {
                without.push_back(i);
                continue;
            }
            m_now.joints[i] = m_bound.joints[i];
            for (const std::size_t place : m_bound.joints[i])
                m_now.conflicts += clashes(i, m_problem.units[i].bay[place - 1]);
            m_done[i] = true;
            open.insert(open.end(), pieces.begin(), pieces.end());
        }
        std::ranges::stable_sort(open, std::ranges::greater{}, &PlacedPiece::steps);
        while (!open.empty()) {
            put(open.front(), true);
            open.erase(open.begin());
            const int begun = m_begun;
            for (CutStick& stick : m_now.sticks)
                if (stick.stick == begun)
                    fill(stick, open);
        }
        for (const std::size_t unit : without)
            cut(unit);
    }

    /// Fills what is left of a stick as full as the open pieces can, long ones rather than short.
    static void fill(CutStick& stick, std::vector<PlacedPiece>& open) {
        const auto room = static_cast<std::size_t>(stick.left);
        std::vector<std::size_t> last(room + 1, open.size()); // piece that first reached a filling
        std::vector<bool> reached(room + 1, false);
        reached[0] = true;
        for (std::size_t p = 0; p < open.size(); ++p) {
            const auto steps = static_cast<std::size_t>(open[p].steps);
            for (std::size_t c = room; c >= steps && c > 0; --c)
                if (!reached[c] && reached[c - steps]) {
                    reached[c] = true;
                    last[c] = p;
                }
        }
        std::size_t filled = room;
        while (!reached[filled])
            --filled;
        std::vector<std::size_t> taken;
        for (std::size_t c = filled; c > 0; c -= static_cast<std::size_t>(open[taken.back()].steps))
            taken.push_back(last[c]);
        for (const std::size_t p : taken) { // from the last to the first, so that places stay
            stick.pieces.push_back(open[p]);
            stick.left -= open[p].steps;
            open.erase(open.begin() + static_cast<std::ptrdiff_t>(p));
        }
    }

    /// Pieces of a unit joined at these places; none where one of them may not be cut.
    [[nodiscard]] std::vector<PlacedPiece> piecesOf(std::size_t unit,
                                                    const std::vector<std::size_t>& joints) const {
        std::vector<PlacedPiece> all;
        std::size_t from = 0;
        for (std::size_t j = 0; j <= joints.size(); ++j) {
            const std::size_t to = j < joints.size() ? joints[j] : m_pieces[unit].nodes() - 1;
            if (!m_pieces[unit].allowed(from, to))
                return {};
            for (std::size_t m = 0; m < m_pieces[unit].members(); ++m)
                all.push_back({unit, m, j, m_pieces[unit].steps(m, from, to)});
            from = to;
        }
        std::ranges::stable_sort(all, std::ranges::greater{}, &PlacedPiece::steps);
        return all;
    }

    void cut(std::size_t unit) {
        const CutUnit& u = m_problem.units[unit];
        const double jointCost = m_problem.jointCost * static_cast<double>(m_pieces[unit].members());
        std::vector<double> joint(u.places(), jointCost);
        for (double& price : joint)
            price += whim();
        for (std::size_t p = 0; p < u.places(); ++p)
            joint[p] += conflictSticks * m_stickPrice * clashes(unit, u.bay[p]);
        const UnitPieces::Way way = m_pieces[unit].cheapest(prices(), joint);
        m_now.joints[unit] = way.joints;
        m_done[unit] = true;
        for (const std::size_t place : way.joints)
            m_now.conflicts += clashes(unit, u.bay[place - 1]);
        for (const PlacedPiece& piece : piecesOf(unit, way.joints))
            put(piece, false);
    }

    /// Something added to a price so that ways are tried that prices alone would pass over; 0 outside a whim.
    [[nodiscard]] double whim() const {
        return m_whim == nullptr ? 0.0
                                 : whimPart * m_stickPrice * static_cast<double>((*m_whim)() % 1000) / 1000.0;
    }

    /// How many of the unit's neighbours have a joint in this bay.
    [[nodiscard]] int clashes(std::size_t unit, int bay) const {
        int count = 0;
        for (const std::size_t other : m_problem.units[unit].neighbours) {
            if (!m_done[other])
                continue;
            for (const std::size_t place : m_now.joints[other])
                count += m_problem.units[other].bay[place - 1] == bay ? 1 : 0;
        }
        return count;
    }

    /// @param fresh  on a stick of its own
    void put(const PlacedPiece& piece, bool fresh) {
        double least = infinite;
        CutStick* into = nullptr;
        for (CutStick& stick : m_now.sticks)
            if (!fresh && stick.left >= piece.steps)
                if (const double cost = loss(stick.left, piece.steps) + whim(); cost < least) {
                    least = cost;
                    into = &stick;
                }
        std::optional<std::size_t> opened;
        std::size_t length = 0;
        for (std::size_t l = 0; l < m_problem.kinds.size(); ++l) {
            const Opening one = opening(l, piece.steps);
            if (const double cost = one.cost + whim(); cost < least) {
                least = cost;
                opened = l;
                length = one.length;
            }
        }
        if (opened)
            into = &m_now.sticks[beginStick(*opened) + length];
        into->pieces.push_back(piece);
        into->left -= piece.steps;
    }

    /// Takes a few sticks apart, the wasteful rather than the full, and all that belongs to their strips.
    /// @return  the strips, in the order they are to be cut again
    std::vector<std::size_t> takeApart(std::mt19937& random) {
        const auto pick = [&random](std::size_t count) { return static_cast<std::size_t>(random() % count); };
        std::vector<std::size_t> units;
        const auto take = [&](std::size_t unit) {
            if (units.size() < mostUnits && std::ranges::find(units, unit) == units.end())
                units.push_back(unit);
        };
        const std::size_t sticks = 1 + pick(mostSticks);
        for (std::size_t n = 0; n < sticks; ++n) {
            std::size_t chosen = pick(m_now.sticks.size());
            for (int tries = 0; tries < 2; ++tries) {
                const std::size_t other = pick(m_now.sticks.size());
                if (m_now.sticks[other].left > m_now.sticks[chosen].left)
                    chosen = other;
            }
            for (const CutStick& stick : m_now.sticks)
                if (stick.stick == m_now.sticks[chosen].stick)
                    for (const PlacedPiece& piece : stick.pieces)
                        take(piece.unit);
        }
        if (m_now.conflicts > 0) // broken rules before anything else
            for (std::size_t i = 0; i < m_problem.units.size() && units.size() < mostUnits; ++i)
                for (const std::size_t place : m_now.joints[i])
                    if (clashes(i, m_problem.units[i].bay[place - 1]) > 0 && pick(2) == 0)
                        take(i);
        for (std::size_t i = units.size(); i > 1; --i)
            std::swap(units[i - 1], units[pick(i)]);
        for (const std::size_t unit : units)
            lift(unit);
        return units;
    }

    void lift(std::size_t unit) {
        m_done[unit] = false;
        for (const std::size_t place : m_now.joints[unit])
            m_now.conflicts -= clashes(unit, m_problem.units[unit].bay[place - 1]);
        for (CutStick& stick : m_now.sticks)
            std::erase_if(stick.pieces, [&](const PlacedPiece& piece) {
                if (piece.unit == unit)
                    stick.left += piece.steps;
                return piece.unit == unit;
            });
        std::set<int> kept;
        for (const CutStick& stick : m_now.sticks)
            if (!stick.pieces.empty())
                kept.insert(stick.stick);
        std::erase_if(m_now.sticks, [&](const CutStick& stick) {
            const bool gone = !kept.contains(stick.stick);
            if (gone && stick.length == 0)
                --m_used[stick.kind];
            return gone;
        });
        m_now.joints[unit].clear();
    }

    [[nodiscard]] double costNow() const {
        double cost = 0.0;
        for (const CutStick& stick : m_now.sticks)
            cost += stick.length == 0 ? m_problem.kinds[stick.kind].cost : 0.0;
        for (std::size_t i = 0; i < m_now.joints.size(); ++i)
            cost += m_problem.jointCost * static_cast<double>(m_pieces[i].members()) *
                    static_cast<double>(m_now.joints[i].size());
        return cost;
    }

    [[nodiscard]] double scoreNow() const {
        double score = costNow() + conflictSticks * m_stickPrice * m_now.conflicts;
        for (const CutStick& stick : m_now.sticks) {
            const double part = static_cast<double>(stick.left) / m_most;
            score -= gatherPart * m_stickPrice * part * part;
        }
        return score;
    }

    const CuttingProblem& m_problem;
    const std::vector<UnitPieces>& m_pieces;
    const CuttingBound& m_bound;
    int m_most = 0;
    double m_stickPrice = 0.0;
    std::vector<double> m_filling;
    std::vector<int> m_used;
    int m_begun = 0;          // sticks, ever
    std::vector<bool> m_done; // units that are cut
    std::mt19937* m_whim = nullptr;
    double m_trust = 1.0; // in what leftovers are worth: few strips may have no use for them
    Cutting m_now;
};

} // namespace

Cutting searchCutting(const CuttingProblem& problem,
                      const std::vector<UnitPieces>& pieces,
                      const CuttingBound& bound,
                      int rounds) {
    return Search(problem, pieces, bound).run(rounds);
}

} // namespace sheerlay::core
