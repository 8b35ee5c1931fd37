#include "core/planking/row_cutter.hpp"

#include "core/planking/row_area.hpp"
#include "core/planking/row_columns.hpp"
#include "core/planking/row_edge.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerlay::core {

using geometry::Trim;

namespace {

constexpr double aCorner = 0.2; // mm: however little, the sheer cuts the strip there

/// Half way between the two edges' ends, brought onto the line they end on.
std::optional<LineEnd> endBetween(const RowColumns& columns,
                                  const std::vector<RowPoint>& a,
                                  const std::vector<RowPoint>& b,
                                  bool bow) {
    if (a.empty() || b.empty())
        return std::nullopt;
    const RowPoint& p = bow ? a.front() : a.back();
    const RowPoint& q = bow ? b.front() : b.back();
    return LineEnd{columns.intermediate(p, q, 0.5), columns.sharedTrim(p, q)};
}

/// First column, and the one past the last, on which the far edge follows the keel where that cuts it:
/// between two of its own stretches, or past its landing to the corner of a transom.
std::pair<std::size_t, std::size_t>
alongKeel(const RowColumns& columns, const RowEdge& child, std::size_t c0, std::size_t c1) {
    const auto [first, last] = columns.span(Line::Child, c0, c1);
    return {child.bowKeelCorner ? c0 : first + 1, child.sternKeelCorner ? c1 + 1 : last};
}

void buildMiddle(const RowColumns& columns,
                 RowPiece& piece,
                 const RowEdge& parent,
                 const RowEdge& child,
                 std::size_t c0,
                 std::size_t c1,
                 const std::optional<LineEnd>& bowTip,
                 const std::optional<LineEnd>& sternTip) {
    const auto keelwise = alongKeel(columns, child, c0, c1);
    const auto halved = [&, from = keelwise.first, to = keelwise.second](std::size_t i) {
        const Column& c = columns[i];
        return piece.lens || c.trimA == Trim::Sheer || c.trimB == Trim::Sheer ||
               (c.trimB == Trim::Centre && i >= from && i < to);
    };
    std::size_t first = c1 + 1;
    std::size_t last = 0;
    std::vector<RowPoint> body;
    std::vector<double> widths;
    for (std::size_t i = c0; i <= c1; ++i) {
        const Column& c = columns[i];
        const bool half2 = halved(i);
        if (!half2 && !c.middleIn)
            continue;
        if (piece.lens && c.trimB != Trim::Centre && !c.childIn)
            continue; // beyond the corner of a transom
        first = std::min(first, i);
        last = i;
        body.push_back(half2 ? columns.columnPoint(i, 0.5 * (c.a + c.b))
                             : columns.nodePoint(Line::Middle, i));
        widths.push_back(half2 ? c.b - c.a : columns.mesh().widthAt(i));
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
        if (columns.mesh().endsAt(i, bow))
            return {columns.nodePoint(Line::Middle, i), Trim::None};
        if (!halved(i))
            if (const auto end = columns.lineEnd(Line::Middle, i, bow ? -1 : +1))
                return {end->point, end->trim};
        if (const auto end = endBetween(columns, parent.points, child.points, bow))
            return {end->point, end->trim};
        return {std::nullopt, Trim::Centre};
    };
    auto [bowEnd, bowTrim] = finish(true);
    const auto stern = finish(false);
    const auto& sternEnd = stern.first; // clang 14 takes no structured binding into a lambda
    const Trim sternTrim = stern.second;
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
        // half way across a corner of the hull may lie past the end
        if (piece.middle.size() == 1 && bowEnd && k + 1 < body.size() &&
            (body[k].p - bowEnd->p).dot(body[k + 1].p - body[k].p) < 0)
            continue;
        piece.middle.push_back(body[k]);
        piece.middleWidth.push_back(widths[k]);
    }
    if (sternEnd) {
        const auto pastEnd = [&] {
            const RowPoint &end = piece.middle.back(), &before = piece.middle[piece.middle.size() - 2];
            return (sternEnd->p - end.p).norm() < nearEnd || (sternEnd->p - end.p).dot(end.p - before.p) < 0;
        };
        while (piece.middle.size() > 2 && pastEnd()) {
            piece.middle.pop_back();
            piece.middleWidth.pop_back();
        }
        piece.middle.push_back(*sternEnd);
        piece.middleWidth.push_back(sternIsTip ? 0.0 : widths.back());
    }
}

