#include "core/planking/taper_program.hpp"

#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr double slackPrice = 1e4; // of one 1/m over the limit at one place; wood is counted in m2
constexpr double hair = 0.001;     // mm, so that full strips leave the bounds of moves room
constexpr double speck = 1e-9;     // m2 per mm: outside the hull widths still lean toward full
constexpr double busyPart = 0.8;   // of the limit: bends that are entered from the beginning
constexpr int mostRounds = 30;     // of entering more bends

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

struct TaperSolver::Model {
    ClpSimplex simplex;
    TaperProgram program;
    std::size_t firstNarrowing = 0, firstSlack = 0; // columns: coefficients, narrowings, slacks
    std::vector<char> entered;                      // bends the solver knows of
    std::vector<std::size_t> enteredAs;             // the same in the order of their rows
    int firstBend = 0;                              // row
    std::vector<int> widthRow, narrowRow;           // per edge and coefficient; -1 where there is none
    std::vector<double> solution;                   // columns, of the last success
    std::vector<char> held;
    double objective = 0.0;
    bool fresh = true, priced = false;

    [[nodiscard]] double width(std::size_t e, std::size_t k) const {
        return solution[program.at(e, k)] - (e > 0 ? solution[program.at(e - 1, k)] : 0.0);
    }
    [[nodiscard]] std::vector<ClpSimplex::Status> basis() const {
        std::vector<ClpSimplex::Status> all;
        for (int c = 0; c < simplex.numberColumns(); ++c)
            all.push_back(simplex.getColumnStatus(c));
        for (int r = 0; r < simplex.numberRows(); ++r)
            all.push_back(simplex.getRowStatus(r));
        return all;
    }
};

TaperSolver::TaperSolver(const TaperProgram& program, const TaperBasis& from)
    : m_model(std::make_unique<Model>()) {
    m_model->program = program;
    const TaperProgram& p = program;
    Assembly m;
    for (std::size_t e = 0; e < p.edges; ++e)
        for (std::size_t k = 0; k < p.coefficients; ++k) {
            const double own = p.wood[p.at(e, k)] + speck;
            const double below = e + 1 < p.edges ? p.wood[p.at(e + 1, k)] + speck : 0.0;
            m.addColumn(p.lower[p.at(e, k)], p.upper[p.at(e, k)], below - own);
        }
    m_model->firstNarrowing = m.lower.size();
    for (std::size_t e = 0; e < p.edges; ++e)
        m.addColumn(0, COIN_DBL_MAX, 0);
    m_model->firstSlack = m.lower.size();
    const auto width = [&](int r, std::size_t e, std::size_t k, double sign) {
        m.add(r, static_cast<int>(p.at(e, k)), sign);
        if (e > 0)
            m.add(r, static_cast<int>(p.at(e - 1, k)), -sign);
    };
    for (std::size_t e = 0; e < p.edges; ++e)
        for (std::size_t k = 0; k < p.coefficients; ++k) {
            const std::size_t i = p.at(e, k);
            m_model->widthRow.push_back(m.addRow(p.narrowest[i], p.full[i]));
            width(m_model->widthRow.back(), e, k, 1);
            m_model->narrowRow.push_back(-1);
            if (p.inHull[i] && p.countsNarrowing) {
                const int r = m.addRow(p.unnarrowed(i), COIN_DBL_MAX);
                m_model->narrowRow.back() = r;
                width(r, e, k, 1);
                m.add(r, static_cast<int>(m_model->firstNarrowing + e), 1);
            }
            if (p.endsOnly && k + 1 < p.coefficients) {
                // the square width nearer the middle is the larger
                const bool aft = k >= *p.endsOnly;
                const std::size_t inner = aft ? k : k + 1;
                const std::size_t outer = aft ? k + 1 : k;
                const int r = m.addRow(-hair, COIN_DBL_MAX);
                width(r, e, inner, p.slant[p.at(e, outer)] / p.slant[p.at(e, inner)]);
                width(r, e, outer, -1);
            }
        }
    CoinPackedMatrix matrix(
        true, m.row.data(), m.column.data(), m.element.data(), static_cast<CoinBigIndex>(m.element.size()));
    matrix.setDimensions(static_cast<int>(m.rowLower.size()), static_cast<int>(m.lower.size()));
    ClpSimplex& s = m_model->simplex;
    s.setLogLevel(0);
    s.loadProblem(
        matrix, m.lower.data(), m.upper.data(), m.cost.data(), m.rowLower.data(), m.rowUpper.data());
    m_model->firstBend = s.numberRows();
    m_model->entered.assign(p.bends.size(), 0);
    if (!from.empty() && from.coefficients == p.coefficients) {
        beginFrom(from);
        return;
    }
    std::vector<std::size_t> busy;
    for (std::size_t i = 0; i < p.bends.size(); ++i)
        if (std::abs(p.bends[i].present) > busyPart * p.limit)
            busy.push_back(i);
    addBends(busy);
}

