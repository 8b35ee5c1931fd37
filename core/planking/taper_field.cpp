#include "core/planking/taper_field.hpp"

#include "core/planking/start_chart.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/planking/taper_program.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double margin = 0.975;    // solved a little inside the limit: between nodes the edge bends on
constexpr double letPass = 1.02;    // an edge this close to the limit has met it
constexpr double letGo = 1.005;     // leaving strips whole may cost this much
constexpr double whole = 0.05;      // mm: what is narrowed less everywhere is left full
constexpr double coarseKnots = 250; // mm
constexpr double fineKnots = 125;   // mm, for low limits and short boats
constexpr double lowLimit = 0.125e-3;
constexpr double shortBoat = 3200;  // mm of start line inside the hull
constexpr double busyPart = 0.45;   // of the limit: edges bent less than this are not constrained
constexpr double touchedFrom = 0.3; // mm
constexpr double perMetre = 1e3;    // the program reckons edge bend in 1/m
constexpr double fewStrips = 0.003; // m2 of wood that a touched strip is worth, closing.md section 1

/// Cubic B-spline on uniform knots at one place: four weights for value and two derivatives.
struct Basis {
    std::size_t first = 0;
    std::array<double, 4> value{}, slope{}, bend{};
};

Basis basisAt(double s, double knot, std::size_t spans) {
    const double t = std::clamp(s / knot, 0.0, static_cast<double>(spans));
    Basis b;
    b.first = std::min(static_cast<std::size_t>(t), spans - 1);
    const double f = t - static_cast<double>(b.first);
    const double g = 1 - f;
    b.value = {g * g * g / 6,
               (3 * f * f * f - 6 * f * f + 4) / 6,
               (-3 * f * f * f + 3 * f * f + 3 * f + 1) / 6,
               f * f * f / 6};
    b.slope = {-g * g / 2, (3 * f * f - 4 * f) / 2, (-3 * f * f + 2 * f + 1) / 2, f * f / 2};
    b.bend = {g, 3 * f - 2, 1 - 3 * f, f};
    for (std::size_t j = 0; j < 4; ++j) {
        b.slope[j] /= knot;
        b.bend[j] /= knot * knot;
    }
    return b;
}

