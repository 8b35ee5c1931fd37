#include "core/planking/taper_edges.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr double coarseKnots = 200; // mm
constexpr double fineKnots = 150;   // mm, for low limits and short boats
constexpr double lowLimit = 0.125e-3;
constexpr double shortBoat = 3200; // mm of start line inside the hull
constexpr std::size_t mostEdges = 600;

/// Lets widths run on past the chart's ends at their last slope, which then dies away: a width that went
/// level at once would put a kink into the far edge, and its parallels carry the kink into the hull further
/// down.
void runOn(std::vector<double>& u, std::vector<double>& width) {
    constexpr double reach = 400, step = 25, straight = 150; // mm
    const auto beyond = [&](std::size_t end, std::size_t inner, double along) {
        const double slope = (width[end] - width[inner]) / (u[end] - u[inner]) * std::copysign(1.0, along);
        const double d = std::abs(along);
        const double run =
            std::min(d, straight) + straight * (1 - std::exp(-std::max(d - straight, 0.0) / straight));
        return std::max(width[end] + slope * run, width[end] / 4);
    };
    const std::size_t n = u.size();
    std::vector<double> atBow, atStern;
    for (double d = reach; d > 0; d -= step)
        atBow.push_back(beyond(0, 1, -d));
    for (double d = step; d <= reach; d += step)
        atStern.push_back(beyond(n - 1, n - 2, d));
    const double first = u.front(), last = u.back();
    width.insert(width.begin(), atBow.begin(), atBow.end());
    width.insert(width.end(), atStern.begin(), atStern.end());
    std::vector<double> places;
    for (double d = reach; d > 0; d -= step)
        places.push_back(first - d);
    u.insert(u.begin(), places.begin(), places.end());
    for (double d = step; d <= reach; d += step)
        u.push_back(last + d);
}

} // namespace

TaperEdges::TaperEdges(const StartChart& chart, const TaperWish& wish, const std::vector<std::size_t>& bands)
    : m_chart(&chart), m_wish(wish) {
    m_edges = static_cast<std::size_t>(std::ceil(chart.depth() / wish.coverWidth)) + 2 - bands.size();
    m_strips.assign(m_edges, 1);
    for (const std::size_t b : bands)
        m_strips.at(b) = 2;
    m_first = chart.columns();
    for (std::size_t i = 0; i < chart.columns(); ++i)
        for (double w = 0; w <= chart.depth(); w += wish.coverWidth / 2)
            if (chart.inside(i, w)) {
                m_first = std::min(m_first, i);
                m_last = i;
                break;
            }
    if (m_first >= m_last)
        return;
    m_first = m_first > 2 ? m_first - 2 : 0;
    m_last = std::min(m_last + 2, chart.columns() - 1);
    const double length = static_cast<double>(m_last - m_first) * chart.spacing();
    // knots stand on columns, where the limit is asked: an edge bends most sharply at them
    const double knot = wish.limit < lowLimit || length < shortBoat ? fineKnots : coarseKnots;
    const auto knotColumns = static_cast<std::size_t>(std::max(1.0, std::round(knot / chart.spacing())));
    const std::size_t parts = m_last - m_first;
    m_knot = static_cast<double>(knotColumns) * chart.spacing();
    m_spans = std::max<std::size_t>(4, (parts + knotColumns - 1) / knotColumns);
    m_coefficients = m_spans + 3;
    m_ahead = static_cast<double>((m_spans * knotColumns - parts) / 2) * chart.spacing();
    for (std::size_t i = 0; i <= parts; ++i)
        m_weights.push_back(weightsAt(static_cast<double>(i)));
    Eigen::MatrixXd normal = // a hair of every coefficient's own, for those that few columns see
        1e-6 * Eigen::MatrixXd::Identity(static_cast<Eigen::Index>(m_coefficients),
                                         static_cast<Eigen::Index>(m_coefficients));
    for (const SplineWeights& b : m_weights)
        for (std::size_t j = 0; j < 4; ++j)
            for (std::size_t k = 0; k < 4; ++k)
                normal(static_cast<Eigen::Index>(b.first + j), static_cast<Eigen::Index>(b.first + k)) +=
                    b.value[j] * b.value[k];
    m_project.compute(normal);
    double w = 0;
    for (std::size_t e = 1; e <= m_edges; ++e) {
        w += full(e);
        m_c.insert(m_c.end(), m_coefficients, w);
    }
    m_single.assign(m_c.size(), 0);
}

