#include "core/planking/row_cutter.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::RowNode;
using geometry::Trim;

constexpr double nearEnd = 2.0;   // mm: a vertex closer to an end than this is left out
constexpr double farApart = 24.0; // mm: longest step of an edge
constexpr double nearKink = 5.0;  // mm: longest step close to where an edge turns into a trim
constexpr double thinNeck = 0.5;  // mm

/// Root of a trim's value between f = 0 (inside) and f = 1 (outside) on a curve in the parameters.
template <class Curve> double trimRoot(const TrimmedSurface& h, Trim trim, Curve curve) {
    const auto value = [&](double f) {
        const Vector2d uv = curve(f);
        return h.trims.value(trim, uv.y(), h.surface.point(uv.x(), uv.y()));
    };
    double a = 0;
    double b = 1;
    double fa = value(0);
    double fb = value(1);
    if (fa <= 0)
        return 0;
    if (fb >= 0)
        return 1;
    for (int i = 0; i < 60 && b - a > 1e-13; ++i) {
        const double m = i % 3 == 2 ? 0.5 * (a + b) : a + (b - a) * fa / (fa - fb);
        const double fm = value(m);
        if (std::abs(fm) < 1e-10)
            return m;
        if (fm > 0) {
            a = m;
            fa = fm;
        } else {
            b = m;
            fb = fm;
        }
    }
    return 0.5 * (a + b);
}

struct Crossing {
    double f = 0.0;
    Trim trim = Trim::None;
};

/// First crossing of any trim on a curve whose start is inside and whose end is not.
template <class Curve> Crossing firstCrossing(const TrimmedSurface& h, Curve curve) {
    Crossing best{1.0, Trim::None};
    const Vector2d end = curve(1);
    const Vector3d p = h.surface.point(end.x(), end.y());
    for (const Trim t : {Trim::Sheer, Trim::Centre, Trim::BowPlane, Trim::SternPlane})
        if (h.trims.value(t, end.y(), p) < 0)
            if (const double f = trimRoot(h, t, curve); f < best.f || best.trim == Trim::None)
                best = {f, t};
    if (best.trim == Trim::None) {
        // out and back in between (the extension's far side): look for the way out
        for (double f = 0.1; f < 1.0; f += 0.1) {
            const Vector2d uv = curve(f);
            const Trim t = h.trims.violated(uv.y(), h.surface.point(uv.x(), uv.y()));
            if (t != Trim::None)
                return {f * trimRoot(h, t, [&](double g) { return curve(g * f); }), t};
        }
    }
    return best;
}

/// Which of the three parallels.
enum class Line { Parent, Middle, Child };

/// What is left of one column of the row: from a to b, mm from the parent edge.
struct Column {
    bool parentIn = false, middleIn = false, childIn = false;
    double a = 0.0, b = 0.0;
    Trim trimA = Trim::None, trimB = Trim::None;
    [[nodiscard]] bool any() const { return parentIn || middleIn || childIn; }
};

/// Where a parallel leaves the hull, and through which trim.
struct LineEnd {
    RowPoint point;
    Trim trim = Trim::None;
};

class Cutter {
public:
    Cutter(const TrimmedSurface& hull, const RowMesh& mesh) : m_hull(hull), m_mesh(mesh) {
        m_columns.resize(mesh.parent.size());
        for (std::size_t i = 0; i < m_columns.size(); ++i)
            m_columns[i] = clip(i);
    }

    std::vector<RowPiece> pieces() const {
        std::vector<RowPiece> list;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            if (!m_columns[i].any())
                continue;
            std::size_t last = i;
            while (last + 1 < m_columns.size() && m_columns[last + 1].any())
                ++last;
            // a neck too thin to be wood parts the run in two pieces that end in a point there
            std::size_t first = i;
            for (std::size_t k = first + 2; k + 2 <= last; ++k)
                if (isNeck(k) && k > first + 1) {
                    list.push_back(build(first, k));
                    first = k;
                }
            list.push_back(build(first, last));
            i = last;
        }
        return list;
    }

