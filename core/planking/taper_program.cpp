#include "core/planking/taper_program.hpp"

#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>

namespace sheerlay::core {
namespace {

constexpr double slackPrice = 1e4; // of one 1/m over the limit at one place; wood is counted in m2
constexpr double hair = 0.001;     // mm, so that full strips leave the bounds of moves room
constexpr double speck = 1e-9;     // m2 per mm: outside the hull widths still lean toward full

/// Rows and columns as the solver takes them.
struct Assembly {
    std::vector<int> row, column;
    std::vector<double> element;
    std::vector<double> rowLower, rowUpper;
    std::vector<double> lower, upper, cost;

    int addColumn(double lo, double hi, double price) {
        lower.push_back(lo);
        upper.push_back(hi);
        cost.push_back(price);
        return static_cast<int>(lower.size()) - 1;
    }
    int addRow(double lo, double hi) {
        rowLower.push_back(lo);
        rowUpper.push_back(hi);
        return static_cast<int>(rowLower.size()) - 1;
    }
    void add(int r, int c, double value) {
        row.push_back(r);
        column.push_back(c);
        element.push_back(value);
    }
};

} // namespace

std::optional<std::vector<double>> TaperProgram::solve() const {
    Assembly m;
    const std::size_t n = edges * coefficients;
    for (std::size_t e = 0; e < edges; ++e)
        for (std::size_t k = 0; k < coefficients; ++k) {
            const double own = wood[at(e, k)] + speck;
            const double below = e + 1 < edges ? wood[at(e + 1, k)] + speck : 0.0;
            m.addColumn(lower[at(e, k)], upper[at(e, k)], below - own);
        }
    const auto width = [&](int r, std::size_t e, std::size_t k, double sign) {
        m.add(r, static_cast<int>(at(e, k)), sign);
        if (e > 0)
            m.add(r, static_cast<int>(at(e - 1, k)), -sign);
    };
    for (std::size_t e = 0; e < edges; ++e) {
        const int narrowing = m.addColumn(0, COIN_DBL_MAX, price[e]);
        for (std::size_t k = 0; k < coefficients; ++k) {
            const std::size_t i = at(e, k);
            width(m.addRow(mustBeFull[e] && inHull[i] ? full[i] - hair : narrowest[i], full[i]), e, k, 1);
            if (inHull[i] && price[e] > 0 && !mustBeFull[e]) {
                const int r = m.addRow(full[i], COIN_DBL_MAX);
                width(r, e, k, 1);
                m.add(r, narrowing, 1);
            }
            if (endsOnly && k + 1 < coefficients && !mustBeFull[e]) {
                const bool aft = k >= *endsOnly;
                const int r = m.addRow(0, COIN_DBL_MAX); // the width nearer the middle is the larger
                width(r, e, aft ? k : k + 1, 1);
                width(r, e, aft ? k + 1 : k, -1);
            }
        }
    }
    for (const Bend& b : bends) {
        const int r = m.addRow(-limit - b.constant, limit - b.constant);
        for (std::size_t j = 0; j < 4; ++j)
            if (b.a[j] != 0.0)
                m.add(r, static_cast<int>(at(b.edge, b.first + j)), b.a[j]);
        m.add(r, m.addColumn(0, COIN_DBL_MAX, slackPrice), 1);
        m.add(r, m.addColumn(0, COIN_DBL_MAX, slackPrice), -1);
    }
    const CoinPackedMatrix matrix(
        true, m.row.data(), m.column.data(), m.element.data(), static_cast<CoinBigIndex>(m.element.size()));
    ClpSimplex solver;
    solver.setLogLevel(0);
    CoinPackedMatrix sized = matrix;
    sized.setDimensions(static_cast<int>(m.rowLower.size()), static_cast<int>(m.lower.size()));
    solver.loadProblem(
        sized, m.lower.data(), m.upper.data(), m.cost.data(), m.rowLower.data(), m.rowUpper.data());
    solver.dual();
    if (solver.status() != 0)
        return std::nullopt;
    const double* solution = solver.primalColumnSolution();
    return std::vector<double>(solution, solution + n);
}

} // namespace sheerlay::core
