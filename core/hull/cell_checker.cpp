#include "core/hull/cell_checker.hpp"

#include "core/project/diagonal.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using geometry::QuinticBasis;

constexpr double fairness = 1e5; // weight of fairness for this purpose; results hardly depend on it
constexpr double stretch = 3.0;
constexpr double onCentre = 0.1;  // mm
constexpr double damping = 3.0;   // of sigma: spread along the section while the points still slide
constexpr double regular = 100.0; // of sigma: a whisper that keeps the system regular

geometry::UniformKnots knots(double a, double b, int spans) {
    return {a, (b - a) / spans, spans};
}

/// The way a cell's number moves its point in the section: along the diagonal it was measured on, up for a
/// height, else outward.
Eigen::Vector2d wayOf(const LoftPoint& p, bool height) {
    if (const auto slope = p.cell && p.cell->diagonal ? slopeOf(*p.cell->diagonal) : std::nullopt)
        return {std::cos(*slope), -std::sin(*slope)};
    return height ? Eigen::Vector2d(0, 1) : Eigen::Vector2d(1, 0);
}

/// The number as the table gives it.
double valueOf(const LoftPoint& p, bool height) {
    return p.cell && p.cell->diagonal ? p.cell->diagonal->distance : height ? p.z : p.y;
}

double robust(std::vector<double> v) {
    std::nth_element(v.begin(), v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2), v.end());
    return 1.4826 * v[v.size() / 2];
}

} // namespace

CellChecker::CellChecker(const HullTable& table, LoftData& data)
    : m_table(table), m_data(data),
      m_fit(knots(data.x0 - 150, data.x1 + 150, 20), girthKnots(data, 10), stretch),
      m_coupled(m_fit, fairness) {}

bool CellChecker::isOut(const CellRef& c) const {
    return std::find(m_out.begin(), m_out.end(), c) != m_out.end();
}

void CellChecker::startGirths() {
    for (std::size_t s = 0; s < m_table.stations.size(); ++s) {
        double girth = 0;
        const LoftPoint* before = nullptr;
        std::vector<LoftPoint*> waiting;
        for (LoftPoint& p : m_data.points) {
            if (p.station != static_cast<int>(s) || p.kind == LoftPoint::Kind::Helper)
                continue;
            const auto index = static_cast<std::size_t>(&p - m_data.points.data());
            const bool body = p.kind != LoftPoint::Kind::Sheer;
            if (body && (isOut({index, false}) || isOut({index, true}))) {
                waiting.push_back(&p);
                continue;
            }
            if (before)
                girth += std::hypot(p.y - before->y, p.z - before->z);
            p.girth = body ? girth : 0.0;
            const double from = before ? before->girth : 0.0;
            for (std::size_t k = 0; k < waiting.size(); ++k)
                waiting[k]->girth = from + (girth - from) * static_cast<double>(k + 1) /
                                               static_cast<double>(waiting.size() + 1);
            waiting.clear();
            before = &p;
        }
        for (LoftPoint* p : waiting)
            p->girth = girth;
        spreadAtKnuckle(static_cast<int>(s));
    }
}

void CellChecker::spreadAtKnuckle(int station) {
    const auto of = [&](const LoftPoint& p) {
        return p.station == station && p.kind != LoftPoint::Kind::Helper;
    };
    const auto corner = std::find_if(m_data.points.begin(), m_data.points.end(), [&](const LoftPoint& p) {
        return of(p) && p.kind == LoftPoint::Kind::Knuckle;
    });
    if (corner == m_data.points.end())
        return;
    const double to = corner->girth;
    for (LoftPoint& p : m_data.points)
        if (of(p))
            p.girth = girthParameter(p.girth, to, m_data.knuckle);
    corner->girth = *m_data.knuckle;
}

bool CellChecker::fit() {
    m_haveSurface = false;
    return settle(6);
}

bool CellChecker::refit(const Eigen::VectorXd& from) {
    m_poles = from;
    m_haveSurface = true;
    return settle(2);
}

bool CellChecker::settle(int times) {
    for (int k = 0; k < times; ++k) {
        const std::vector<Row> rows = equations(!m_haveSurface, damping);
        if (!factor(rows))
            return false;
        std::vector<double> values(rows.size());
        std::transform(rows.begin(), rows.end(), values.begin(), [](const Row& r) { return r.value; });
        m_poles = m_coupled.solve(values);
        if (!m_poles.allFinite())
            return false;
        m_haveSurface = true;
        reproject();
    }
    m_rows = equations(false, regular);
    return factor(m_rows);
}

bool CellChecker::factor(const std::vector<Row>& rows) {
    std::vector<CoupledRow> conditions(rows.begin(), rows.end());
    return m_coupled.factor(conditions);
}