class Field {
public:
    /// @param bands  rows, from 0 and ascending, that two strips share
    Field(const StartChart& chart, const TaperWish& wish, const std::vector<std::size_t>& bands)
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
        const double knot = wish.limit < lowLimit || length < shortBoat ? fineKnots : coarseKnots;
        m_spans = std::max<std::size_t>(4, static_cast<std::size_t>(std::ceil(length / knot)));
        m_knot = length / static_cast<double>(m_spans);
        m_coefficients = m_spans + 3;
        for (std::size_t i = m_first; i <= m_last; ++i)
            m_basis.push_back(basisAt(static_cast<double>(i - m_first) * chart.spacing(), m_knot, m_spans));
        m_c.assign(m_edges * m_coefficients, 0.0);
        double w = 0;
        for (std::size_t e = 0; e < m_edges; ++e) {
            w += full(e + 1);
            for (std::size_t k = 0; k < m_coefficients; ++k)
                m_c[e * m_coefficients + k] = w;
        }
        m_single.assign(m_edges * m_coefficients, 0);
    }

    [[nodiscard]] bool empty() const { return m_basis.empty(); }
    [[nodiscard]] std::size_t edges() const { return m_edges; }
    /// The row above edge e is a band of two strips.
    [[nodiscard]] bool isBand(std::size_t e) const { return m_strips[e - 1] > 1; }
    /// Greatest width of the row above edge e, mm.
    [[nodiscard]] double full(std::size_t e) const { return m_strips[e - 1] * m_wish.coverWidth; }

    /// Edge e (1 to edges(); 0 is the start) at a column counted from the first.
    [[nodiscard]] GraphPoint edge(std::size_t e, std::size_t column) const {
        GraphPoint p;
        if (e == 0)
            return p;
        const Basis& b = m_basis[column];
        for (std::size_t j = 0; j < 4; ++j) {
            const double c = m_c[(e - 1) * m_coefficients + b.first + j];
            p.w += b.value[j] * c;
            p.first += b.slope[j] * c;
            p.second += b.bend[j] * c;
        }
        return p;
    }
    [[nodiscard]] bool reaches(std::size_t column, double w) const {
        return m_chart->reaches(m_first + column, w);
    }
    [[nodiscard]] bool inside(std::size_t column, double w) const {
        return m_chart->inside(m_first + column, w);
    }
    [[nodiscard]] double bend(std::size_t column, const GraphPoint& p) const {
        return m_chart->edgeBend(m_first + column, p);
    }
    /// Chart width over square width along an edge.
    [[nodiscard]] double slant(std::size_t e, std::size_t column) const {
        const GraphPoint p = edge(e, column);
        if (!reaches(column, p.w))
            return 1.0;
        const double g = m_chart->stretch(m_first + column, p.w);
        return std::sqrt(1 + p.first * p.first / (g * g));
    }
    /// Places of edge e that count: inside the hull and one place past each end of that.
    [[nodiscard]] bool counts(std::size_t e, std::size_t column) const {
        const auto in = [&](std::size_t i) {
            const double w = edge(e, i).w;
            return reaches(i, w) && inside(i, w);
        };
        return reaches(column, edge(e, column).w) && (in(column) || (column > 0 && in(column - 1)) ||
                                                      (column + 1 < m_basis.size() && in(column + 1)));
    }

    /// The strip above edge e lies inside the hull at this column.
    [[nodiscard]] bool stripInside(std::size_t e, std::size_t column) const {
        const double near = edge(e - 1, column).w;
        const double far = edge(e, column).w;
        return reaches(column, near) && reaches(column, far) && inside(column, near) && inside(column, far);
    }

    /// Linear program about the present edges.
    [[nodiscard]] TaperProgram
    program(double move, const std::vector<double>& price, const std::vector<char>& mustBeFull) const {
        TaperProgram p;
        p.edges = m_edges;
        p.coefficients = m_coefficients;
        const std::size_t n = m_edges * m_coefficients;
        p.narrowest.assign(n, 0);
        p.full.assign(n, 0);
        p.wood.assign(n, 0);
        p.inHull.assign(n, 0);
        p.price = price;
        p.mustBeFull = mustBeFull;
        p.limit = m_wish.limit * margin * perMetre;
        p.lower.resize(n);
        p.upper.resize(n);
        for (std::size_t e = 1; e <= m_edges; ++e) {
            for (std::size_t k = 0; k < m_coefficients; ++k) {
                const std::size_t at = p.at(e - 1, k);
                const double factor = slant(e - 1, columnOf(k));
                p.narrowest[at] = m_wish.narrowest * factor;
                p.full[at] = (m_single[at] ? m_wish.coverWidth : full(e)) * factor;
                p.lower[at] = m_c[at] - move;
                p.upper[at] = m_c[at] + move;
            }
            for (std::size_t i = 0; i < m_basis.size(); ++i) {
                const double near = edge(e - 1, i).w;
                if (!reaches(i, near) || !(inside(i, near) || counts(e, i)))
                    continue;
                const double g = m_chart->stretch(m_first + i, near);
                for (std::size_t j = 0; j < 4; ++j) {
                    const std::size_t at = p.at(e - 1, m_basis[i].first + j);
                    p.wood[at] += m_basis[i].value[j] * g * m_chart->spacing() * 1e-6;
                    p.inHull[at] = 1;
                }
            }
            addBends(p, e);
        }
        if (m_wish.where == Taper::Ends)
            p.endsOnly = m_coefficients / 2;
        return p;
    }

    void take(std::vector<double> c) { m_c = std::move(c); }

    /// Forbids what stealers are shorter than is worth their joints.
    /// @return false where there were none
    bool forbidShortStealers() {
        bool any = false;
        for (std::size_t e = 1; e <= m_edges; ++e)
            for (std::size_t i = 0; isBand(e) && i < m_basis.size(); ++i) {
                const auto holds = [&](std::size_t k) {
                    return stripInside(e, k) && squareWidth(e, k) > m_wish.coverWidth;
                };
                if (!holds(i))
                    continue;
                const std::size_t first = i;
                while (i + 1 < m_basis.size() && holds(i + 1))
                    ++i;
                if (static_cast<double>(i - first) * m_chart->spacing() > shortestStealer)
                    continue;
                any = true;
                for (std::size_t k = m_basis[first].first; k < m_basis[i].first + 4; ++k)
                    m_single[(e - 1) * m_coefficients + k] = 1;
            }
        return any;
    }

    /// Largest narrowing of the strip above edge e inside the hull, mm square to its near edge; of a band
    /// none: how its strips are cut is another matter.
    [[nodiscard]] double narrowing(std::size_t e) const {
        if (isBand(e))
            return 0;
        double most = 0;
        for (std::size_t i = 0; i < m_basis.size(); ++i)
            if (stripInside(e, i))
                most = std::max(most, m_wish.coverWidth - squareWidth(e, i));
        return most;
    }
    [[nodiscard]] double squareWidth(std::size_t e, std::size_t column) const {
        return (edge(e, column).w - edge(e - 1, column).w) / slant(e - 1, column);
    }
    [[nodiscard]] double worst(std::size_t e) const {
        double most = 0;
        for (std::size_t i = 0; i < m_basis.size(); ++i) {
            const GraphPoint p = edge(e, i);
            if (reaches(i, p.w) && inside(i, p.w))
                most = std::max(most, std::abs(bend(i, p)));
        }
        return most;
    }
    /// Width of the strip above edge e along its near edge. Smooth: the far edge's bend lives on its second
    /// derivative, so nothing is clipped; what the slant makes too wide is taken off evenly.
    [[nodiscard]] RowWidth widthOf(std::size_t e) const {
        std::vector<double> u;
        std::vector<double> width;
        double tooWide = 0;
        for (std::size_t i = 0; i < m_basis.size(); ++i) {
            const double near = edge(e - 1, i).w;
            if (!reaches(i, near))
                continue;
            const double at = m_chart->uv(m_first + i, near).x();
            if (!u.empty() && at <= u.back() + 1.0)
                continue;
            u.push_back(at);
            // outside the hull the program has no say
            width.push_back(std::clamp(squareWidth(e, i), 0.8 * m_wish.narrowest, 1.2 * full(e)));
            if (stripInside(e, i))
                tooWide = std::max(tooWide, width.back() - full(e));
        }
        for (double& w : width)
            w -= tooWide;
        return u.size() < 2 ? RowWidth() : RowWidth(std::move(u), std::move(width));
    }
    [[nodiscard]] double wood() const {
        double sum = 0;
        for (std::size_t e = 1; e <= m_edges; ++e)
            for (std::size_t i = 0; i < m_basis.size(); ++i) {
                const double near = edge(e - 1, i).w;
                if (!reaches(i, near) || !inside(i, near))
                    continue;
                const double w = squareWidth(e, i);
                const bool one = w <= m_wish.coverWidth; // beyond its stealer a band is one strip
                sum += std::max(0.0, (one ? m_wish.coverWidth : full(e)) - w) *
                       m_chart->stretch(m_first + i, near) * m_chart->spacing();
            }
        return sum;
    }

