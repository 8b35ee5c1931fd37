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

    /// Scaled leave-one-out deviations of every cell that is in, and of those set aside on their own lines,
    /// by 2 point + (1 for a height).
    [[nodiscard]] std::map<std::size_t, SuspectCell> judge();

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
    [[nodiscard]] Place place(double u, double v) const;
    void reproject();
    /// The rows of the present state: y and z of each point, or its distance along the section's normal.
    [[nodiscard]] std::vector<Row> equations(bool both, double tangential) const;
    bool factor(const std::vector<Row>& rows);
    /// A cell that is out is judged where the surface crosses its own line; no linearisation over so large an
    /// error.
    [[nodiscard]] std::optional<SuspectCell> onOwnLine(const CellRef& c, double scale) const;

    const HullTable& m_table;
    LoftData& m_data;
    geometry::FairFit m_fit;
    CoupledFit m_coupled;
    Eigen::VectorXd m_poles;
    std::vector<Row> m_rows;
    bool m_haveSurface = false;
    std::vector<CellRef> m_out;
};

} // namespace sheerlay::core
