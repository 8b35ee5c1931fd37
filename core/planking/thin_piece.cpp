#include "core/planking/thin_piece.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double along = 0.1;      // mm that the ends of a shared edge may lie off the other's chords
constexpr double sameVertex = 0.5; // mm

/// A place on a line of chords.
struct Foot {
    std::size_t before = 0; // vertex
    double f = 0.0;         // part of the way to the next
    double off = 1e300;     // mm
};

Foot footOn(const std::vector<Vector3d>& line, const Vector3d& p) {
    Foot best;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Vector3d chord = line[i + 1] - line[i];
        const double square = chord.squaredNorm();
        const double f = square > 0 ? std::clamp((p - line[i]).dot(chord) / square, 0.0, 1.0) : 0.0;
        if (const double off = (p - line[i] - f * chord).norm(); off < best.off)
            best = {i, f, off};
    }
    return best;
}

/// One edge of a strip with its vertices laid flat, bow to stern.
struct FlatEdge {
    std::vector<Vector3d> line;
    std::vector<Vector2d> flat;
    double outward = 1.0; // sign of the flat ordinate away from the strip

    /// Where a point just outside the edge comes to lie.
    [[nodiscard]] Vector2d place(const Vector3d& p) const {
        const Foot foot = footOn(line, p);
        const Vector3d chord = (line[foot.before + 1] - line[foot.before]).normalized();
        const Vector3d way = p - line[foot.before] - foot.f * (line[foot.before + 1] - line[foot.before]);
        const Vector2d run = flat[foot.before + 1] - flat[foot.before];
        const Vector2d on = run.normalized(), off(-on.y(), on.x());
        const double slip = way.dot(chord); // past the end of the line
        return flat[foot.before] + foot.f * run + slip * on + outward * (way - slip * chord).norm() * off;
    }
};

/// The edge with the stretch from a to b, both on it, replaced by the thin piece's far edge.
FlatEdge spliced(const FlatEdge& edge, const RowPiece& thin, const Foot& a, const Foot& b) {
    FlatEdge out;
    out.outward = edge.outward;
    const auto keep = [&](std::size_t i) {
        out.line.push_back(edge.line[i]);
        out.flat.push_back(edge.flat[i]);
    };
    // a piece that keeps its width at an end takes the strip's own end with it
    for (std::size_t i = 0; thin.bowPointed() && i <= a.before; ++i)
        keep(i);
    const auto near = [](const Vector3d& p, const Vector3d& q) { return (p - q).norm() < sameVertex; };
    for (std::size_t i = 0; i < thin.childEdge.size(); ++i) {
        const Vector3d& p = thin.childEdge[i].p;
        const bool last = i + 1 == thin.childEdge.size();
        if ((i == 0 && !out.line.empty() && near(p, out.line.back())) ||
            (last && thin.sternPointed() && near(p, edge.line[b.before + 1])))
            continue;
        out.line.push_back(p);
        out.flat.push_back(edge.place(p));
    }
    for (std::size_t i = b.before + 1; thin.sternPointed() && i < edge.line.size(); ++i)
        keep(i);
    return out;
}

FlatEdge edgeOf(const Strip& s, bool lower) {
    const auto cut = s.outline.begin() + static_cast<std::ptrdiff_t>(s.outlineUpperCount);
    if (!lower)
        return {s.upperEdge, {s.outline.begin(), cut}, -1.0};
    return {s.lowerEdge,
            {s.outline.rbegin(), s.outline.rbegin() + static_cast<std::ptrdiff_t>(s.lowerEdge.size())},
            1.0};
}

void setEdge(Strip& s, bool lower, FlatEdge edge) {
    const FlatEdge other = edgeOf(s, !lower);
    const FlatEdge &upper = lower ? other : edge, &under = lower ? edge : other;
    s.outline = upper.flat;
    s.outlineUpperCount = upper.flat.size();
    s.outline.insert(s.outline.end(), under.flat.rbegin(), under.flat.rend());
    (lower ? s.lowerEdge : s.upperEdge) = std::move(edge.line);
}

void mirrorEdges(const Strip& starboard, Strip& port) {
    port.kind = starboard.kind;
    port.upperEdge = starboard.upperEdge;
    port.lowerEdge = starboard.lowerEdge;
    port.outline = starboard.outline;
    port.outlineUpperCount = starboard.outlineUpperCount;
    for (auto* line : {&port.upperEdge, &port.lowerEdge})
        for (Vector3d& p : *line)
            p.y() = -p.y();
    for (Vector2d& p : port.outline)
        p.y() = -p.y();
}

} // namespace

std::optional<TakenIn> takeIn(const RowPiece& thin, std::vector<Strip>& strips, geometry::FanSide side) {
    if (thin.parentEdge.size() < 2 || thin.childEdge.size() < 2)
        return std::nullopt;
    const bool lower = side == geometry::FanSide::TowardKeel;
    for (std::size_t i = 1; i < strips.size(); ++i) {
        Strip& s = strips[i];
        if (s.side != Side::Starboard || s.outline.size() != s.upperEdge.size() + s.lowerEdge.size())
            continue;
        const FlatEdge edge = edgeOf(s, lower);
        const Foot a = footOn(edge.line, thin.parentEdge.front().p);
        const Foot b = footOn(edge.line, thin.parentEdge.back().p);
        if (a.off > along || b.off > along)
            continue;
        TakenIn taken;
        taken.strip = s.id;
        const std::vector<Vector3d>& near = lower ? s.upperEdge : s.lowerEdge;
        for (const RowPoint& p : thin.childEdge) {
            taken.beyond = std::max(taken.beyond, footOn(edge.line, p.p).off);
            taken.across = std::max(taken.across, footOn(near, p.p).off);
        }
        setEdge(s, lower, spliced(edge, thin, a, b));
        if (s.kind == StripKind::Full)
            s.kind = lower ? StripKind::Tapered : StripKind::Filler;
        mirrorEdges(s, strips[i - 1]);
        return taken;
    }
    return std::nullopt;
}

} // namespace sheerlay::core