void TaperEdges::takeWithoutSeams(const TaperEdges& plain) {
    std::vector<std::size_t> seams;
    std::vector<double> c;
    std::size_t from = 0; // edge of the plain field, from 0
    for (std::size_t e = 0; e < m_edges && from < plain.m_edges; ++e) {
        if (m_strips[e] > 1 && from + 1 < plain.m_edges)
            seams.push_back(from++);
        const auto at = plain.m_c.begin() + static_cast<std::ptrdiff_t>(from * m_coefficients);
        c.insert(c.end(), at, at + static_cast<std::ptrdiff_t>(m_coefficients));
        ++from;
    }
    m_c = std::move(c);
    m_edges = m_c.size() / m_coefficients;
    m_strips.resize(m_edges, 1);
    m_single.assign(m_c.size(), 0);
    coverHull();
    m_basis = withoutEdges(plain.m_basis, seams);
}

void TaperEdges::coverHull() {
    const auto lastOnHull = [&] {
        for (std::size_t i = 0; i < m_weights.size(); ++i)
            if (onHull(m_edges, i))
                return true;
        return false;
    };
    while (m_edges < mostEdges && lastOnHull()) {
        for (std::size_t k = 0; k < m_coefficients; ++k)
            m_c.push_back(m_c[m_c.size() - m_coefficients] + m_wish.coverWidth);
        m_strips.push_back(1);
        m_single.insert(m_single.end(), m_coefficients, 0);
        ++m_edges;
    }
}

SplineWeights TaperEdges::weightsAt(double column) const {
    const double s = column * m_chart->spacing() + m_ahead;
    const double t = std::clamp(s / m_knot, 0.0, static_cast<double>(m_spans));
    SplineWeights b;
    b.first = std::min(static_cast<std::size_t>(t), m_spans - 1);
    const double f = t - static_cast<double>(b.first);
    const double g = 1 - f;
    b.value = {g * g * g / 6,
               (3 * f * f * f - 6 * f * f + 4) / 6,
               (-3 * f * f * f + 3 * f * f + 3 * f + 1) / 6,
               f * f * f / 6};
    b.slope = {-g * g / 2, (3 * f * f - 4 * f) / 2, (-3 * f * f + 2 * f + 1) / 2, f * f / 2};
    b.bend = {g, 3 * f - 2, 1 - 3 * f, f};
    for (std::size_t j = 0; j < 4; ++j) {
        b.slope[j] /= m_knot;
        b.bend[j] /= m_knot * m_knot;
    }
    return b;
}

GraphPoint TaperEdges::edge(std::size_t e, const SplineWeights& at) const {
    GraphPoint p;
    if (e == 0)
        return p;
    for (std::size_t j = 0; j < 4; ++j) {
        const double c = m_c[(e - 1) * m_coefficients + at.first + j];
        p.w += at.value[j] * c;
        p.first += at.slope[j] * c;
        p.second += at.bend[j] * c;
    }
    return p;
}

bool TaperEdges::onHull(std::size_t e, std::size_t column) const {
    const double w = edge(e, column).w;
    return reaches(column, w) && inside(column, w);
}

