#pragma once

#include "core/hull/hull.hpp"
#include "geometry/parallels.hpp"

#include <vector>

namespace sheerlay::core {

/// An edge at one column of a chart: distance from the start and its derivatives along the start.
struct GraphPoint {
    double w = 0.0;      ///< mm, away from the start
    double first = 0.0;  ///< dw/ds
    double second = 0.0; ///< d2w/ds2, 1/mm
};

/// The start line's geodesic chart on one side of it: s along the start, w along the geodesics that leave it
/// squarely, with ds^2 = dw^2 + G^2 ds^2. Every edge of a plan is a graph w = W(s) in it. Columns are equally
/// spaced along the start.
/// @accuracy  tests/core/planking/start_chart_test.cpp: closed forms on sphere and cylinder
/// @source    closing.md section 1, planking.md section 1
class StartChart {
public:
    /// @param master   nodes `spacing` mm apart
    /// @param rowStep  mm between rows of the grid
    StartChart(const TrimmedSurface& hull,
               const std::vector<geometry::MasterNode>& master,
               double spacing,
               geometry::FanSide side,
               double rowStep);

    [[nodiscard]] std::size_t columns() const noexcept { return m_columns.size(); }
    [[nodiscard]] double spacing() const noexcept { return m_spacing; }
    /// Distance at which the last part of the hull is left behind, mm.
    [[nodiscard]] double depth() const noexcept { return m_depth; }
    /// True where the chart reaches, at a column and a distance.
    [[nodiscard]] bool reaches(std::size_t column, double w) const;
    /// True inside the hull's trims, to within a grid step.
    [[nodiscard]] bool inside(std::size_t column, double w) const;
    /// True where the column's geodesic is inside the hull here or further from the start.
    [[nodiscard]] bool meetsHull(std::size_t column, double w) const;
    /// Surface parameters. Only where the chart reaches.
    [[nodiscard]] Eigen::Vector2d uv(std::size_t column, double w) const;
    /// G: length along the parallel for each mm along the start.
    [[nodiscard]] double stretch(std::size_t column, double w) const;
    /// Edge bend of an edge, 1/mm, + where its centre lies away from the start.
    [[nodiscard]] double edgeBend(std::size_t column, const GraphPoint& edge) const;
    /// The same between two columns that both reach `edge`. @param column  with fraction
    [[nodiscard]] double edgeBendBetween(double column, const GraphPoint& edge) const;

private:
    struct Node {
        geometry::GeodesicState state;
        double along = 0.0; // dG/ds at constant w
        bool inside = false;
    };
    struct Metric {
        double g = 1.0, gw = 0.0, gs = 0.0;
    };
    [[nodiscard]] Metric metric(std::size_t column, double w) const;
    [[nodiscard]] static double edgeBend(const Metric& metric, const GraphPoint& edge);

    double m_spacing, m_step;
    double m_depth = 0.0;
    std::vector<std::vector<Node>> m_columns; // as far as the geodesic lives
};

} // namespace sheerlay::core