/// Enters the bends that held something then, and marks everything as it was. What is new (edges that were
/// added since) keeps the marks of a beginning; the solver mends a basis that is not one any more.
void TaperSolver::beginFrom(const TaperBasis& basis) {
    const TaperProgram& p = m_model->program;
    ClpSimplex& s = m_model->simplex;
    std::map<std::pair<std::size_t, std::size_t>, const TaperBasis::Bend*> known;
    for (const TaperBasis::Bend& b : basis.bends)
        known[{b.edge, b.column}] = &b;
    std::vector<std::size_t> which;
    std::vector<const TaperBasis::Bend*> marks;
    for (std::size_t i = 0; i < p.bends.size(); ++i) {
        const auto found = known.find({p.bends[i].edge, p.bends[i].column});
        const TaperBasis::Bend* mark = found == known.end() ? nullptr : found->second;
        if (!mark && std::abs(p.bends[i].present) <= busyPart * p.limit)
            continue;
        which.push_back(i);
        marks.push_back(mark);
    }
    addBends(which);
    const auto status = [](TaperBasis::Mark mark) { return static_cast<ClpSimplex::Status>(mark); };
    const std::size_t edges = std::min(basis.edges, p.edges);
    for (std::size_t i = 0; i < edges * p.coefficients; ++i) {
        s.setColumnStatus(static_cast<int>(i), status(basis.coefficient[i]));
        s.setRowStatus(m_model->widthRow[i], status(basis.width[i]));
        if (m_model->narrowRow[i] >= 0 && basis.narrowed[i])
            s.setRowStatus(m_model->narrowRow[i], status(basis.narrow[i]));
    }
    for (std::size_t e = 0; e < edges; ++e)
        s.setColumnStatus(static_cast<int>(m_model->firstNarrowing + e), status(basis.narrowing[e]));
    for (std::size_t j = 0; j < which.size(); ++j)
        if (marks[j]) {
            const int slack = static_cast<int>(m_model->firstSlack + 2 * j);
            s.setRowStatus(m_model->firstBend + static_cast<int>(j), status(marks[j]->row));
            s.setColumnStatus(slack, status(marks[j]->over));
            s.setColumnStatus(slack + 1, status(marks[j]->under));
        }
}

TaperBasis withoutEdges(TaperBasis basis, const std::vector<std::size_t>& gone) {
    const auto n = static_cast<std::ptrdiff_t>(basis.coefficients);
    for (auto e = gone.rbegin(); e != gone.rend(); ++e) {
        if (*e >= basis.edges)
            continue;
        const auto at = static_cast<std::ptrdiff_t>(*e);
        const auto dropRow = [&](auto& marks) {
            marks.erase(marks.begin() + at * n, marks.begin() + (at + 1) * n);
        };
        dropRow(basis.coefficient);
        dropRow(basis.width);
        dropRow(basis.narrow);
        dropRow(basis.narrowed);
        basis.narrowing.erase(basis.narrowing.begin() + at);
        std::erase_if(basis.bends, [&](const TaperBasis::Bend& b) { return b.edge == *e; });
        for (TaperBasis::Bend& b : basis.bends)
            b.edge -= b.edge > *e ? 1 : 0;
        --basis.edges;
    }
    return basis;
}