double CellChecker::discord() const {
    double sum = m_coupled.shapeCost(m_poles);
    for (const Row& r : m_rows)
        if (r.data)
            sum += r.residual * r.residual / (r.sigma * r.sigma);
    return sum;
}

std::vector<CellRef> CellChecker::cells() const {
    std::vector<CellRef> list;
    for (const Row& r : m_rows) {
        const LoftPoint& p = m_data.points[r.cell.point];
        if (r.data && p.cell && p.kind != LoftPoint::Kind::Profile)
            list.push_back({r.cell.point, heightCell(p, r)});
    }
    return list;
}

std::map<std::size_t, SuspectCell> CellChecker::judge() {
    struct Judged {
        double t, leverage;
        const Row* row;
        int group;
    };
    std::vector<Judged> list;
    for (const Row& r : m_rows) {
        if (!r.data)
            continue;
        const LoftPoint& p = m_data.points[r.cell.point];
        const double h = m_coupled.leverage(r);
        if (h > 0.97)
            continue; // the point stands for itself; only a fit without it could tell
        const int group = p.kind == LoftPoint::Kind::Sheer                                               ? 1
                          : p.kind == LoftPoint::Kind::Keel                                              ? 2
                          : p.kind == LoftPoint::Kind::Profile                                           ? 3
                          : p.station <= 1 || p.station + 2 >= static_cast<int>(m_table.stations.size()) ? 4
                                                                                                         : 0;
        list.push_back({r.residual / (r.sigma * std::sqrt(1 - h)), h, &r, group});
    }
    std::vector<double> all;
    std::map<int, std::vector<double>> groups;
    for (const Judged& j : list) {
        all.push_back(std::abs(j.t));
        groups[j.group].push_back(std::abs(j.t));
    }
    std::map<std::size_t, SuspectCell> result;
    if (all.empty())
        return result;
    const double overall = std::max(0.5, robust(all));
    m_scale = overall;
    for (const Judged& j : list) {
        double scale = overall;
        if (groups[j.group].size() >= 6)
            scale = std::max(scale, robust(groups[j.group]));
        const Row& r = *j.row;
        const LoftPoint& p = m_data.points[r.cell.point];
        if (p.kind == LoftPoint::Kind::Profile || !p.cell)
            continue;
        SuspectCell c;
        c.point = r.cell.point;
        c.height = heightCell(p, r);
        c.printed = valueOf(p, c.height);
        const double g = wayOf(p, c.height).dot(Eigen::Vector2d(r.ny, r.nz));
        if (std::abs(g) < 0.15)
            continue; // the cell hardly matters to the surface and can't be checked
        c.fair = c.printed - r.residual / ((1 - j.leverage) * g);
        c.spread = r.sigma * scale * std::sqrt(j.leverage / (1 - j.leverage)) / std::abs(g);
        c.t = j.t / scale;
        const std::size_t key = 2 * c.point + (c.height ? 1 : 0);
        if (!result.contains(key) || std::abs(result[key].t) < std::abs(c.t))
            result[key] = c;
    }
    for (const CellRef& o : m_out)
        if (const auto c = onOwnLine(o))
            result[2 * o.point + (o.height ? 1 : 0)] = *c;
    return result;
}

bool CellChecker::heightCell(const LoftPoint& p, const Row& r) {
    if (p.kind == LoftPoint::Kind::Sheer || p.kind == LoftPoint::Kind::Knuckle)
        return r.nz == 1.0;
    return p.cell->kind == PointKind::Buttock || p.cell->kind == PointKind::Keel ||
           (p.cell->kind == PointKind::Point && !p.cell->diagonal && std::abs(r.nz) > std::abs(r.ny));
}

CellChecker::Place CellChecker::place(double u, double v, int side) const {
    geometry::UniformKnots around = m_fit.knotsV();
    around.side = side;
    const QuinticBasis bu = geometry::quinticBasis(m_fit.knotsU(), u);
    const QuinticBasis bv = geometry::quinticBasis(around, v);
    const int nv = m_fit.knotsV().poles();
    Place s{};
    for (std::size_t i = 0; i < 6; ++i)
        for (std::size_t j = 0; j < 6; ++j) {
            const Eigen::Index k = 2 * ((bu.span + static_cast<int>(i)) * nv + bv.span + static_cast<int>(j));
            const double y = m_poles[k];
            const double z = m_poles[k + 1];
            s.y += bu.value[i] * bv.value[j] * y;
            s.z += bu.value[i] * bv.value[j] * z;
            s.yv += bu.value[i] * bv.first[j] * y;
            s.zv += bu.value[i] * bv.first[j] * z;
            s.yvv += bu.value[i] * bv.second[j] * y;
            s.zvv += bu.value[i] * bv.second[j] * z;
        }
    return s;
}