private:
    /// Column nearest the middle of a coefficient's reach.
    [[nodiscard]] std::size_t columnOf(std::size_t k) const {
        const double s = (static_cast<double>(k) - 1) * m_knot / m_chart->spacing();
        return static_cast<std::size_t>(
            std::clamp(std::round(s), 0.0, static_cast<double>(m_basis.size() - 1)));
    }

    void addBends(TaperProgram& program, std::size_t e) const {
        for (std::size_t i = 0; i < m_basis.size(); ++i) {
            if (!counts(e, i))
                continue;
            const GraphPoint p = edge(e, i);
            const double here = bend(i, p);
            if (std::abs(here) < busyPart * m_wish.limit)
                continue;
            constexpr double dw = 1e-2;
            constexpr double dFirst = 1e-5;
            constexpr double dSecond = 1e-8;
            const double byW = (bend(i, {p.w + dw, p.first, p.second}) - here) / dw;
            const double byFirst = (bend(i, {p.w, p.first + dFirst, p.second}) - here) / dFirst;
            const double bySecond = (bend(i, {p.w, p.first, p.second + dSecond}) - here) / dSecond;
            const Basis& b = m_basis[i];
            TaperProgram::Bend row;
            row.edge = e - 1;
            row.first = b.first;
            row.constant = perMetre * (here - byW * p.w - byFirst * p.first - bySecond * p.second);
            for (std::size_t j = 0; j < 4; ++j)
                row.a[j] = perMetre * (byW * b.value[j] + byFirst * b.slope[j] + bySecond * b.bend[j]);
            program.bends.push_back(row);
        }
    }

    const StartChart* m_chart;
    TaperWish m_wish;
    std::size_t m_edges = 0, m_coefficients = 0, m_spans = 0;
    std::size_t m_first = 0, m_last = 0; // columns used
    double m_knot = coarseKnots;
    std::vector<Basis> m_basis;
    std::vector<double> m_c;
    std::vector<int> m_strips;  // per row: 2 in a band
    std::vector<char> m_single; // per coefficient: one strip at most, in a band too
};

FieldScore scoreOf(const Field& field, double limit) {
    FieldScore score;
    for (std::size_t e = 1; e <= field.edges(); ++e) {
        const double worst = field.worst(e);
        score.edgesOver += worst > limit * letPass;
        score.slack += std::max(0.0, worst - limit);
        score.touched += field.narrowing(e) > touchedFrom;
    }
    return score;
}

