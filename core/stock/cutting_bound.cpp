#include "core/stock/cutting_bound.hpp"

#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr double closeEnough = 5e-4; // of the bound: further rounds change no decision
constexpr int roundsPerFixing = 2;   // of new columns each time a unit's way is settled
constexpr double asGoodAsOne = 0.9;  // a way taken to this part is settled with the fullest one

/// Columns on their way into the solver.
struct Columns {
    std::vector<CoinBigIndex> start{0};
    std::vector<int> row;
    std::vector<double> element, cost;

    void add(const std::map<int, double>& entries, double price) {
        for (const auto& [r, value] : entries) {
            row.push_back(r);
            element.push_back(value);
        }
        start.push_back(static_cast<CoinBigIndex>(row.size()));
        cost.push_back(price);
    }
    [[nodiscard]] bool empty() const noexcept { return cost.empty(); }
};

/// Rows: one per length in steps (supply covers demand), one per unit (it is cut once), one per kind (how
/// many there are), one per bay of two neighbours (one joint at most).
class Master {
public:
    Master(const CuttingProblem& problem, const std::vector<UnitPieces>& pieces)
        : m_problem(problem), m_pieces(pieces) {
        for (const StickKind& kind : problem.kinds)
            m_most = std::max(m_most, kind.capacity);
        m_simplex.setLogLevel(0);
        shareBays();
        m_simplex.resize(m_firstBayRow + m_bayRows, 0);
        for (int k = 0; k < m_most; ++k)
            m_simplex.setRowBounds(k, 0.0, COIN_DBL_MAX);
        for (std::size_t i = 0; i < problem.units.size(); ++i)
            m_simplex.setRowBounds(rowOfUnit(i), 1.0, COIN_DBL_MAX);
        for (std::size_t l = 0; l < problem.kinds.size(); ++l)
            m_simplex.setRowBounds(
                rowOfKind(l), -COIN_DBL_MAX, problem.kinds[l].limit ? *problem.kinds[l].limit : COIN_DBL_MAX);
        for (int r = 0; r < m_bayRows; ++r)
            m_simplex.setRowBounds(m_firstBayRow + r, -COIN_DBL_MAX, 1.0);
        begin();
    }

    CuttingBound run(int mostRounds) {
        CuttingBound best;
        best.worth.assign(static_cast<std::size_t>(m_most) + 1, 0.0);
        for (const StickKind& kind : m_problem.kinds)
            best.price.push_back(kind.cost);
        for (int round = 1; round <= mostRounds; ++round) {
            m_simplex.primal(round == 1 ? 0 : 1);
            if (m_simplex.status() != 0)
                break; // the best bound so far is as true as before
            best.rounds = round;
            Columns fresh;
            takeBound(best, fresh);
            best.closed = m_simplex.objectiveValue() - best.cost <= closeEnough * std::abs(best.cost);
            if (fresh.empty())
                break;
            enter(fresh);
            if (best.closed)
                break;
        }
        settle(best);
        return best;
    }

private:
    [[nodiscard]] int rowOfUnit(std::size_t i) const { return m_most + static_cast<int>(i); }
    [[nodiscard]] int rowOfKind(std::size_t l) const { return rowOfUnit(m_problem.units.size() + l); }
    static int rowOfSteps(int steps) { return steps - 1; }

    /// Gives every bay in which two neighbours could both be joined a row, and each unit the rows of its
    /// bays.
    void shareBays() {
        m_firstBayRow = rowOfKind(m_problem.kinds.size());
        m_rowsOfBay.resize(m_problem.units.size());
        for (std::size_t a = 0; a < m_problem.units.size(); ++a) {
            const CutUnit& unit = m_problem.units[a];
            const std::set<int> mine(unit.bay.begin(), unit.bay.end());
            for (const std::size_t b : unit.neighbours) {
                if (b < a)
                    continue;
                const std::vector<int>& other = m_problem.units[b].bay;
                for (const int bay : std::set<int>(other.begin(), other.end()))
                    if (mine.contains(bay)) {
                        m_rowsOfBay[a][bay].push_back(m_firstBayRow + m_bayRows);
                        m_rowsOfBay[b][bay].push_back(m_firstBayRow + m_bayRows);
                        ++m_bayRows;
                    }
            }
        }
    }

    [[nodiscard]] const std::vector<int>& bayRows(std::size_t unit, std::size_t place) const {
        static const std::vector<int> none;
        const auto found = m_rowsOfBay[unit].find(m_problem.units[unit].bay[place - 1]);
        return found == m_rowsOfBay[unit].end() ? none : found->second;
    }

