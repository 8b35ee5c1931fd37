#include "core/planking/row_edge.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

using geometry::Trim;

namespace {

constexpr double farApart = 24.0; // mm: longest step of an edge
constexpr double nearKink = 5.0;  // mm: longest step close to where an edge turns into a trim

/// Appends, leaving no step over 24 mm and no vertex that all but coincides with an end.
void append(const RowColumns& columns, std::vector<RowPoint>& edge, const RowPoint& p, bool isEnd) {
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
                edge.push_back(columns.intermediate(from, p, static_cast<double>(k) / parts));
        }
    }
    edge.push_back(p);
}

/// Closer vertices about the kinks, so that a curve through the vertices stays on the edge there.
std::vector<RowPoint>
refined(const RowColumns& columns, const std::vector<RowPoint>& points, const std::vector<double>& kinks) {
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
            fine.push_back(columns.intermediate(a, b, static_cast<double>(k) / parts));
        fine.push_back(b);
    }
    return fine;
}

} // namespace

RowEdge rowEdge(const RowColumns& columns,
                Line line,
                std::size_t c0,
                std::size_t c1,
                const std::optional<LineEnd>& otherBow,
                const std::optional<LineEnd>& otherStern) {
    RowEdge e;
    const bool parent = line == Line::Parent;
    const auto trimOf = [&](std::size_t i) { return parent ? columns[i].trimA : columns[i].trimB; };
    const auto cutPoint = [&](std::size_t i) {
        return columns.columnPoint(i, parent ? columns[i].a : columns[i].b);
    };
    const std::pair<std::size_t, std::size_t> inside = columns.span(line, c0, c1);
    const std::size_t firstIn = inside.first;
    const std::size_t lastIn = inside.second;
    e.followsOnly = firstIn > c1;
    std::size_t sheerColumns = 0;
    for (std::size_t i = c0; i <= c1; ++i)
        sheerColumns += trimOf(i) == Trim::Sheer;
    // alone, an edge follows the sheer if the sheer cuts it anywhere, else the centreline
    const Trim along = sheerColumns > 0 ? Trim::Sheer : Trim::Centre;
    const auto onTransom = [](const std::optional<LineEnd>& end) {
        return end && (end->trim == Trim::BowPlane || end->trim == Trim::SternPlane);
    };
    if (!e.followsOnly) {
        const auto turnsKeelCorner = [&](std::size_t i, int step, const std::optional<LineEnd>& other) {
            if (!onTransom(other))
                return false;
            const auto end = columns.lineEnd(line, i, step);
            return end && end->trim == Trim::Centre &&
                   (columns.corner(Trim::Centre, step < 0, i, end->point).p - end->point.p).norm() > nearEnd;
        };
        e.bowKeelCorner = turnsKeelCorner(firstIn, -1, otherBow);
        e.sternKeelCorner = turnsKeelCorner(lastIn, +1, otherStern);
    }
    const auto follows = [&](std::size_t i) {
        if (columns.in(line, i))
            return false;
        if (e.followsOnly)
            return trimOf(i) == along;
        if (trimOf(i) == Trim::Centre && (i < firstIn ? e.bowKeelCorner : i > lastIn && e.sternKeelCorner))
            return true;
        return trimOf(i) == Trim::Sheer || (i > firstIn && i < lastIn);
    };
    // a lens between transoms runs along the keel line from corner to corner
    const auto endsOnTransom = [&](std::size_t i, const std::optional<LineEnd>& other) {
        return trimOf(i) == Trim::Centre && onTransom(other) &&
               (e.followsOnly || (i < firstIn ? e.bowKeelCorner : e.sternKeelCorner));
    };
    // the edge ends on the sheer, the other one on stem or transom, or the one on the keel and the other on a
    // transom: the end of sheer or keel line lies between
    const auto missesCorner = [](const LineEnd& end, const std::optional<LineEnd>& other, bool keelCorner) {
        return (end.trim == Trim::Sheer && other && other->trim != Trim::Sheer &&
                other->trim != Trim::None) ||
               (end.trim == Trim::Centre && keelCorner);
    };
    bool started = false;
    std::vector<double> kinks; // columns where the edge turns into a trim
    for (std::size_t i = c0; i <= c1; ++i) {
        if (i > c0 && started && follows(i) != follows(i - 1))
            kinks.push_back(static_cast<double>(i) - 0.5);
        if (columns.in(line, i)) {
            if ((i == firstIn || !columns.in(line, i - 1)) && !(i == c0 && columns.partedAt(i, -1))) {
                if (const auto end = columns.lineEnd(line, i, -1)) {
                    if (!started && missesCorner(*end, otherBow, e.bowKeelCorner)) {
                        kinks.push_back(end->point.column);
                        e.turnsCorner |= end->trim == Trim::Sheer;
                        append(columns, e.points, columns.corner(end->trim, true, i, end->point), true);
                    }
                    append(columns, e.points, end->point, true);
                }
            }
            const bool atNeck =
                parent && ((i == c0 && columns.partedAt(i, -1)) || (i == c1 && columns.partedAt(i, +1)));
            append(columns, e.points, atNeck ? columns.neck(i).point : columns.nodePoint(line, i), atNeck);
            if ((i == lastIn || !columns.in(line, i + 1)) && !(i == c1 && columns.partedAt(i, +1))) {
                if (const auto end = columns.lineEnd(line, i, +1)) {
                    append(columns, e.points, end->point, true);
                    if (i == c1 && missesCorner(*end, otherStern, e.sternKeelCorner)) {
                        kinks.push_back(end->point.column);
                        e.turnsCorner |= end->trim == Trim::Sheer;
                        append(columns, e.points, columns.corner(end->trim, false, i, end->point), true);
                    }
                }
            }
            started = true;
        } else if (follows(i)) {
            if (!started) {
                if (i == c0 && otherBow && otherBow->trim == trimOf(i)) {
                    append(columns, e.points, otherBow->point, true);
                    e.bowTip = true;
                } else if ((trimOf(i) == Trim::Sheer && (i > c0 || otherBow)) || endsOnTransom(i, otherBow))
                    append(columns, e.points, columns.corner(trimOf(i), true, i, cutPoint(i)), true);
            }
            append(columns, e.points, cutPoint(i), false);
            started = true;
            const bool lastFollowed = i == c1 || (!columns.in(line, i + 1) && !follows(i + 1));
            if (lastFollowed && i == c1 && otherStern && otherStern->trim == trimOf(i)) {
                append(columns, e.points, otherStern->point, true);
                e.sternTip = true;
            } else if (lastFollowed &&
                       ((trimOf(i) == Trim::Sheer && (i < c1 || otherStern)) || endsOnTransom(i, otherStern)))
                append(columns, e.points, columns.corner(trimOf(i), false, i, cutPoint(i)), true);
        }
    }
    if (!kinks.empty())
        e.points = refined(columns, e.points, kinks);
    return e;
}

} // namespace sheerlay::core