/// What bands at these rows would reach, roughly: the shape of the edges alone.
std::optional<FieldScore>
tryBands(const StartChart& chart, const TaperWish& wish, const std::vector<std::size_t>& bands) {
    Field field(chart, wish, bands);
    const std::vector<double> price(field.edges(), 0.0);
    const std::vector<char> mustBeFull(field.edges(), 0);
    for (const double move : {1e4, 25.0}) {
        auto c = field.program(move, price, mustBeFull).solve();
        if (!c)
            return std::nullopt;
        field.take(std::move(*c));
        field.forbidShortStealers();
    }
    return scoreOf(field, wish.limit);
}

/// The whole field with bands at the given rows.
Expected<TaperedField, std::string> solveField(const StartChart& chart,
                                               const TaperWish& wish,
                                               const std::vector<std::size_t>& bands,
                                               const std::stop_token& stop) {
    Field field(chart, wish, bands);
    TaperedField result;
    if (field.empty())
        return result; // no row lies on this side
    for (std::size_t e = 1; e <= field.edges(); ++e)
        result.plainWorst = std::max(result.plainWorst, field.worst(e));
    if (result.plainWorst <= wish.limit) {
        result.worst = result.plainWorst;
        return result;
    }
    std::vector<double> price(field.edges(), 0.0);
    std::vector<char> mustBeFull(field.edges(), 0);
    const auto solve = [&](double move) {
        if (stop.stop_requested())
            return false;
        // where slants have changed since, bounds close about the present edges can leave no room: widen them
        for (const double room : {1.0, 4.0, 1000.0})
            if (auto c = field.program(room * move, price, mustBeFull).solve()) {
                field.take(std::move(*c));
                return true;
            }
        return false;
    };
    const auto reprice = [&] {
        for (std::size_t e = 1; e <= field.edges(); ++e)
            price[e - 1] =
                field.isBand(e) ? 0.0 : fewStrips / (std::max(0.0, field.narrowing(e)) + touchedFrom);
    };
    // three linearisations for the shape, four more that gather the wood in few strips, one that leaves the
    // rest whole
    for (const double move : {1e4, 25.0, 12.0})
        if (!solve(move))
            return unexpected(std::string("the tapers could not be solved for"));
    for (const double move : {25.0, 25.0, 12.0, 6.0}) {
        reprice();
        field.forbidShortStealers();
        if (!solve(move))
            return unexpected(std::string("the tapers could not be solved for"));
    }
    const auto worst = [&] {
        double most = 0;
        for (std::size_t e = 1; e <= field.edges(); ++e)
            most = std::max(most, field.worst(e));
        return most;
    };
    const auto leaveFull = [&](double below) {
        for (std::size_t e = 1; e <= field.edges(); ++e)
            mustBeFull[e - 1] = !field.isBand(e) && field.narrowing(e) < below;
    };
    reprice();
    const Field gathered = field;
    const double reached = worst();
    leaveFull(touchedFrom);
    const bool left = solve(12.0) && solve(6.0);
    if (!left || worst() > std::max(wish.limit, reached) * letGo) { // even a shaving was needed
        field = gathered;
        leaveFull(whole);
    }

    result.wood = field.wood();
    for (std::size_t e = 1; e <= field.edges(); ++e) {
        if (field.isBand(e))
            result.bands.push_back({e - 1, field.widthOf(e)});
        const bool cut = !mustBeFull[e - 1] && !field.isBand(e);
        result.rows.push_back(cut ? field.widthOf(e) : RowWidth());
        result.touched += cut ? 1 : 0;
        const double here = field.worst(e);
        result.worst = std::max(result.worst, here);
        if (here > wish.limit * letPass)
            result.metFrom = static_cast<int>(e) + 1;
    }
    result.score = scoreOf(field, wish.limit);
    return result;
}

} // namespace

Expected<TaperedField, std::string> taperField(const TrimmedSurface& hull,
                                               const std::vector<geometry::MasterNode>& master,
                                               const TaperWish& wish,
                                               std::stop_token stop) {
    const StartChart chart(hull, master, taperSpacing, wish.side, wish.coverWidth / 2);
    auto plain = solveField(chart, wish, {}, stop);
    if (!plain || !wish.stealers || plain->score.edgesOver == 0)
        return plain;
    const auto score = [&](const std::vector<std::size_t>& bands) -> std::optional<FieldScore> {
        if (stop.stop_requested())
            return std::nullopt;
        return tryBands(chart, wish, bands);
    };
    TaperWish atWill = wish;
    atWill.narrowest /= 2; // as a band in every row would have it
    const auto forced = tryBands(chart, atWill, {});
    if (!forced)
        return plain;
    const std::vector<std::size_t> bands = chooseBands(plain->score, *forced, plain->rows.size(), score);
    if (bands.empty())
        return plain;
    auto banded = solveField(chart, wish, bands, stop);
    return banded && banded->score < plain->score ? banded : plain;
}

} // namespace sheerlay::core
