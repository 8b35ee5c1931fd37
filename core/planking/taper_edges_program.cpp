#include "core/planking/taper_edges.hpp"

#include <cmath>
#include <cstddef>

// The linear program about the present edges.

namespace sheerlay::core {
namespace {

constexpr double margin = 0.975;   // solved a little inside the limit: between nodes the edge bends on
constexpr double unseenFactor = 2; // times the limit that edges may bend before they come into the hull
constexpr double perMetre = 1e3;   // the program reckons edge bend in 1/m

} // namespace

TaperProgram TaperEdges::program(double move) const {
    TaperProgram p;
    p.edges = m_edges;
    p.coefficients = m_coefficients;
    const std::size_t n = m_edges * m_coefficients;
    p.slant.assign(n, 1);
    p.narrowest.assign(n, 0);
    p.full.assign(n, 0);
    p.wood.assign(n, 0);
    p.inHull.assign(n, 0);
    p.limit = m_wish.limit * margin * perMetre;
    p.lower.resize(n);
    p.upper.resize(n);
    for (std::size_t e = 1; e <= m_edges; ++e) {
        const Eigen::VectorXd slants = slantCoefficients(e - 1);
        for (std::size_t k = 0; k < m_coefficients; ++k) {
            const std::size_t at = p.at(e - 1, k);
            const double factor = slants[static_cast<Eigen::Index>(k)];
            p.slant[at] = factor;
            p.narrowest[at] = m_wish.narrowest * factor;
            p.full[at] = (m_single[at] ? m_wish.coverWidth : full(e)) * factor;
            p.lower[at] = m_c[at] - move;
            p.upper[at] = m_c[at] + move;
        }
        for (std::size_t i = 0; i < m_weights.size(); ++i) {
            const double near = edge(e - 1, i).w;
            if (!reaches(i, near) || !(m_chart->meetsHull(m_first + i, near) || counts(e, i)))
                continue;
            const bool here = inside(i, near) || counts(e, i);
            const double g = m_chart->stretch(m_first + i, near);
            for (std::size_t j = 0; j < 4; ++j) {
                const std::size_t at = p.at(e - 1, m_weights[i].first + j);
                if (here)
                    p.wood[at] += m_weights[i].value[j] * g * m_chart->spacing() * 1e-6;
                // a strip left full is laid full where its column is yet to come into the hull, too
                p.inHull[at] = !isBand(e); // a band is neither touched nor left full
            }
        }
        addBends(p, e);
    }
    if (m_wish.where == Taper::Ends)
        p.endsOnly = m_coefficients / 2;
    return p;
}

void TaperEdges::addBends(TaperProgram& program, std::size_t e) const {
    for (std::size_t i = 0; i < m_weights.size(); ++i) {
        const GraphPoint p = edge(e, i);
        if (!reaches(i, p.w))
            continue;
        // Before its column comes into the hull nobody sees the edge, but its slant goes on into rows below.
        const bool unseen = !counts(e, i);
        if (unseen && !m_chart->meetsHull(m_first + i, p.w))
            continue;
        const auto bend = [&](const GraphPoint& at) { return m_chart->edgeBend(m_first + i, at); };
        const double here = bend(p);
        if (unseen && std::abs(here) > unseenFactor * m_wish.limit)
            continue; // the start line's own
        const double scale = unseen ? perMetre / unseenFactor : perMetre;
        constexpr double dw = 1e-2;
        constexpr double dFirst = 1e-5;
        constexpr double dSecond = 1e-8;
        const double byW = (bend({p.w + dw, p.first, p.second}) - here) / dw;
        const double byFirst = (bend({p.w, p.first + dFirst, p.second}) - here) / dFirst;
        const double bySecond = (bend({p.w, p.first, p.second + dSecond}) - here) / dSecond;
        const SplineWeights& b = m_weights[i];
        TaperProgram::Bend row;
        row.edge = e - 1;
        row.first = b.first;
        row.column = i;
        row.present = scale * here;
        row.constant = scale * (here - byW * p.w - byFirst * p.first - bySecond * p.second);
        for (std::size_t j = 0; j < 4; ++j)
            row.a[j] = scale * (byW * b.value[j] + byFirst * b.slope[j] + bySecond * b.bend[j]);
        program.bends.push_back(row);
    }
}

} // namespace sheerlay::core
