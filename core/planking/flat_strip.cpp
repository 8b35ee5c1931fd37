#include "core/planking/flat_strip.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;

/// One parallel laid flat: node positions and headings.
struct FlatLine {
    std::size_t first = 0;
    std::vector<Vector2d> at;
    std::vector<double> heading;

    /// @param lean  rad, off square of the line the offset is measured along, toward the stern
    [[nodiscard]] Vector2d place(double column, double offset, double lean = 0) const {
        const double c =
            std::clamp(column - static_cast<double>(first), 0.0, static_cast<double>(at.size() - 1));
        const auto i = std::min(static_cast<std::size_t>(std::floor(c)), at.size() - 2);
        const double f = c - static_cast<double>(i);
        const double turn = heading[i + 1] - heading[i];
        // on the arc between the two nodes
        const double mid = heading[i] + 0.5 * f * turn;
        const double chord = (at[i + 1] - at[i]).norm();
        const double part = std::abs(turn) < 1e-9 ? f : std::sin(0.5 * f * turn) / std::sin(0.5 * turn);
        const double h = heading[i] + f * turn;
        return at[i] + chord * part * Vector2d(std::cos(mid), std::sin(mid)) +
               offset * Vector2d(-std::sin(h - lean), std::cos(h - lean));
    }
};

/// mm off the near edge to which the strip reaches at a column.
double farEdgeAt(const std::vector<RowPoint>& edge, double column) {
    const auto after = std::lower_bound(
        edge.begin(), edge.end(), column, [](const RowPoint& p, double c) { return p.column < c; });
    if (after == edge.begin() || after == edge.end())
        return after == edge.end() ? edge.back().distance : edge.front().distance;
    const RowPoint &a = *(after - 1), &b = *after;
    const double f = b.column > a.column ? (column - a.column) / (b.column - a.column) : 0.0;
    return (1 - f) * a.distance + f * b.distance;
}

/// How a line is laid flat so that both edges of the strip keep their length, though no plane fits a doubly
/// curved strip: what is left over falls to its middle.
struct Fitting {
    std::vector<double> bend;  ///< 1/mm, of each node
    std::vector<double> scale; ///< of the length about each node
};

/// A parallel at distance w is shorter than a plane's by K w^2 / 2 for each mm. Along the middle that is the
/// same for both edges; along one edge the strip is bent as its middle is.
Fitting fittingOf(const RowPiece& piece, const RowMesh& mesh, double sign) {
    const auto& line = piece.goodLine(mesh);
    const bool beside = piece.part == RowPart::Beside;
    Fitting fitting{{}, std::vector<double>(line.size(), 1.0)};
    for (std::size_t i = 0; i < line.size(); ++i) {
        fitting.bend.push_back(line[i].edgeBend);
        if (!line[i].alive)
            continue;
        const double gauss = geometry::fundamentalForms(line[i].jet).gauss();
        const double w = std::min(farEdgeAt(piece.childEdge, static_cast<double>(i)), mesh.widthAt(i));
        if (beside || piece.farEdgeCut())
            fitting.bend[i] += (beside ? -sign : sign) * 0.5 * w * gauss;
        else
            fitting.scale[i] -= gauss * mesh.width * mesh.width / 8;
    }
    return fitting;
}

FlatLine layFlat(const std::vector<geometry::RowNode>& line,
                 const Fitting& fitting,
                 std::size_t first,
                 std::size_t last) {
    FlatLine flat;
    flat.first = first;
    flat.at.emplace_back(0, 0);
    flat.heading.push_back(0);
    for (std::size_t i = first; i < last; ++i) {
        const double length = geometry::arcLength(line[i], line[i + 1]);
        const double turn = 0.5 * length * (fitting.bend[i] + fitting.bend[i + 1]);
        const double flatLength = 0.5 * length * (fitting.scale[i] + fitting.scale[i + 1]);
        const double chord = flatLength * (std::abs(turn) < 1e-9 ? 1.0 : std::sin(0.5 * turn) / (0.5 * turn));
        const double mid = flat.heading.back() + 0.5 * turn;
        flat.at.push_back(flat.at.back() + chord * Vector2d(std::cos(mid), std::sin(mid)));
        flat.heading.push_back(flat.heading.back() + turn);
    }
    return flat;
}

/// How far a node's column leans toward the stern off square to its edge, rad.
double leanOf(const geometry::RowNode& n) {
    const Eigen::Vector3d run = n.jet.u * n.state.velocity.x() + n.jet.v * n.state.velocity.y();
    return n.alive ? std::asin(std::clamp(run.normalized().dot(n.frame.tangent), -1.0, 1.0)) : 0.0;
}

} // namespace

void flattenStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, geometry::FanSide side) {
    if (piece.parentEdge.empty() || piece.childEdge.empty() || piece.middle.size() < 2)
        return;
    const auto& line = piece.goodLine(mesh);
    const bool beside = piece.part == RowPart::Beside;
    const double base = piece.farEdgeCut() ? 0.0 : 0.5 * mesh.width; // a tapered row lies along its near edge
    double lo = 1e9;
    double hi = 0;
    for (const auto* edge : {&piece.parentEdge, &piece.childEdge, &piece.middle})
        for (const RowPoint& p : *edge) {
            lo = std::min(lo, p.column);
            hi = std::max(hi, p.column);
        }
    auto first = static_cast<std::size_t>(std::max(0.0, std::floor(lo)));
    auto last = std::min(static_cast<std::size_t>(std::ceil(hi)), line.size() - 1);
    while (first < last && !line[first].alive)
        ++first;
    while (last > first && !line[last].alive)
        --last;
    if (last == first)
        return;
    const double sign = side == geometry::FanSide::TowardKeel ? 1.0 : -1.0;
    const FlatLine flat = layFlat(line, fittingOf(piece, mesh, sign), first, last);
    const auto place = [&](const RowPoint& p) {
        if (!beside)
            return flat.place(p.column, sign * (p.distance - base));
        // its good edge is the far one, and the columns are square to the other
        const auto i = std::min(static_cast<std::size_t>(p.column), line.size() - 2);
        const double f = p.column - static_cast<double>(i);
        const double lean = (1 - f) * leanOf(line[i]) + f * leanOf(line[i + 1]);
        return flat.place(p.column, sign * (p.distance - mesh.widthAt(p.column)), sign * lean);
    };

    const Vector2d origin = place(piece.middle.front());
    const Vector2d chord = (place(piece.middle.back()) - origin).normalized();
    const auto turned = [&](const RowPoint& p) {
        const Vector2d d = place(p) - origin;
        return Vector2d(d.dot(chord), d.y() * chord.x() - d.x() * chord.y());
    };
    const auto& upper = side == geometry::FanSide::TowardKeel ? piece.parentEdge : piece.childEdge;
    const auto& lower = side == geometry::FanSide::TowardKeel ? piece.childEdge : piece.parentEdge;
    for (const RowPoint& p : upper)
        strip.outline.push_back(turned(p));
    strip.outlineUpperCount = strip.outline.size();
    for (auto it = lower.rbegin(); it != lower.rend(); ++it)
        strip.outline.push_back(turned(*it));
}

} // namespace sheerlay::core