    void enter(const Columns& columns) {
        const std::vector<double> zero(columns.cost.size(), 0.0);
        const std::vector<double> infinite(columns.cost.size(), COIN_DBL_MAX);
        m_simplex.addColumns(static_cast<int>(columns.cost.size()),
                             zero.data(),
                             infinite.data(),
                             columns.cost.data(),
                             columns.start.data(),
                             columns.row.data(),
                             columns.element.data());
    }

    void begin() {
        Columns columns;
        for (int k = 2; k <= m_most; ++k) // a longer piece serves for a shorter one
            columns.add({{rowOfSteps(k), -1.0}, {rowOfSteps(k - 1), 1.0}}, 0.0);
        for (std::size_t l = 0; l < m_problem.kinds.size(); ++l)
            for (int n = 1; n <= m_problem.kinds[l].capacity; ++n) {
                std::vector<std::pair<int, int>> counts;
                for (std::size_t c = 0; c < m_problem.kinds[l].lengths(); ++c)
                    if (const int k = m_problem.kinds[l].capacityOf(c) / n; k > 0)
                        counts.emplace_back(k, n);
                pattern(columns, l, counts);
                if (m_problem.kinds[l].capacity / n < 8) // shorter than any piece
                    break;
            }
        std::vector<double> fair(static_cast<std::size_t>(m_most) + 1, 0.0);
        for (int k = 1; k <= m_most; ++k)
            fair[static_cast<std::size_t>(k)] = m_problem.kinds.front().cost / std::max(1, m_most / k);
        // with a dear stand-in each unit is cut somehow, whatever its neighbours do
        const double dear = 1e3 * m_problem.kinds.front().cost;
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            way(columns, i, cheapest(i, fair, {}).joints);
            columns.add({{rowOfUnit(i), 1.0}}, dear);
        }
        enter(columns);
    }

    /// Settles the units' ways one after the other, the fullest first, solving again in between.
    void settle(CuttingBound& best) {
        std::vector<bool> settled(m_problem.units.size(), false);
        best.joints.assign(m_problem.units.size(), {});
        for (;;) {
            const double* x = m_simplex.primalColumnSolution();
            std::size_t fullest = m_ways.size();
            std::vector<std::size_t> chosen;
            for (std::size_t w = 0; w < m_ways.size(); ++w) {
                if (settled[m_ways[w].unit])
                    continue;
                if (fullest == m_ways.size() || x[m_ways[w].column] > x[m_ways[fullest].column])
                    fullest = w;
                if (x[m_ways[w].column] > asGoodAsOne)
                    chosen.push_back(w);
            }
            if (fullest == m_ways.size())
                return;
            if (chosen.empty())
                chosen.push_back(fullest);
            for (const std::size_t w : chosen) {
                settled[m_ways[w].unit] = true;
                best.joints[m_ways[w].unit] = m_ways[w].joints;
                m_simplex.setColumnLower(m_ways[w].column, 1.0);
            }
            for (int round = 0; round < roundsPerFixing; ++round) {
                m_simplex.primal(0);
                CuttingBound unused;
                unused.cost = COIN_DBL_MAX; // with ways settled it is no bound of the whole
                Columns fresh;
                if (m_simplex.status() != 0)
                    return;
                takeBound(unused, fresh);
                if (fresh.empty())
                    break;
                enter(fresh);
            }
            m_simplex.primal(0);
            if (m_simplex.status() != 0)
                return;
        }
    }

    void pattern(Columns& columns, std::size_t kind, const std::vector<std::pair<int, int>>& counts) {
        std::map<int, double> entries;
        for (const auto& [steps, count] : counts)
            entries[rowOfSteps(steps)] += count;
        entries[rowOfKind(kind)] = 1.0;
        columns.add(entries, m_problem.kinds[kind].cost);
    }

    void way(Columns& columns, std::size_t unit, const std::vector<std::size_t>& joints) {
        const UnitPieces& pieces = m_pieces[unit];
        std::map<int, double> entries;
        std::size_t from = 0;
        for (std::size_t j = 0; j <= joints.size(); ++j) {
            const std::size_t to = j < joints.size() ? joints[j] : pieces.nodes() - 1;
            for (std::size_t m = 0; m < pieces.members(); ++m)
                entries[rowOfSteps(pieces.steps(m, from, to))] -= 1.0;
            from = to;
        }
        entries[rowOfUnit(unit)] = 1.0;
        for (const std::size_t place : joints)
            for (const int row : bayRows(unit, place))
                entries[row] = 1.0;
        m_ways.push_back({m_simplex.numberColumns() + static_cast<int>(columns.cost.size()), unit, joints});
        columns.add(entries, jointCost(unit) * static_cast<double>(joints.size()));
    }

    [[nodiscard]] double jointCost(std::size_t unit) const {
        return m_problem.jointCost * static_cast<double>(m_pieces[unit].members());
    }

    /// @param bayPrice  per bay row, what a joint there is charged; empty: nothing
    [[nodiscard]] UnitPieces::Way
    cheapest(std::size_t unit, const std::vector<double>& worth, const std::vector<double>& bayPrice) const {
        std::vector<double> joint(m_problem.units[unit].places(), jointCost(unit));
        if (!bayPrice.empty())
            for (std::size_t p = 0; p < joint.size(); ++p)
                for (const int row : bayRows(unit, p + 1))
                    joint[p] += bayPrice[static_cast<std::size_t>(row - m_firstBayRow)];
        return m_pieces[unit].cheapest(worth, joint);
    }

    /// Takes the bound that the present prices prove if it is the best so far, and gathers columns that pay.
    void takeBound(CuttingBound& best, Columns& fresh) {
        const double* dual = m_simplex.dualRowSolution();
        std::vector<double> worth(static_cast<std::size_t>(m_most) + 1, 0.0);
        for (int k = 1; k <= m_most; ++k) // rounding in the solver must not make a longer piece cheaper
            worth[static_cast<std::size_t>(k)] =
                std::max(worth[static_cast<std::size_t>(k) - 1], dual[rowOfSteps(k)]);
        const std::vector<double> filling = bestFilling(worth, m_most);
        double over = 1.0, bound = 0.0;
        std::vector<double> price;
        for (std::size_t l = 0; l < m_problem.kinds.size(); ++l) {
            const StickKind& kind = m_problem.kinds[l];
            const double scarcity = kind.limit ? std::max(0.0, -dual[rowOfKind(l)]) : 0.0;
            price.push_back(kind.cost + scarcity);
            bound -= kind.limit ? scarcity * *kind.limit : 0.0;
            double filled = 0.0;
            std::vector<std::pair<int, int>> counts;
            for (std::size_t c = 0; c < kind.lengths(); ++c) {
                filled += filling[static_cast<std::size_t>(kind.capacityOf(c))];
                const auto one = fillingOf(worth, filling, kind.capacityOf(c));
                counts.insert(counts.end(), one.begin(), one.end());
            }
            over = std::max(over, filled / price.back());
            if (filled > price.back() * (1 + 1e-9))
                pattern(fresh, l, counts);
        }
        std::vector<double> bayPrice(static_cast<std::size_t>(m_bayRows), 0.0);
        for (int r = 0; r < m_bayRows; ++r) {
            bayPrice[static_cast<std::size_t>(r)] = std::max(0.0, -dual[m_firstBayRow + r]);
            bound -= bayPrice[static_cast<std::size_t>(r)];
        }
        std::vector<double> scaled = worth;
        for (double& w : scaled)
            w /= over;
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            bound += cheapest(i, scaled, bayPrice).cost;
            const UnitPieces::Way paying = cheapest(i, worth, bayPrice);
            if (paying.cost < dual[rowOfUnit(i)] - 1e-9 * (1 + std::abs(paying.cost)))
                way(fresh, i, paying.joints);
        }
        if (bound > best.cost) {
            best.cost = bound;
            best.worth = scaled;
            best.price = price;
        }
    }

    /// A column that cuts a unit.
    struct Way {
        int column = 0;
        std::size_t unit = 0;
        std::vector<std::size_t> joints;
    };

    const CuttingProblem& m_problem;
    const std::vector<UnitPieces>& m_pieces;
    std::vector<Way> m_ways;
    int m_most = 0;
    int m_firstBayRow = 0, m_bayRows = 0;
    std::vector<std::map<int, std::vector<int>>> m_rowsOfBay; // per unit and bay
    ClpSimplex m_simplex;
};

} // namespace

CuttingBound
boundCutting(const CuttingProblem& problem, const std::vector<UnitPieces>& pieces, int mostRounds) {
    return Master(problem, pieces).run(mostRounds);
}

} // namespace sheerlay::core