void CellChecker::reproject() {
    for (LoftPoint& p : m_data.points) {
        if (p.onGivenLine())
            continue;
        for (int k = 0; k < 6; ++k) {
            const Place s = place(p.x, p.girth, p.side);
            const double ey = p.y - s.y;
            const double ez = p.z - s.z;
            const double slope = s.yv * s.yv + s.zv * s.zv;
            const double den = slope - (s.yvv * ey + s.zvv * ez);
            const double step = (s.yv * ey + s.zv * ez) / (den > 0.3 * slope ? den : slope);
            p.girth = std::clamp(p.girth + std::clamp(step, -20.0, 20.0),
                                 p.side > 0 ? *m_data.knuckle : m_fit.knotsV().first,
                                 p.side < 0 ? *m_data.knuckle : m_fit.knotsV().last());
        }
    }
}

std::vector<CellChecker::Row> CellChecker::equations(bool both, double tangential) const {
    std::vector<Row> rows;
    for (std::size_t i = 0; i < m_data.points.size(); ++i) {
        const LoftPoint& p = m_data.points[i];
        const bool keel = p.kind == LoftPoint::Kind::Keel || p.kind == LoftPoint::Kind::Profile;
        const double sy = keel ? onCentre : m_data.sigma;
        const double sz = m_data.sigma;
        const bool fixed = p.onGivenLine();
        const bool data = p.kind != LoftPoint::Kind::Helper;
        const Place s = m_haveSurface ? place(p.x, p.girth, p.side) : Place{};
        if (both || fixed) {
            if (!isOut({i, false}))
                rows.push_back({{p.x, p.girth, 1, 0, sy}, {i, false}, p.y, p.y - s.y, data});
            if (!isOut({i, true}))
                rows.push_back({{p.x, p.girth, 0, 1, sz}, {i, true}, p.z, p.z - s.z, data});
            continue;
        }
        if (isOut({i, false}) || isOut({i, true}))
            continue;
        const double len = std::hypot(s.yv, s.zv);
        const double ny = -s.zv / len;
        const double nz = s.yv / len;
        rows.push_back({{p.x, p.girth, ny, nz, std::hypot(ny * sy, nz * sz)},
                        {i, false},
                        ny * p.y + nz * p.z,
                        ny * (p.y - s.y) + nz * (p.z - s.z),
                        data});
        rows.push_back(
            {{p.x, p.girth, nz, -ny, tangential * m_data.sigma}, {i, false}, nz * p.y - ny * p.z, 0, false});
    }
    return rows;
}

std::optional<SuspectCell> CellChecker::onOwnLine(const CellRef& c) const {
    const LoftPoint& p = m_data.points[c.point];
    SuspectCell s;
    s.point = c.point;
    s.height = c.height && !(p.cell && p.cell->diagonal);
    s.printed = valueOf(p, c.height);
    const Eigen::Vector2d way = wayOf(p, c.height);
    const bool fixed = p.kind == LoftPoint::Kind::Sheer || p.kind == LoftPoint::Kind::Knuckle;
    double v = p.kind == LoftPoint::Kind::Knuckle ? *m_data.knuckle : 0.0;
    if (!fixed) {
        const auto off = [&](double at) {
            const Place q = place(p.x, at);
            return way.x() * (q.z - p.z) - way.y() * (q.y - p.y);
        };
        double a = 0;
        double b = -1;
        for (double at = 5; at <= m_fit.knotsV().last(); at += 5) {
            if (off(at) * off(a) <= 0) {
                b = at;
                break;
            }
            a = at;
        }
        if (b < 0)
            return std::nullopt;
        for (int k = 0; k < 50; ++k) {
            const double m = 0.5 * (a + b);
            (off(m) * off(a) <= 0 ? b : a) = m;
        }
        v = a;
    }
    const Place q = place(p.x, v);
    CoupledRow r{p.x, v, c.height ? 0.0 : 1.0, c.height ? 1.0 : 0.0, m_data.sigma};
    double g = 1;
    if (!fixed) {
        const double len = std::hypot(q.yv, q.zv);
        r.ny = -q.zv / len;
        r.nz = q.yv / len;
        g = std::max(0.15, std::abs(way.dot(Eigen::Vector2d(r.ny, r.nz))));
    }
    const double h = m_coupled.leverage(r);
    s.fair = s.printed + way.dot(Eigen::Vector2d(q.y - p.y, q.z - p.z));
    s.spread = m_data.sigma * m_scale * std::sqrt(h) / g;
    s.t = (s.printed - s.fair) * g / (m_data.sigma * m_scale * std::sqrt(1 + h));
    return s;
}

} // namespace sheerlay::core