RowPiece build(const RowColumns& columns, std::size_t c0, std::size_t c1) {
    RowPiece piece;
    const auto parentBow = columns.firstEnd(Line::Parent, c0, c1);
    const auto parentStern = columns.lastEnd(Line::Parent, c0, c1);
    const auto childBow = columns.firstEnd(Line::Child, c0, c1);
    const auto childStern = columns.lastEnd(Line::Child, c0, c1);
    RowEdge parent = rowEdge(columns, Line::Parent, c0, c1, childBow, childStern);
    RowEdge child = rowEdge(columns, Line::Child, c0, c1, parentBow, parentStern);
    bool sheerCutChild = false;
    for (std::size_t i = c0; i <= c1; ++i)
        sheerCutChild = sheerCutChild || columns[i].trimB == Trim::Sheer;
    piece.lens = child.followsOnly && !sheerCutChild;
    for (std::size_t i = c0; i <= c1; ++i) {
        const Column& c = columns[i];
        piece.widest = std::max(piece.widest, c.b - c.a);
        const double lost = columns.mesh().widthAt(i) - (c.b - c.a);
        if (c.trimA == Trim::Sheer || c.trimB == Trim::Sheer)
            piece.cutBySheer = std::max(piece.cutBySheer, lost);
    }
    for (const Line line : {Line::Parent, Line::Child}) {
        const auto [first, last] = columns.span(line, c0, c1);
        if (first > c1)
            continue;
        for (const auto& [i, step] : {std::pair(first, -1), std::pair(last, +1)})
            if (columns.stopsShort(line, i, step))
                piece.stopsShort = columns.nodePoint(line, i).p.x();
    }
    piece.tapered = columns.mesh().tapered();
    piece.part = columns.mesh().part;
    if (parent.turnsCorner || child.turnsCorner)
        piece.cutBySheer = std::max(piece.cutBySheer, aCorner);
    if (piece.lens)
        piece.cutByCentre = columns.mesh().width - piece.widest;
    const auto [keelFrom, keelTo] = alongKeel(columns, child, c0, c1);
    for (std::size_t i = keelFrom; i < keelTo; ++i)
        if (columns[i].trimB == Trim::Centre)
            piece.cutByCentre = std::max(piece.cutByCentre, columns.mesh().widthAt(i) - columns.left(i));
    buildMiddle(columns,
                piece,
                parent,
                child,
                c0,
                c1,
                parent.bowTip || !parentBow ? childBow
                                            : parentBow, // a tip is the end of the edge that is met
                parent.sternTip || !parentStern ? childStern : parentStern);
    piece.area = rowArea(columns, c0, c1);
    piece.parentEdge = std::move(parent.points);
    piece.childEdge = std::move(child.points);
    return piece;
}

} // namespace

double RowMesh::widthAt(double column) const {
    if (!tapered())
        return width;
    const double c = std::clamp(column, 0.0, static_cast<double>(narrowed.size() - 1));
    const auto i = std::min(static_cast<std::size_t>(c), narrowed.size() - 2);
    const double f = c - static_cast<double>(i);
    return (1 - f) * narrowed[i] + f * narrowed[i + 1];
}

std::vector<RowPiece> cutRow(const TrimmedSurface& hull, const RowMesh& mesh) {
    if (mesh.parent.size() < 2)
        return {};
    const RowColumns columns(hull, mesh);
    std::vector<RowPiece> list;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (!columns[i].any())
            continue;
        std::size_t last = i;
        while (last + 1 < columns.size() && columns[last + 1].any())
            ++last;
        // a neck too thin to be wood parts the run in two pieces that end in a point there
        std::size_t first = i;
        const auto wood = [&](std::size_t from, std::size_t to) {
            for (std::size_t k = from; k <= to; ++k)
                if (columns.left(k) >= tooThin)
                    return true;
            return false;
        };
        for (std::size_t k = first + 2; k + 2 <= last; ++k)
            if (columns.isNeck(k) && k > first + 1 && wood(first, k) && wood(k, last)) {
                list.push_back(build(columns, first, k));
                if (auto bit = columns.besideNeck(k))
                    list.push_back(std::move(*bit));
                first = k;
            }
        list.push_back(build(columns, first, last));
        i = last;
    }
    return list;
}

} // namespace sheerlay::core
