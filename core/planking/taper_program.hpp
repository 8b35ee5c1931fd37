#pragma once

#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// The linear program of a tapered field: edges 1 to N as B-spline coefficients, edge 0 fixed at 0. Widths
/// lie between bounds, linearised edge bends keep a limit, and wood and touched strips are kept few.
/// @source closing.md section 1
struct TaperProgram {
    std::size_t edges = 0, coefficients = 0;

    /// Per edge and coefficient, edge by edge (index `at`): bounds of the width of the strip above the edge,
    /// mm, and its worth in wood, m2 per mm.
    std::vector<double> narrowest, full, wood;
    std::vector<double> wanted;       ///< mm that narrowing is counted from; empty: from the full width
    bool countsNarrowing = true;      ///< else strips are neither priced nor held full
    std::vector<double> slant;        ///< chart width over square width
    std::vector<char> inHull;         ///< the coefficient shapes the strip inside the hull, and it is no band
    std::vector<double> lower, upper; ///< bounds of the coefficients themselves, mm

    /// Edge bend at one place: constant + sum of a * coefficients first to first + 3, 1/m.
    struct Bend {
        std::size_t edge = 0, first = 0;
        std::size_t column = 0; ///< which place of the edge this is; edge and column name a bend
        std::array<double, 4> a{};
        double constant = 0.0;
        double present = 0.0; ///< 1/m, about the edges the program was made for
    };
    std::vector<Bend> bends;
    double limit = 0.0;                  ///< 1/m
    std::optional<std::size_t> endsOnly; ///< widths may only fall outward from this coefficient

    [[nodiscard]] std::size_t at(std::size_t edge, std::size_t k) const { return edge * coefficients + k; }
    [[nodiscard]] double unnarrowed(std::size_t i) const { return wanted.empty() ? full[i] : wanted[i]; }
};

/// Which unknowns and bounds of a solved program were free and which held, in the solver's own marks: a
/// program of nearly the same kind, as of the same rows linearised again, starts from there and is soon done.
struct TaperBasis {
    using Mark = unsigned char;
    struct Bend {
        std::size_t edge = 0, column = 0;
        Mark row = 0, over = 0, under = 0;
    };
    std::size_t edges = 0, coefficients = 0;
    std::vector<Mark> coefficient;   ///< per edge and coefficient
    std::vector<Mark> width, narrow; ///< the same, of the rows on it; of those that the program had
    std::vector<char> narrowed;      ///< per edge and coefficient: it had a row for narrowing
    std::vector<Mark> narrowing;     ///< per edge
    std::vector<Bend> bends;         ///< that were entered
    [[nodiscard]] bool empty() const noexcept { return coefficient.empty(); }
};

/// Of a program that lacks some of the edges. @param gone  from 0, ascending
[[nodiscard]] TaperBasis withoutEdges(TaperBasis basis, const std::vector<std::size_t>& gone);

/// The program in the solver, solved again from the last solution when prices change or strips are held full.
/// Edge bends enter only where they come near the limit: the solver begins with those that do about the
/// present edges, and whatever a solution breaks is added to it. Deterministic. Not for two threads at once.
class TaperSolver {
public:
    /// @param from  where to begin; ignored when empty
    explicit TaperSolver(const TaperProgram& program, const TaperBasis& from = {});
    ~TaperSolver();
    TaperSolver(const TaperSolver&) = delete;
    TaperSolver& operator=(const TaperSolver&) = delete;

    /// Per edge, m2 for each mm of its strip's largest narrowing.
    void setPrices(const std::vector<double>& price);
    /// Per edge, whether its strip must stay full inside the hull.
    void holdFull(const std::vector<char>& held);

    /// @return false when the solver gives up
    [[nodiscard]] bool solve();
    /// Solves after strips were held full, and goes back to the last solution if that costs too much.
    /// @param wood    m2 more than now that it may cost
    /// @param excess  1/m more than now that edge bends may lie over the limit, all together
    [[nodiscard]] bool tryHeld(const std::vector<char>& held, double wood, double excess);
    /// Coefficients, edge by edge.
    [[nodiscard]] std::vector<double> coefficients() const;
    /// Of the last solution.
    [[nodiscard]] TaperBasis basis() const;
    /// Sum of what edge bends lie over the limit, 1/m.
    [[nodiscard]] double excess() const;
    /// Wood removed against the full widths, m2.
    [[nodiscard]] double wood() const;
    /// Largest narrowing of the strip above an edge (index from 0), mm in the chart; from `wanted` if given.
    [[nodiscard]] double narrowing(std::size_t edge) const;

private:
    enum class Way { FromScratch, PricesChanged, BoundsChanged };
    [[nodiscard]] bool run(Way way);
    [[nodiscard]] bool addBroken();
    void addBends(const std::vector<std::size_t>& which);
    void beginFrom(const TaperBasis& basis);

    struct Model;
    std::unique_ptr<Model> m_model;
};

} // namespace sheerlay::core