/// Places of an edge that the limit is asked at: on the hull, and one past each end of that.
bool TaperEdges::counts(std::size_t e, std::size_t column) const {
    return reaches(column, edge(e, column).w) &&
           (onHull(e, column) || (column > 0 && onHull(e, column - 1)) ||
            (column + 1 < m_weights.size() && onHull(e, column + 1)));
}

/// The strip above edge e lies inside the hull at this column.
bool TaperEdges::stripInside(std::size_t e, std::size_t column) const {
    return onHull(e - 1, column) && onHull(e, column);
}

/// Chart width over square width along an edge.
double TaperEdges::slant(std::size_t e, std::size_t column) const {
    const GraphPoint p = edge(e, column);
    if (!reaches(column, p.w))
        return 1.0;
    const double g = m_chart->stretch(m_first + column, p.w);
    return std::sqrt(1 + p.first * p.first / (g * g));
}

double TaperEdges::squareWidth(std::size_t e, std::size_t column) const {
    return (edge(e, column).w - edge(e - 1, column).w) / slant(e - 1, column);
}

/// Chart width over square width along an edge as coefficients of the edges' own spline: widths are bounded
/// coefficient by coefficient, and what a full strip then lacks or has too much adds up over many rows.
Eigen::VectorXd TaperEdges::slantCoefficients(std::size_t e) const {
    const std::size_t n = m_weights.size();
    std::vector<double> at(n, 0.0); // 0: the chart does not reach; a slant is at least 1
    for (std::size_t i = 0; i < n; ++i)
        if (reaches(i, edge(e, i).w))
            at[i] = slant(e, i);
    for (std::size_t i = 1; i < n; ++i) // beyond the chart as at its end
        if (at[i] == 0.0)
            at[i] = at[i - 1];
    for (std::size_t i = n - 1; i-- > 0;)
        if (at[i] == 0.0)
            at[i] = at[i + 1];
    Eigen::VectorXd right = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(m_coefficients));
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < 4; ++j)
            right[static_cast<Eigen::Index>(m_weights[i].first + j)] +=
                m_weights[i].value[j] * (std::max(at[i], 1.0) - 1.0);
    return m_project.solve(right).array() + 1.0;
}

/// Along the normal of the near edge to where it meets the far one, which slants differently.
double TaperEdges::trueWidth(std::size_t e, std::size_t column) const {
    const GraphPoint near = edge(e - 1, column);
    const double first = squareWidth(e, column);
    if (!reaches(column, near.w))
        return first;
    const double g = m_chart->stretch(m_first + column, near.w);
    const double norm = std::sqrt(g * g + near.first * near.first);
    const double last = static_cast<double>(m_weights.size() - 1);
    double width = first;
    for (int i = 0; i < 4; ++i) { // each time nearer by the edges' slope
        const double foot =
            static_cast<double>(column) - width * near.first / (g * norm) / m_chart->spacing();
        if (foot < 0 || foot > last)
            return first;
        width = (edge(e, weightsAt(foot)).w - near.w) * norm / g;
    }
    return width;
}

void TaperEdges::forbidShortStealers(double shortest) {
    for (std::size_t e = 1; e <= m_edges; ++e) {
        if (!isBand(e))
            continue;
        const auto twoStrips = [&](std::size_t k) {
            return stripInside(e, k) && squareWidth(e, k) > m_wish.coverWidth;
        };
        // past the hull's ends too, or a band would grow wide in its last few mm inside; coefficients within
        // a knot of a stealer shape its ends, and beyond one that reaches the hull's end all are free
        std::size_t hullFirst = m_weights.size();
        std::size_t hullLast = 0;
        for (std::size_t i = 0; i < m_weights.size(); ++i)
            if (stripInside(e, i)) {
                hullFirst = std::min(hullFirst, i);
                hullLast = i;
            }
        std::vector<char> single(m_coefficients, 1);
        for (std::size_t i = 0; i < m_weights.size(); ++i) {
            if (!twoStrips(i))
                continue;
            const std::size_t first = i;
            while (i + 1 < m_weights.size() && twoStrips(i + 1))
                ++i;
            if (static_cast<double>(i - first) * m_chart->spacing() <= shortest)
                continue;
            const std::size_t from = first == hullFirst ? 0 : m_weights[first].first + 1;
            const std::size_t to = i == hullLast ? m_coefficients : m_weights[i].first + 3;
            std::fill(single.begin() + static_cast<std::ptrdiff_t>(from),
                      single.begin() + static_cast<std::ptrdiff_t>(to),
                      char{0});
        }
        for (std::size_t k = 0; k < m_coefficients; ++k)
            m_single[(e - 1) * m_coefficients + k] |= single[k];
    }
}