private:
    const std::vector<RowNode>& nodes(Line line) const {
        return line == Line::Parent ? m_mesh.parent : line == Line::Middle ? m_mesh.middle : m_mesh.child;
    }
    bool in(Line line, std::size_t i) const {
        const Column& c = m_columns[i];
        return line == Line::Parent ? c.parentIn : line == Line::Middle ? c.middleIn : c.childIn;
    }
    double distanceOf(Line line) const {
        return line == Line::Parent ? 0.0 : line == Line::Middle ? 0.5 * m_mesh.width : m_mesh.width;
    }
    bool nodeIn(const RowNode& n) const { return n.alive && insideHull(m_hull, n.state.uv, n.jet.p); }

    Column clip(std::size_t i) const {
        Column c;
        const RowNode& p = m_mesh.parent[i];
        const RowNode& m = m_mesh.middle[i];
        const RowNode& k = m_mesh.child[i];
        c.parentIn = nodeIn(p);
        c.middleIn = nodeIn(m);
        c.childIn = nodeIn(k);
        const double half = 0.5 * m_mesh.width;
        c.a = 0;
        c.b = m_mesh.width;
        if (!c.any())
            return c;
        const auto cross = [&](const RowNode& inside, const RowNode& outside, bool outward) {
            const auto curve = [&](double f) {
                return outward ? geometry::betweenAlong(inside.state, outside.state, half, f)
                               : geometry::betweenAlong(outside.state, inside.state, half, 1 - f);
            };
            return firstCrossing(m_hull, curve);
        };
        if (!c.parentIn) {
            if (c.middleIn && p.alive) {
                const Crossing x = cross(m, p, false);
                c.a = half * (1 - x.f);
                c.trimA = x.trim;
            } else if (c.childIn && m.alive) {
                const Crossing x = cross(k, m, false);
                c.a = half + half * (1 - x.f);
                c.trimA = x.trim;
            }
        }
        if (!c.childIn) {
            if (c.middleIn && k.alive) {
                const Crossing x = cross(m, k, true);
                c.b = half + half * x.f;
                c.trimB = x.trim;
            } else if (c.parentIn && m.alive) {
                const Crossing x = cross(p, m, true);
                c.b = half * x.f;
                c.trimB = x.trim;
            }
        }
        return c;
    }

    double left(std::size_t i) const { return m_columns[i].b - m_columns[i].a; }
    /// The narrowest column of a stretch that a lengthwise trim leaves thinner than half a millimetre.
    bool isNeck(std::size_t k) const {
        const Column& c = m_columns[k];
        const bool lengthwise = c.trimA == Trim::Sheer || c.trimB == Trim::Sheer ||
                                (c.trimB == Trim::Centre && m_columns[k - 1].trimB == Trim::Centre &&
                                 m_columns[k + 1].trimB == Trim::Centre);
        return lengthwise && left(k) < thinNeck && left(k) <= left(k - 1) && left(k) < left(k + 1);
    }
    /// Where a run was parted: both edges end in the parent edge's node there.
    bool partedAt(std::size_t i, int step) const {
        const auto j = static_cast<std::ptrdiff_t>(i) + step;
        return j >= 0 && j < static_cast<std::ptrdiff_t>(m_columns.size()) &&
               m_columns[static_cast<std::size_t>(j)].any();
    }
    LineEnd neck(std::size_t i) const {
        const bool sheer = m_columns[i].trimA == Trim::Sheer || m_columns[i].trimB == Trim::Sheer;
        return {m_columns[i].parentIn ? nodePoint(Line::Parent, i) : columnPoint(i, m_columns[i].a),
                sheer ? Trim::Sheer : Trim::Centre};
    }

    RowPoint nodePoint(Line line, std::size_t i) const {
        const RowNode& n = nodes(line)[i];
        return {static_cast<double>(i), distanceOf(line), n.state.uv, n.jet.p};
    }
    RowPoint at(double column, double distance, const Vector2d& uv) const {
        return {column, distance, uv, m_hull.surface.point(uv.x(), uv.y())};
    }
    /// Where a column is cut: its point at distance d.
    RowPoint columnPoint(std::size_t i, double d) const {
        const double half = 0.5 * m_mesh.width;
        const RowNode& p = m_mesh.parent[i];
        const RowNode& m = m_mesh.middle[i];
        const RowNode& k = m_mesh.child[i];
        if (d <= half && p.alive && m.alive)
            return at(static_cast<double>(i), d, geometry::betweenAlong(p.state, m.state, half, d / half));
        return at(static_cast<double>(i), d, geometry::betweenAlong(m.state, k.state, half, d / half - 1));
    }

    /// Exact end of a parallel between column i (inside) and its neighbour `step` away (outside).
    std::optional<LineEnd> lineEnd(Line line, std::size_t i, int step) const {
        const auto j = static_cast<std::ptrdiff_t>(i) + step;
        if (j < 0 || j >= static_cast<std::ptrdiff_t>(m_columns.size()))
            return std::nullopt;
        const RowNode& a = nodes(line)[i];
        const RowNode& b = nodes(line)[static_cast<std::size_t>(j)];
        if (!b.alive)
            return std::nullopt;
        const auto curve = [&](double f) {
            return step > 0 ? geometry::between(a, b, f) : geometry::between(b, a, 1 - f);
        };
        const Crossing x = firstCrossing(m_hull, curve);
        return LineEnd{at(static_cast<double>(i) + step * x.f, distanceOf(line), curve(x.f)), x.trim};
    }

    /// Appends, leaving no step over 24 mm and no vertex that all but coincides with an end.
    void append(std::vector<RowPoint>& edge, const RowPoint& p, bool isEnd) const {
        if (!edge.empty()) {
            const double gap = (p.p - edge.back().p).norm();
            if (gap < nearEnd) {
                if (!isEnd)
                    return;
                if (edge.size() > 1)
                    edge.pop_back();
            } else if (gap > farApart) {
                const int parts = static_cast<int>(std::ceil(gap / farApart));
                const RowPoint from = edge.back();
                for (int k = 1; k < parts; ++k)
                    edge.push_back(intermediate(from, p, static_cast<double>(k) / parts));
            }
        }
        edge.push_back(p);
    }

    RowPoint intermediate(const RowPoint& a, const RowPoint& b, double f) const {
        const double column = a.column + f * (b.column - a.column);
        const double distance = a.distance + f * (b.distance - a.distance);
        const auto i = std::min(static_cast<std::size_t>(std::floor(column)), m_columns.size() - 2);
        for (const Line line : {Line::Parent, Line::Middle, Line::Child})
            if (a.distance == distanceOf(line) && b.distance == a.distance && nodes(line)[i].alive &&
                nodes(line)[i + 1].alive)
                return at(
                    column,
                    distance,
                    geometry::between(nodes(line)[i], nodes(line)[i + 1], column - static_cast<double>(i)));
        // along a trim: on the chord in the parameters, brought back to whichever zero line both ends lie on
        Vector2d uv = a.uv + f * (b.uv - a.uv);
        if (std::abs(a.uv.y()) < 1e-7 && std::abs(b.uv.y()) < 1e-7)
            uv.y() = 0;
        else
            for (int k = 0; k < 5; ++k) {
                const geometry::SurfaceJet j = m_hull.surface.jet(uv.x(), uv.y());
                const double g = m_hull.trims.value(Trim::Centre, uv.y(), j.p);
                const double h = m_hull.trims.siding.slopeAt(j.p.x());
                const Vector2d slope(j.u.y() - h * j.u.x(), j.v.y() - h * j.v.x());
                uv -= slope * (g / slope.squaredNorm());
            }
        return at(column, distance, uv);
    }

    /// Corner of the hull (sheer and stem, or sheer and transom) near a point of column i, told in the row's
    /// mesh.
    RowPoint corner(bool bow, std::size_t i, const RowPoint& from) const {
        const Vector2d uv = bow ? m_hull.outline.sheer.front() : m_hull.outline.sheer.back();
        RowPoint c = at(0, 0, uv);
        const RowNode& n = m_mesh.middle[i].alive ? m_mesh.middle[i] : m_mesh.parent[i];
        const Vector3d way = c.p - from.p;
        const double along = way.dot(n.frame.tangent) / (m_mesh.spacing * std::abs(n.state.jacobi));
        const Vector3d run = n.jet.u * n.state.velocity.x() + n.jet.v * n.state.velocity.y();
        c.column = std::clamp(from.column + along, 0.0, static_cast<double>(m_columns.size() - 1));
        c.distance = from.distance + way.dot(run);
        return c;
    }

    struct Edge {
        std::vector<RowPoint> points;
        bool bowTip = false, sternTip = false; // ends on the other edge's end
        bool followsOnly = false;
    };

    /// One edge of a piece over columns c0 to c1.
    Edge edge(Line line,
              std::size_t c0,
              std::size_t c1,
              const std::optional<LineEnd>& otherBow,
              const std::optional<LineEnd>& otherStern) const {
        Edge e;
        const bool parent = line == Line::Parent;
        const auto trimOf = [&](std::size_t i) { return parent ? m_columns[i].trimA : m_columns[i].trimB; };
        const auto cutPoint = [&](std::size_t i) {
            return columnPoint(i, parent ? m_columns[i].a : m_columns[i].b);
        };
        std::size_t firstIn = c1 + 1;
        std::size_t lastIn = c1 + 1;
        for (std::size_t i = c0; i <= c1; ++i)
            if (in(line, i)) {
                if (firstIn > c1)
                    firstIn = i;
                lastIn = i;
            }
        e.followsOnly = firstIn > c1;
        std::size_t sheerColumns = 0;
        for (std::size_t i = c0; i <= c1; ++i)
            sheerColumns += trimOf(i) == Trim::Sheer;
        // alone, an edge follows the sheer if the sheer cuts it anywhere, else the centreline
        const Trim along = sheerColumns > 0 ? Trim::Sheer : Trim::Centre;
        const auto follows = [&](std::size_t i) {
            if (in(line, i))
                return false;
            if (e.followsOnly)
                return trimOf(i) == along;
            return trimOf(i) == Trim::Sheer || (i > firstIn && i < lastIn);
        };
        bool started = false;
        std::vector<double> kinks; // columns where the edge turns into a trim
        for (std::size_t i = c0; i <= c1; ++i) {
            if (i > c0 && started && follows(i) != follows(i - 1))
                kinks.push_back(static_cast<double>(i) - 0.5);
            if (in(line, i)) {
                if ((i == firstIn || !in(line, i - 1)) && !(i == c0 && partedAt(i, -1))) {
                    if (const auto end = lineEnd(line, i, -1))
                        append(e.points, end->point, true);
                }
                append(e.points, nodePoint(line, i), false);
                if ((i == lastIn || !in(line, i + 1)) && !(i == c1 && partedAt(i, +1))) {
                    if (const auto end = lineEnd(line, i, +1))
                        append(e.points, end->point, true);
                }
                started = true;
            } else if (follows(i)) {
                if (!started) {
                    if (i == c0 && otherBow && otherBow->trim == trimOf(i)) {
                        append(e.points, otherBow->point, true);
                        e.bowTip = true;
                    } else if (trimOf(i) == Trim::Sheer && (i > c0 || otherBow))
                        append(e.points, corner(true, i, cutPoint(i)), true);
                }
                append(e.points, cutPoint(i), false);
                started = true;
                const bool lastFollowed = i == c1 || (!in(line, i + 1) && !follows(i + 1));
                if (lastFollowed && i == c1 && otherStern && otherStern->trim == trimOf(i)) {
                    append(e.points, otherStern->point, true);
                    e.sternTip = true;
                } else if (lastFollowed && trimOf(i) == Trim::Sheer && (i < c1 || otherStern))
                    append(e.points, corner(false, i, cutPoint(i)), true);
            }
        }
        if (!kinks.empty())
            e.points = refined(e.points, kinks);
        return e;
    }

    /// Closer vertices about the kinks, so that a curve through the vertices stays on the edge there.
    std::vector<RowPoint> refined(const std::vector<RowPoint>& points,
                                  const std::vector<double>& kinks) const {
        std::vector<RowPoint> fine = {points.front()};
        for (std::size_t i = 1; i < points.size(); ++i) {
            const RowPoint& a = points[i - 1];
            const RowPoint& b = points[i];
            const double mid = 0.5 * (a.column + b.column);
            double nearest = 1e9;
            for (const double k : kinks)
                nearest = std::min(nearest, std::abs(mid - k));
            const double gap = (b.p - a.p).norm();
            const double step = nearest < 4 ? nearKink : nearest < 12 ? 2 * nearKink : farApart;
            const int parts = std::max(1, static_cast<int>(std::ceil(gap / step)));
            for (int k = 1; k < parts; ++k)
                fine.push_back(intermediate(a, b, static_cast<double>(k) / parts));
            fine.push_back(b);
        }
        return fine;
    }

    std::optional<LineEnd> firstEnd(Line line, std::size_t c0, std::size_t c1) const {
        if (partedAt(c0, -1))
            return line == Line::Parent ? std::optional(neck(c0)) : std::nullopt;
        for (std::size_t i = c0; i <= c1; ++i)
            if (in(line, i))
                return i > 0 && !in(line, i - 1) ? lineEnd(line, i, -1) : std::nullopt;
        return std::nullopt;
    }
    std::optional<LineEnd> lastEnd(Line line, std::size_t c0, std::size_t c1) const {
        if (partedAt(c1, +1))
            return line == Line::Parent ? std::optional(neck(c1)) : std::nullopt;
        for (std::size_t i = c1 + 1; i-- > c0;)
            if (in(line, i))
                return i + 1 < m_columns.size() && !in(line, i + 1) ? lineEnd(line, i, +1) : std::nullopt;
        return std::nullopt;
    }

    /// Area under J between a and b on column i, per unit of the master's length; J through its three known
    /// values.
    double columnArea(std::size_t i, double a, double b) const {
        const double w = m_mesh.width;
        const auto& p = m_mesh.parent[i];
        const auto& m = m_mesh.middle[i];
        const auto& k = m_mesh.child[i];
        const double j0 = p.alive ? p.state.jacobi : m.state.jacobi;
        const double j1 = m.alive ? m.state.jacobi : j0;
        const double j2 = k.alive ? k.state.jacobi : j1;
        const auto primitive = [&](double d) {
            const double t = d / w;
            return w * t * (j0 + t * ((-3 * j0 + 4 * j1 - j2) / 2 + t * (2 * j0 - 4 * j1 + 2 * j2) / 3));
        };
        return primitive(b) - primitive(a);
    }

    double pieceArea(std::size_t c0, std::size_t c1) const {
        std::vector<std::array<double, 2>> profile; // column, area per unit of master length
        for (std::size_t i = c0; i <= c1; ++i)
            profile.push_back({static_cast<double>(i), columnArea(i, m_columns[i].a, m_columns[i].b)});
        const double w = m_mesh.width;
        // the ends of the three parallels lie between columns: there the interval is known exactly
        for (const Line line : {Line::Parent, Line::Middle, Line::Child})
            for (std::size_t i = c0; i <= c1; ++i) {
                if (!in(line, i))
                    continue;
                for (const int step : {-1, 1}) {
                    const auto j = static_cast<std::ptrdiff_t>(i) + step;
                    if (j >= 0 && j < static_cast<std::ptrdiff_t>(m_columns.size()) &&
                        in(line, static_cast<std::size_t>(j)))
                        continue;
                    const auto end = lineEnd(line, i, step);
                    if (!end)
                        continue;
                    const std::size_t other =
                        j < 0 ? i : std::min(static_cast<std::size_t>(j), m_columns.size() - 1);
                    const bool parentBeyond = in(Line::Parent, other);
                    const bool childBeyond = in(Line::Child, other);
                    double a = 0;
                    double b = w;
                    if (line == Line::Parent && !childBeyond)
                        b = childBeyond || in(Line::Child, i)
                                ? endWidth(Line::Child, i, step, end->point.column)
                                : 0.0;
                    else if (line == Line::Middle)
                        (parentBeyond || !childBeyond ? b : a) = w / 2;
                    else if (line == Line::Child && !parentBeyond && !in(Line::Parent, i))
                        a = w;
                    if (b > a)
                        profile.push_back({end->point.column, columnArea(i, a, b)});
                    else
                        profile.push_back({end->point.column, 0.0});
                }
            }
        std::sort(profile.begin(), profile.end());
        double area = 0;
        for (std::size_t i = 1; i < profile.size(); ++i)
            area += 0.5 * (profile[i][1] + profile[i - 1][1]) * (profile[i][0] - profile[i - 1][0]);
        return area * m_mesh.spacing;
    }
    /// Width left where the parent edge ends: none if the child edge has ended before, all of it otherwise.
    double endWidth(Line line, std::size_t i, int step, double column) const {
        const auto end = lineEnd(line, i, step);
        if (!end)
            return 0.0;
        return step * (end->point.column - column) > 0 ? m_mesh.width : 0.0;
    }

    /// First and last column of a run on which a line lies inside; equal when there is none.
    std::pair<std::size_t, std::size_t> span(Line line, std::size_t c0, std::size_t c1) const {
        std::size_t first = c1 + 1;
        std::size_t last = c1 + 1;
        for (std::size_t i = c0; i <= c1; ++i)
            if (in(line, i)) {
                first = std::min(first, i);
                last = i;
            }
        return {first, last};
    }

    RowPiece build(std::size_t c0, std::size_t c1) const {
        RowPiece piece;
        const auto parentBow = firstEnd(Line::Parent, c0, c1);
        const auto parentStern = lastEnd(Line::Parent, c0, c1);
        const auto childBow = firstEnd(Line::Child, c0, c1);
        const auto childStern = lastEnd(Line::Child, c0, c1);
        Edge parent = edge(Line::Parent, c0, c1, childBow, childStern);
        Edge child = edge(Line::Child, c0, c1, parentBow, parentStern);
        const bool sheerCutChild = std::any_of(m_columns.begin() + static_cast<std::ptrdiff_t>(c0),
                                               m_columns.begin() + static_cast<std::ptrdiff_t>(c1) + 1,
                                               [](const Column& c) { return c.trimB == Trim::Sheer; });
        piece.lens = child.followsOnly && !sheerCutChild;
        for (std::size_t i = c0; i <= c1; ++i) {
            const Column& c = m_columns[i];
            piece.widest = std::max(piece.widest, c.b - c.a);
            const double lost = m_mesh.width - (c.b - c.a);
            if (c.trimA == Trim::Sheer || c.trimB == Trim::Sheer)
                piece.cutBySheer = std::max(piece.cutBySheer, lost);
        }
        if (piece.lens)
            piece.cutByCentre = m_mesh.width - piece.widest;
        const auto [firstChild, lastChild] = span(Line::Child, c0, c1);
        for (std::size_t i = firstChild; i < lastChild; ++i)
            if (m_columns[i].trimB == Trim::Centre)
                piece.cutByCentre = std::max(piece.cutByCentre, m_mesh.width - left(i));
        buildMiddle(piece,
                    parent,
                    child,
                    c0,
                    c1,
                    parentBow ? parentBow : childBow,
                    parentStern ? parentStern : childStern);
        piece.area = pieceArea(c0, c1);
        piece.parentEdge = std::move(parent.points);
        piece.childEdge = std::move(child.points);
        return piece;
    }

    void buildMiddle(RowPiece& piece,
                     const Edge& parent,
                     const Edge& child,
                     std::size_t c0,
                     std::size_t c1,
                     const std::optional<LineEnd>& bowTip,
                     const std::optional<LineEnd>& sternTip) const {
        const auto [firstChild, lastChild] = span(Line::Child, c0, c1);
        const auto halved = [&](std::size_t i) {
            const Column& c = m_columns[i];
            return piece.lens || c.trimA == Trim::Sheer || c.trimB == Trim::Sheer ||
                   (c.trimB == Trim::Centre && i > firstChild && i < lastChild);
        };
        std::size_t first = c1 + 1;
        std::size_t last = 0;
        std::vector<RowPoint> body;
        std::vector<double> widths;
        for (std::size_t i = c0; i <= c1; ++i) {
            const Column& c = m_columns[i];
            const bool half2 = halved(i);
            if (!half2 && !c.middleIn)
                continue;
            if (piece.lens && c.trimB != Trim::Centre && !c.childIn)
                continue; // beyond the corner of a transom
            first = std::min(first, i);
            last = i;
            body.push_back(half2 ? columnPoint(i, 0.5 * (c.a + c.b)) : nodePoint(Line::Middle, i));
            widths.push_back(half2 ? c.b - c.a : m_mesh.width);
        }
        if (body.empty()) {
            // a piece that fits between two columns' middles: its middle is the mean of what its edges are
            const auto& e = parent.points.size() > child.points.size() ? parent.points : child.points;
            for (const RowPoint& p : e) {
                body.push_back(p);
                widths.push_back(piece.widest);
            }
            piece.middle = body;
            piece.middleWidth = widths;
            piece.bowTrim = bowTip ? bowTip->trim : Trim::Centre;
            piece.sternTrim = sternTip ? sternTip->trim : Trim::Centre;
            return;
        }
        const auto finish = [&](bool bow) -> std::pair<std::optional<RowPoint>, Trim> {
            const bool tip = bow ? parent.bowTip || child.bowTip : parent.sternTip || child.sternTip;
            if (tip) {
                const auto& t = bow ? bowTip : sternTip;
                if (t)
                    return {t->point, t->trim};
            }
            const std::size_t i = bow ? first : last;
            if (!halved(i))
                if (const auto end = lineEnd(Line::Middle, i, bow ? -1 : +1))
                    return {end->point, end->trim};
            return {endBetween(parent.points, child.points, bow), Trim::Centre};
        };
        auto [bowEnd, bowTrim] = finish(true);
        auto [sternEnd, sternTrim] = finish(false);
        piece.bowTrim = bowTrim;
        piece.sternTrim = sternTrim;
        const bool bowIsTip = parent.bowTip || child.bowTip;
        const bool sternIsTip = parent.sternTip || child.sternTip;
        if (bowEnd) {
            piece.middle.push_back(*bowEnd);
            piece.middleWidth.push_back(bowIsTip ? 0.0 : widths.front());
        }
        for (std::size_t k = 0; k < body.size(); ++k) {
            if (!piece.middle.empty() && (body[k].p - piece.middle.back().p).norm() < nearEnd)
                continue;
            piece.middle.push_back(body[k]);
            piece.middleWidth.push_back(widths[k]);
        }
        if (sternEnd) {
            if (piece.middle.size() > 2 && (sternEnd->p - piece.middle.back().p).norm() < nearEnd) {
                piece.middle.pop_back();
                piece.middleWidth.pop_back();
            }
            piece.middle.push_back(*sternEnd);
            piece.middleWidth.push_back(sternIsTip ? 0.0 : widths.back());
        }
    }

    /// Half way between the two edges' ends, brought onto the centreplane's line.
    std::optional<RowPoint>
    endBetween(const std::vector<RowPoint>& a, const std::vector<RowPoint>& b, bool bow) const {
        if (a.empty() || b.empty())
            return std::nullopt;
        const RowPoint& p = bow ? a.front() : a.back();
        const RowPoint& q = bow ? b.front() : b.back();
        return intermediate(p, q, 0.5);
    }

    const TrimmedSurface& m_hull;
    const RowMesh& m_mesh;
    std::vector<Column> m_columns;
};

} // namespace

bool insideHull(const TrimmedSurface& hull, const Vector2d& uv, const Vector3d& p) {
    if (hull.trims.violated(uv.y(), p) != Trim::None)
        return false;
    // close to the rim the trims' own functions are sharper than the polygon
    if (hull.trims.value(Trim::Centre, uv.y(), p) < 0.5 || uv.y() < 0.5)
        return true;
    if (hull.trims.value(Trim::BowPlane, uv.y(), p) < 0.5 ||
        hull.trims.value(Trim::SternPlane, uv.y(), p) < 0.5)
        return true;
    return hull.outline.region.contains(uv.x(), uv.y());
}

std::vector<RowPiece> cutRow(const TrimmedSurface& hull, const RowMesh& mesh) {
    if (mesh.parent.size() < 2)
        return {};
    return Cutter(hull, mesh).pieces();
}

} // namespace sheerlay::core
