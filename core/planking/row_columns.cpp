#include "core/planking/row_columns.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::RowNode;
using geometry::Trim;

RowColumns::RowColumns(const TrimmedSurface& hull, const RowMesh& mesh) : m_hull(hull), m_mesh(mesh) {
    m_columns.resize(mesh.parent.size());
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        m_columns[i] = clip(i);
}

const std::vector<RowNode>& RowColumns::nodes(Line line) const {
    return line == Line::Parent ? m_mesh.parent : line == Line::Middle ? m_mesh.middle : m_mesh.child;
}

bool RowColumns::in(Line line, std::size_t i) const {
    const Column& c = m_columns[i];
    return line == Line::Parent ? c.parentIn : line == Line::Middle ? c.middleIn : c.childIn;
}

double RowColumns::distanceOf(Line line, double column) const {
    const double w = m_mesh.widthAt(column);
    return line == Line::Parent ? 0.0 : line == Line::Middle ? 0.5 * w : w;
}

Column RowColumns::clip(std::size_t i) const {
    Column c;
    const RowNode& p = m_mesh.parent[i];
    const RowNode& m = m_mesh.middle[i];
    const RowNode& k = m_mesh.child[i];
    const auto nodeIn = [&](const RowNode& n) { return n.alive && insideHull(m_hull, n.state.uv, n.jet.p); };
    c.parentIn = nodeIn(p);
    c.middleIn = nodeIn(m);
    c.childIn = nodeIn(k);
    c.a = 0;
    c.b = m_mesh.widthAt(i);
    const double half = 0.5 * c.b;
    if (!c.any())
        return c;
    const auto cross = [&](const RowNode& inside, const RowNode& outside, bool outward) {
        return firstCrossing(m_hull,
                             outward ? geometry::arcAlong(inside.state, outside.state, half)
                                     : geometry::arcAlong(outside.state, inside.state, half).reversed());
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

bool RowColumns::isNeck(std::size_t k) const {
    const Column& c = m_columns[k];
    const bool lengthwise = c.trimA == Trim::Sheer || c.trimB == Trim::Sheer ||
                            (c.trimB == Trim::Centre && m_columns[k - 1].trimB == Trim::Centre &&
                             m_columns[k + 1].trimB == Trim::Centre);
    return lengthwise && left(k) < tooThin && left(k) <= left(k - 1) && left(k) < left(k + 1);
}

bool RowColumns::partedAt(std::size_t i, int step) const {
    const auto j = static_cast<std::ptrdiff_t>(i) + step;
    return j >= 0 && j < static_cast<std::ptrdiff_t>(m_columns.size()) &&
           m_columns[static_cast<std::size_t>(j)].any();
}

LineEnd RowColumns::neck(std::size_t i) const {
    const Column& c = m_columns[i];
    const bool sheer = c.trimA == Trim::Sheer || c.trimB == Trim::Sheer;
    return {columnPoint(i, c.trimB != Trim::None ? c.b : c.a), sheer ? Trim::Sheer : Trim::Centre};
}

std::optional<RowPiece> RowColumns::besideNeck(std::size_t i) const {
    if (i == 0 || i + 1 >= m_columns.size() || m_columns[i].trimB == Trim::None ||
        !m_columns[i - 1].parentIn || !m_columns[i].parentIn || !m_columns[i + 1].parentIn)
        return std::nullopt;
    const RowPoint before = nodePoint(Line::Parent, i - 1), behind = nodePoint(Line::Parent, i + 1);
    RowPiece bit; // its area is in the columns of the two pieces
    bit.parentEdge = {before, nodePoint(Line::Parent, i), behind};
    bit.childEdge = {before, neck(i).point, behind};
    bit.widest = left(i);
    return bit;
}

bool RowColumns::stopsShort(Line line, std::size_t i, int step) const {
    if (!in(line, i) || m_mesh.endsAt(i, step < 0))
        return false;
    const auto j = static_cast<std::ptrdiff_t>(i) + step;
    return j < 0 || j >= static_cast<std::ptrdiff_t>(m_columns.size()) ||
           !nodes(line)[static_cast<std::size_t>(j)].alive;
}

RowPoint RowColumns::nodePoint(Line line, std::size_t i) const {
    const RowNode& n = nodes(line)[i];
    return {static_cast<double>(i), distanceOf(line, static_cast<double>(i)), n.state.uv, n.jet.p};
}

RowPoint RowColumns::at(double column, double distance, const Vector2d& uv) const {
    return {column, distance, uv, m_hull.surface.point(uv.x(), uv.y())};
}

RowPoint RowColumns::columnPoint(std::size_t i, double d) const {
    const double half = 0.5 * m_mesh.widthAt(i);
    const RowNode& p = m_mesh.parent[i];
    const RowNode& m = m_mesh.middle[i];
    const RowNode& k = m_mesh.child[i];
    if (d <= half && p.alive && m.alive)
        return at(static_cast<double>(i), d, geometry::betweenAlong(p.state, m.state, half, d / half));
    return at(static_cast<double>(i), d, geometry::betweenAlong(m.state, k.state, half, d / half - 1));
}

std::optional<LineEnd> RowColumns::lineEnd(Line line, std::size_t i, int step) const {
    const auto j = static_cast<std::ptrdiff_t>(i) + step;
    if (j < 0 || j >= static_cast<std::ptrdiff_t>(m_columns.size()))
        return std::nullopt;
    const RowNode& a = nodes(line)[i];
    const RowNode& b = nodes(line)[static_cast<std::size_t>(j)];
    if (!b.alive)
        return std::nullopt;
    const geometry::ParameterArc arc =
        step > 0 ? geometry::arcBetween(a, b) : geometry::arcBetween(b, a).reversed();
    const Crossing x = firstCrossing(m_hull, arc);
    const double column = static_cast<double>(i) + step * x.f;
    return LineEnd{at(column, distanceOf(line, column), arc.at(x.f)), x.trim};
}

std::optional<LineEnd> RowColumns::firstEnd(Line line, std::size_t c0, std::size_t c1) const {
    if (partedAt(c0, -1))
        return line == Line::Parent ? std::optional(neck(c0)) : std::nullopt;
    for (std::size_t i = c0; i <= c1; ++i)
        if (in(line, i))
            return i > 0 && !in(line, i - 1) ? lineEnd(line, i, -1) : std::nullopt;
    return std::nullopt;
}

std::optional<LineEnd> RowColumns::lastEnd(Line line, std::size_t c0, std::size_t c1) const {
    if (partedAt(c1, +1))
        return line == Line::Parent ? std::optional(neck(c1)) : std::nullopt;
    for (std::size_t i = c1 + 1; i-- > c0;)
        if (in(line, i))
            return i + 1 < m_columns.size() && !in(line, i + 1) ? lineEnd(line, i, +1) : std::nullopt;
    return std::nullopt;
}

RowPoint RowColumns::intermediate(const RowPoint& a, const RowPoint& b, double f) const {
    const double column = a.column + f * (b.column - a.column);
    const double distance = a.distance + f * (b.distance - a.distance);
    const auto i = std::min(static_cast<std::size_t>(std::floor(column)), m_columns.size() - 2);
    for (const Line line : {Line::Parent, Line::Middle, Line::Child})
        if (a.distance == distanceOf(line, a.column) && b.distance == distanceOf(line, b.column) &&
            nodes(line)[i].alive && nodes(line)[i + 1].alive)
            return at(column,
                      distanceOf(line, column),
                      geometry::between(nodes(line)[i], nodes(line)[i + 1], column - static_cast<double>(i)));
    const Vector2d chord = a.uv + f * (b.uv - a.uv);
    if (std::min(a.distance, b.distance) == 0.0 && std::max(a.distance, b.distance) < tooThin)
        return at(column, distance, chord); // from the parent line up to a neck
    // along a trim: on the chord in the parameters, brought back to whichever zero line both ends lie on
    return at(column, distance, ontoTrim(m_hull, sharedTrim(a, b), chord));
}

Trim RowColumns::sharedTrim(const RowPoint& a, const RowPoint& b) const {
    Trim trim = Trim::Centre;
    double least = 1e300;
    for (const Trim t : {Trim::Sheer, Trim::Centre, Trim::BowPlane, Trim::SternPlane}) {
        const double off =
            std::abs(m_hull.trims.value(t, a.uv.y(), a.p)) + std::abs(m_hull.trims.value(t, b.uv.y(), b.p));
        if (off < least) {
            least = off;
            trim = t;
        }
    }
    return trim;
}

RowPoint RowColumns::corner(Trim along, bool bow, std::size_t i, const RowPoint& from) const {
    const auto& line = along == Trim::Sheer ? m_hull.outline.sheer : m_hull.outline.profile;
    const Vector2d uv = bow ? line.front() : line.back();
    RowPoint c = at(0, 0, uv);
    const RowNode& n = m_mesh.middle[i].alive ? m_mesh.middle[i] : m_mesh.parent[i];
    const Vector3d way = c.p - from.p;
    const double columns = way.dot(n.frame.tangent) / (m_mesh.spacing * std::abs(n.state.jacobi));
    const Vector3d run = n.jet.u * n.state.velocity.x() + n.jet.v * n.state.velocity.y();
    c.column = std::clamp(from.column + columns, 0.0, static_cast<double>(m_columns.size() - 1));
    c.distance = from.distance + way.dot(run);
    return c;
}

std::pair<std::size_t, std::size_t> RowColumns::span(Line line, std::size_t c0, std::size_t c1) const {
    std::size_t first = c1 + 1;
    std::size_t last = c1 + 1;
    for (std::size_t i = c0; i <= c1; ++i)
        if (in(line, i)) {
            first = std::min(first, i);
            last = i;
        }
    return {first, last};
}

} // namespace sheerlay::core
