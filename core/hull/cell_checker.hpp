#pragma once

#include "core/hull/coupled_fit.hpp"
#include "core/hull/line_check.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/suspect_cells.hpp"
#include "geometry/fair_fit.hpp"

#include <map>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// One fair fit of the table that judges every cell: by its leave-one-out residual, all from one
/// factorisation, or, for a cell that is set aside, by where the surface crosses the cell's own line.
/// Half-breadth and height are fitted together, coupled by the sections' normals.
/// @source table_checks.md section 2.1
class CellChecker {
public:
    /// @param table, data  must outlive the checker, which moves the girths of the points
    CellChecker(const HullTable& table, LoftData& data);

    /// Cells the fit goes without.
    void setOut(std::vector<CellRef> out) { m_out = std::move(out); }
    [[nodiscard]] bool isOut(const CellRef& c) const;
    [[nodiscard]] const std::vector<CellRef>& out() const { return m_out; }

    /// Girths by chord sums over the points that are in; a point set aside takes its place between its
    /// neighbours.
    void startGirths();

    /// Fits with both coordinates of every point first, which converges from afar, then with the distance
    /// along the normal, damped along the section; last factors the system of normal rows alone, which is
    /// what the points really say, for the leverages.
    /// @return false when the points do not determine a surface
    bool fit();

    /// Fits on from a surface of the same net and the girths the points have on it: cheaper, and near enough
    /// where one cell more or less is out.
    bool refit(const Eigen::VectorXd& from);

    /// The last fit's poles, y, z, y, z, …
    [[nodiscard]] const Eigen::VectorXd& poles() const noexcept { return m_poles; }

    /// What the last fit could not please: squared residuals over their spreads and the cost of its shape.
    /// Without the one wrong cell it falls farthest.
    [[nodiscard]] double discord() const;

    /// Cells with a row of their own in the last fit, whether they could be judged or not.
    [[nodiscard]] std::vector<CellRef> cells() const;

    /// Scaled leave-one-out deviations of every cell that is in, and of those set aside on their own lines,
    /// by 2 point + (1 for a height).
    [[nodiscard]] std::map<std::size_t, SuspectCell> judge();

    /// The table's own scatter over what rounding explains, as the last judge() found it; at least 0.5.
    [[nodiscard]] double scale() const noexcept { return m_scale; }

    /// A cell that is out, judged where the surface crosses its own line; no linearisation over so large an
    /// error. None where the surface does not cross it.
    [[nodiscard]] std::optional<SuspectCell> onOwnLine(const CellRef& c) const;

private:
    /// A condition with the cell it comes from; along the section for a whisper that is no data.
    struct Row : CoupledRow {
        CellRef cell;
        double value = 0, residual = 0;
        bool data = true;
    };
    struct Place {
        double y, z, yv, zv, yvv, zvv;
    };

    [[nodiscard]] static bool heightCell(const LoftPoint& p, const Row& r);
    /// @param side  of the knuckle, as LoftPoint::side
    [[nodiscard]] Place place(double u, double v, int side = 0) const;
    void spreadAtKnuckle(int station);
    void reproject();
    /// The rows of the present state: y and z of each point, or its distance along the section's normal.
    [[nodiscard]] std::vector<Row> equations(bool both, double tangential) const;
    bool factor(const std::vector<Row>& rows);
    /// Solves and re-projects so many times, then factors the normal rows alone.
    bool settle(int times);
    const HullTable& m_table;
    LoftData& m_data;
    geometry::FairFit m_fit;
    CoupledFit m_coupled;
    Eigen::VectorXd m_poles;
    std::vector<Row> m_rows;
    bool m_haveSurface = false;
    double m_scale = 1.0;
    std::vector<CellRef> m_out;
};

} // namespace sheerlay::core