double TaperEdges::narrowing(std::size_t e) const {
    if (isBand(e))
        return 0;
    double most = 0;
    for (std::size_t i = 0; i < m_weights.size(); ++i)
        if (stripInside(e, i) ||
            (reaches(i, edge(e, i).w) && m_chart->meetsHull(m_first + i, edge(e - 1, i).w)))
            most = std::max(most, m_wish.coverWidth - squareWidth(e, i));
    return most;
}

double TaperEdges::worst(std::size_t e) const {
    constexpr double step = 10; // mm
    const int parts = static_cast<int>(std::ceil(m_chart->spacing() / step));
    double most = 0;
    for (std::size_t i = 0; i < m_weights.size(); ++i) {
        if (!onHull(e, i))
            continue;
        most = std::max(most, std::abs(m_chart->edgeBend(m_first + i, edge(e, i))));
        if (i + 1 == m_weights.size() || !onHull(e, i + 1))
            continue;
        for (int k = 1; k < parts; ++k) {
            const double column = static_cast<double>(i) + static_cast<double>(k) / parts;
            const GraphPoint p = edge(e, weightsAt(column));
            most =
                std::max(most, std::abs(m_chart->edgeBendBetween(static_cast<double>(m_first) + column, p)));
        }
    }
    return most;
}

/// Smooth: the far edge's bend lives on its second derivative, so nothing is clipped; what slants and the
/// splines' coefficients leave outside the bounds is brought in by an even squeeze.
RowWidth TaperEdges::widthOf(std::size_t e) const {
    std::vector<double> u;
    std::vector<double> width;
    double least = full(e);
    double most = m_wish.narrowest;
    for (std::size_t i = 0; i < m_weights.size(); ++i) {
        const double near = edge(e - 1, i).w;
        if (!reaches(i, near))
            continue;
        const double at = m_chart->uv(m_first + i, near).x();
        if (!u.empty() && at <= u.back() + 1.0)
            continue;
        u.push_back(at);
        // outside the hull the program has no say
        width.push_back(std::clamp(trueWidth(e, i), 0.8 * m_wish.narrowest, 1.2 * full(e)));
        if (inside(i, near)) {
            least = std::min(least, width.back());
            most = std::max(most, width.back());
        }
    }
    if (u.size() < 2 || least >= most)
        return {};
    const double from = std::max(least, m_wish.narrowest);
    const double squeeze = (std::min(most, full(e)) - from) / (most - least);
    for (double& w : width)
        w = from + squeeze * (w - least);
    runOn(u, width);
    return {std::move(u), std::move(width)};
}

double TaperEdges::wood() const {
    double sum = 0;
    for (std::size_t e = 1; e <= m_edges; ++e)
        for (std::size_t i = 0; i < m_weights.size(); ++i) {
            if (!onHull(e - 1, i))
                continue;
            const double w = squareWidth(e, i);
            const bool one = w <= m_wish.coverWidth; // beyond its stealer a band is one strip
            sum += std::max(0.0, (one ? m_wish.coverWidth : full(e)) - w) *
                   m_chart->stretch(m_first + i, edge(e - 1, i).w) * m_chart->spacing();
        }
    return sum;
}

} // namespace sheerlay::core