TaperBasis TaperSolver::basis() const {
    const Model& m = *m_model;
    const ClpSimplex& s = m.simplex;
    TaperBasis b;
    b.edges = m.program.edges;
    b.coefficients = m.program.coefficients;
    const auto column = [&](std::size_t c) {
        return static_cast<TaperBasis::Mark>(s.getColumnStatus(static_cast<int>(c)));
    };
    const auto row = [&](int r) { return static_cast<TaperBasis::Mark>(s.getRowStatus(r)); };
    for (std::size_t i = 0; i < b.edges * b.coefficients; ++i) {
        b.coefficient.push_back(column(i));
        b.width.push_back(row(m.widthRow[i]));
        b.narrowed.push_back(m.narrowRow[i] >= 0);
        b.narrow.push_back(m.narrowRow[i] >= 0 ? row(m.narrowRow[i])
                                               : static_cast<TaperBasis::Mark>(ClpSimplex::basic));
    }
    for (std::size_t e = 0; e < b.edges; ++e)
        b.narrowing.push_back(column(m.firstNarrowing + e));
    for (std::size_t j = 0; j < m.enteredAs.size(); ++j) {
        const TaperBasis::Mark mark = row(m.firstBend + static_cast<int>(j));
        if (mark == static_cast<TaperBasis::Mark>(ClpSimplex::basic))
            continue; // it held nothing
        const TaperProgram::Bend& bend = m.program.bends[m.enteredAs[j]];
        b.bends.push_back(
            {bend.edge, bend.column, mark, column(m.firstSlack + 2 * j), column(m.firstSlack + 2 * j + 1)});
    }
    return b;
}

TaperSolver::~TaperSolver() = default;

void TaperSolver::addBends(const std::vector<std::size_t>& which) {
    const TaperProgram& p = m_model->program;
    std::vector<double> rowLower, rowUpper, element, zero, infinite, cost, slackElement;
    std::vector<int> column, slackRow;
    std::vector<CoinBigIndex> start{0}, slackStart{0};
    for (const std::size_t i : which) {
        const TaperProgram::Bend& b = p.bends[i];
        m_model->entered[i] = 1;
        m_model->enteredAs.push_back(i);
        const int row = m_model->simplex.numberRows() + static_cast<int>(rowLower.size());
        rowLower.push_back(-p.limit - b.constant);
        rowUpper.push_back(p.limit - b.constant);
        for (std::size_t j = 0; j < 4; ++j)
            if (b.a[j] != 0.0) {
                column.push_back(static_cast<int>(p.at(b.edge, b.first + j)));
                element.push_back(b.a[j]);
            }
        start.push_back(static_cast<CoinBigIndex>(column.size()));
        for (const double sign : {1.0, -1.0}) {
            slackRow.push_back(row);
            slackElement.push_back(sign);
            slackStart.push_back(static_cast<CoinBigIndex>(slackRow.size()));
            zero.push_back(0);
            infinite.push_back(COIN_DBL_MAX);
            cost.push_back(slackPrice);
        }
    }
    if (which.empty())
        return;
    ClpSimplex& s = m_model->simplex;
    s.addRows(static_cast<int>(rowLower.size()),
              rowLower.data(),
              rowUpper.data(),
              start.data(),
              column.data(),
              element.data());
    s.addColumns(static_cast<int>(zero.size()),
                 zero.data(),
                 infinite.data(),
                 cost.data(),
                 slackStart.data(),
                 slackRow.data(),
                 slackElement.data());
}

/// Enters the bends that the present solution breaks. @return whether there were any
bool TaperSolver::addBroken() {
    const TaperProgram& p = m_model->program;
    const double* x = m_model->simplex.primalColumnSolution();
    std::vector<std::size_t> broken;
    for (std::size_t i = 0; i < p.bends.size(); ++i) {
        if (m_model->entered[i])
            continue;
        const TaperProgram::Bend& b = p.bends[i];
        double bend = b.constant;
        for (std::size_t j = 0; j < 4; ++j)
            bend += b.a[j] * x[p.at(b.edge, b.first + j)];
        if (std::abs(bend) > p.limit * (1 + 1e-5))
            broken.push_back(i);
    }
    addBends(broken);
    return !broken.empty();
}

