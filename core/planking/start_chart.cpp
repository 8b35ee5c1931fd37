#include "core/planking/start_chart.hpp"

#include "core/planking/start_line.hpp"
#include "core/planking/trim_crossing.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr int mostRows = 800;
constexpr int rowsBeyond = 10;       // grid rows past the hull that the chart still covers
constexpr double leastStretch = 0.1; // G under which geodesics are about to cross and the chart ends

} // namespace

StartChart::StartChart(const TrimmedSurface& hull,
                       const std::vector<geometry::MasterNode>& master,
                       double spacing,
                       geometry::FanSide side,
                       double rowStep)
    : m_spacing(spacing), m_step(rowStep), m_columns(master.size()) {
    geometry::ParallelFan fan(hull.surface, master, side, rowBox(hull));
    std::vector<char> open(master.size(), 1); // a column goes on until its geodesic dies
    int beyond = 0;
    for (int k = 0; k < mostRows && beyond < rowsBeyond; ++k) {
        if (k > 0)
            fan.advance(rowStep);
        bool anyInside = false;
        for (std::size_t i = 0; i < master.size(); ++i) {
            const geometry::RowNode& n = fan.row()[i];
            open[i] = open[i] && n.alive && n.state.jacobi > leastStretch;
            if (!open[i])
                continue;
            const bool in = insideHull(hull, n.state.uv, n.jet.p);
            m_columns[i].push_back({n.state, 0.0, in});
            if (in) {
                anyInside = true;
                m_depth = k * rowStep;
            }
        }
        beyond = anyInside ? 0 : beyond + 1;
    }
    // dG/ds by differences between columns, of fourth order where four neighbours reach as far
    const auto has = [&](std::ptrdiff_t i, std::size_t k) {
        return i >= 0 && i < static_cast<std::ptrdiff_t>(m_columns.size()) &&
               k < m_columns[static_cast<std::size_t>(i)].size();
    };
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        for (std::size_t k = 0; k < m_columns[i].size(); ++k) {
            const auto c = static_cast<std::ptrdiff_t>(i);
            const auto g = [&](std::ptrdiff_t j) {
                return m_columns[static_cast<std::size_t>(j)][k].state.jacobi;
            };
            double& along = m_columns[i][k].along;
            if (has(c - 1, k) && has(c + 1, k)) {
                along = (g(c + 1) - g(c - 1)) / (2 * spacing);
                if (has(c - 2, k) && has(c + 2, k))
                    along = (4 * along - (g(c + 2) - g(c - 2)) / (4 * spacing)) / 3;
            } else if (has(c + 1, k) || has(c - 1, k)) {
                const std::ptrdiff_t d = has(c + 1, k) ? 1 : -1;
                along = static_cast<double>(d) * (g(c + d) - g(c)) / spacing;
            }
        }
}

bool StartChart::reaches(std::size_t column, double w) const {
    return w >= 0 && w <= m_step * (static_cast<double>(m_columns[column].size()) - 1);
}

bool StartChart::inside(std::size_t column, double w) const {
    const auto& nodes = m_columns[column];
    if (nodes.empty() || w < 0)
        return false;
    const auto k = static_cast<std::size_t>(w / m_step);
    return (k < nodes.size() && nodes[k].inside) || (k + 1 < nodes.size() && nodes[k + 1].inside);
}

bool StartChart::meetsHull(std::size_t column, double w) const {
    const auto& nodes = m_columns[column];
    const auto from = std::min(static_cast<std::size_t>(std::max(w, 0.0) / m_step), nodes.size());
    return std::any_of(nodes.begin() + static_cast<std::ptrdiff_t>(from), nodes.end(), [](const Node& n) {
        return n.inside;
    });
}

Eigen::Vector2d StartChart::uv(std::size_t column, double w) const {
    const auto& nodes = m_columns[column];
    const auto k = std::min(static_cast<std::size_t>(w / m_step), nodes.size() - 1);
    if (k + 1 >= nodes.size())
        return nodes[k].state.uv;
    return geometry::betweenAlong(
        nodes[k].state, nodes[k + 1].state, m_step, w / m_step - static_cast<double>(k));
}

StartChart::Metric StartChart::metric(std::size_t column, double w) const {
    const auto& nodes = m_columns[column];
    const double at = std::clamp(w / m_step, 0.0, static_cast<double>(nodes.size() - 1));
    const auto k = std::min(static_cast<std::size_t>(at), nodes.size() > 1 ? nodes.size() - 2 : 0);
    if (nodes.size() < 2)
        return {nodes[0].state.jacobi, nodes[0].state.jacobiRate, nodes[0].along};
    const Node& a = nodes[k];
    const Node& b = nodes[k + 1];
    const double f = at - static_cast<double>(k);
    const double f2 = f * f;
    const double f3 = f2 * f;
    const double ja = a.state.jacobi;
    const double jb = b.state.jacobi;
    const double ra = a.state.jacobiRate * m_step;
    const double rb = b.state.jacobiRate * m_step;
    return {(2 * f3 - 3 * f2 + 1) * ja + (f3 - 2 * f2 + f) * ra + (3 * f2 - 2 * f3) * jb + (f3 - f2) * rb,
            ((6 * f2 - 6 * f) * (ja - jb) + (3 * f2 - 4 * f + 1) * ra + (3 * f2 - 2 * f) * rb) / m_step,
            (1 - f) * a.along + f * b.along};
}

double StartChart::stretch(std::size_t column, double w) const {
    return metric(column, w).g;
}

double StartChart::edgeBend(std::size_t column, const GraphPoint& edge) const {
    return edgeBend(metric(column, edge.w), edge);
}

double StartChart::edgeBendBetween(double column, const GraphPoint& edge) const {
    const double whole = std::clamp(std::floor(column), 0.0, static_cast<double>(m_columns.size()) - 2);
    const auto a = static_cast<std::size_t>(whole);
    const double f = column - whole;
    // four neighbours where they reach as far, else the two
    const bool wide = a > 0 && a + 2 < m_columns.size() && reaches(a - 1, edge.w) && reaches(a + 2, edge.w);
    const Metric m1 = metric(a, edge.w);
    const Metric m2 = metric(a + 1, edge.w);
    const Metric m0 = wide ? metric(a - 1, edge.w) : m1;
    const Metric m3 = wide ? metric(a + 2, edge.w) : m2;
    const auto at = [&](double Metric::*of) {
        if (!wide)
            return (1 - f) * (m1.*of) + f * (m2.*of);
        return -f * (f - 1) * (f - 2) / 6 * (m0.*of) + (f + 1) * (f - 1) * (f - 2) / 2 * (m1.*of) -
               (f + 1) * f * (f - 2) / 2 * (m2.*of) + (f + 1) * f * (f - 1) / 6 * (m3.*of);
    };
    return edgeBend({at(&Metric::g), at(&Metric::gw), at(&Metric::gs)}, edge);
}

double StartChart::edgeBend(const Metric& m, const GraphPoint& e) {
    const double slope = e.first * e.first;
    return m.g * (e.second - m.g * m.gw - (2 * m.gw * slope + m.gs * e.first) / m.g) /
           std::pow(m.g * m.g + slope, 1.5);
}

} // namespace sheerlay::core
