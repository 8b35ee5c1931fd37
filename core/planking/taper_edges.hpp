#pragma once

#include "core/planking/row_width.hpp"
#include "core/planking/start_chart.hpp"
#include "core/planking/taper_field.hpp"
#include "core/planking/taper_program.hpp"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <array>
#include <cstddef>
#include <utility>
#include <vector>

namespace sheerlay::core {

/// Cubic B-spline on uniform knots at one place: four weights for value and two derivatives.
struct SplineWeights {
    std::size_t first = 0;
    std::array<double, 4> value{}, slope{}, bend{};
};

/// The far edges of all rows of a field, as cubic B-splines over the start's chart; all full to begin with.
/// Edges are counted from 1; edge 0 is the start line. A row may be a band of two strips whose seam is free.
class TaperEdges {
public:
    /// @param chart  must outlive the edges
    /// @param bands  rows, from 0 and ascending, that two strips share
    TaperEdges(const StartChart& chart, const TaperWish& wish, const std::vector<std::size_t>& bands = {});

    /// True where no row lies on this side of the start.
    [[nodiscard]] bool empty() const noexcept { return m_weights.empty(); }
    [[nodiscard]] std::size_t count() const noexcept { return m_edges; }

    /// The row above an edge is a band of two strips.
    [[nodiscard]] bool isBand(std::size_t edge) const { return m_strips[edge - 1] > 1; }
    /// Greatest width of the row above an edge, mm.
    [[nodiscard]] double full(std::size_t edge) const { return m_strips[edge - 1] * m_wish.coverWidth; }

    /// The linear program about the present edges. @param move  mm a coefficient may go from where it is
    [[nodiscard]] TaperProgram program(double move) const;
    /// New coefficients, from the program's solution.
    void take(std::vector<double> coefficients) { m_c = std::move(coefficients); }
    /// Takes the edges of the same field where every row was one strip: they are near what bands need.
    void takeWithoutSeams(const TaperEdges& plain);
    /// Where the next program about these edges may begin.
    [[nodiscard]] const TaperBasis& basis() const noexcept { return m_basis; }
    void remember(TaperBasis basis) { m_basis = std::move(basis); }
    /// Asks another limit, 1/mm, from the next program on.
    void setLimit(double limit) noexcept { m_wish.limit = limit; }
    /// Adds full rows until the last edge has left the hull.
    void coverHull();

    /// Keeps bands to one strip but where their second one is long enough to be worth its joints, from the
    /// next program on. @param shortest  mm
    void forbidShortStealers(double shortest);

    /// Worst edge bend of an edge inside the hull, 1/mm, on steps of 10 mm or less.
    [[nodiscard]] double worst(std::size_t edge) const;
    /// Largest narrowing of the strip above an edge inside the hull, mm square to its near edge; of a band
    /// none: how its strips are cut is another matter.
    [[nodiscard]] double narrowing(std::size_t edge) const;
    /// Width of the strip above an edge, square to its near edge.
    [[nodiscard]] RowWidth widthOf(std::size_t edge) const;
    /// Wood removed from all strips, mm2.
    [[nodiscard]] double wood() const;

private:
    /// @param column  counted from the first one used, with fraction
    [[nodiscard]] SplineWeights weightsAt(double column) const;
    [[nodiscard]] GraphPoint edge(std::size_t e, const SplineWeights& at) const;
    [[nodiscard]] GraphPoint edge(std::size_t e, std::size_t column) const {
        return edge(e, m_weights[column]);
    }
    [[nodiscard]] bool reaches(std::size_t column, double w) const {
        return m_chart->reaches(m_first + column, w);
    }
    [[nodiscard]] bool inside(std::size_t column, double w) const {
        return m_chart->inside(m_first + column, w);
    }
    [[nodiscard]] bool onHull(std::size_t e, std::size_t column) const;
    [[nodiscard]] bool counts(std::size_t e, std::size_t column) const;
    [[nodiscard]] bool stripInside(std::size_t e, std::size_t column) const;
    [[nodiscard]] double slant(std::size_t e, std::size_t column) const;
    [[nodiscard]] double squareWidth(std::size_t e, std::size_t column) const;
    [[nodiscard]] double trueWidth(std::size_t e, std::size_t column) const;
    [[nodiscard]] Eigen::VectorXd slantCoefficients(std::size_t e) const;
    void addBends(TaperProgram& program, std::size_t e) const;

    const StartChart* m_chart;
    TaperWish m_wish;
    std::size_t m_edges = 0, m_coefficients = 0, m_spans = 0;
    std::size_t m_first = 0, m_last = 0; // columns of the chart that are used
    double m_knot = 0.0;                 // mm
    double m_ahead = 0.0;                // mm the splines begin before the first column
    std::vector<SplineWeights> m_weights;
    Eigen::LDLT<Eigen::MatrixXd> m_project; // least squares onto the splines
    std::vector<double> m_c;                // edge by edge
    std::vector<char> m_single;             // per coefficient: one strip at most, in a band too
    std::vector<int> m_strips;              // per row: 2 in a band
    TaperBasis m_basis;
};

} // namespace sheerlay::core