void TaperSolver::setPrices(const std::vector<double>& price) {
    for (std::size_t e = 0; e < price.size(); ++e)
        m_model->simplex.setObjectiveCoefficient(static_cast<int>(m_model->firstNarrowing + e), price[e]);
    m_model->priced = true;
}

void TaperSolver::holdFull(const std::vector<char>& held) {
    m_model->held = held;
    for (std::size_t e = 0; e < held.size(); ++e)
        m_model->simplex.setColumnBounds(
            static_cast<int>(m_model->firstNarrowing + e), 0, held[e] ? hair : COIN_DBL_MAX);
}

bool TaperSolver::run(Way way) {
    ClpSimplex& s = m_model->simplex;
    // the last basis stays primal feasible when only prices changed, dual feasible when only bounds did
    for (int round = 0; round < mostRounds; ++round) {
        if (round == 0 && way == Way::PricesChanged)
            s.primal();
        else
            s.dual();
        if (s.status() != 0)
            return false;
        if (!addBroken()) {
            const double* x = s.primalColumnSolution();
            m_model->solution.assign(x, x + s.numberColumns());
            m_model->objective = s.objectiveValue();
            return true;
        }
    }
    return false;
}

bool TaperSolver::solve() {
    Model& m = *m_model;
    const Way way = m.fresh ? Way::FromScratch : m.priced ? Way::PricesChanged : Way::BoundsChanged;
    m.fresh = m.priced = false;
    m.simplex.setDualObjectiveLimit(COIN_DBL_MAX);
    return run(way);
}

bool TaperSolver::tryHeld(const std::vector<char>& held, double moreWood, double moreExcess) {
    Model& m = *m_model;
    const auto basis = m.basis();
    const auto solution = m.solution;
    const auto before = m.held;
    const double objective = m.objective;
    const int columns = m.simplex.numberColumns();
    const double mostWood = wood() + moreWood;
    const double mostExcess = excess() + moreExcess;
    m.simplex.setDualObjectiveLimit(m.objective + moreWood + slackPrice * moreExcess);
    holdFull(held);
    if (run(Way::BoundsChanged) && wood() <= mostWood && excess() <= mostExcess)
        return true;
    holdFull(before);
    m.solution = solution;
    m.objective = objective;
    for (int c = 0; c < m.simplex.numberColumns(); ++c)
        m.simplex.setColumnStatus(
            c, c < columns ? basis[static_cast<std::size_t>(c)] : ClpSimplex::atLowerBound);
    const int rows = static_cast<int>(basis.size()) - columns;
    for (int r = 0; r < m.simplex.numberRows(); ++r)
        m.simplex.setRowStatus(r,
                               r < rows ? basis[static_cast<std::size_t>(columns + r)] : ClpSimplex::basic);
    return false;
}

std::vector<double> TaperSolver::coefficients() const {
    const auto end = m_model->solution.begin() + static_cast<std::ptrdiff_t>(m_model->firstNarrowing);
    return {m_model->solution.begin(), end};
}

double TaperSolver::excess() const {
    double sum = 0;
    for (std::size_t i = m_model->firstSlack; i < m_model->solution.size(); ++i)
        sum += m_model->solution[i];
    return sum;
}

double TaperSolver::wood() const {
    const TaperProgram& p = m_model->program;
    double sum = 0;
    for (std::size_t e = 0; e < p.edges; ++e)
        for (std::size_t k = 0; k < p.coefficients; ++k)
            sum += p.wood[p.at(e, k)] * (p.full[p.at(e, k)] - m_model->width(e, k));
    return sum;
}

double TaperSolver::narrowing(std::size_t edge) const {
    const TaperProgram& p = m_model->program;
    double most = 0;
    for (std::size_t k = 0; k < p.coefficients; ++k)
        if (p.inHull[p.at(edge, k)])
            most = std::max(most, p.unnarrowed(p.at(edge, k)) - m_model->width(edge, k));
    return most;
}

} // namespace sheerlay::core
