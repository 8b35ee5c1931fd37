#include "core/planking/centre_piece.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

using Eigen::Vector2d;
using Eigen::Vector3d;

Strip centrePiece(const RowPiece& piece, int row, const LayingContext& context) {
    Strip strip;
    strip.side = Side::Centre;
    strip.row = row;
    strip.kind = StripKind::Shutter;
    for (const RowPoint& p : piece.parentEdge) {
        strip.upperEdge.push_back(p.p);
        strip.lowerEdge.emplace_back(p.p.x(), -p.p.y(), p.p.z());
    }
    const geometry::TensorSurface& surface = context.part->surface;
    // the keel line laid straight: by symmetry it has no edge bend
    std::vector<double> along;
    double s = 0;
    for (std::size_t i = 0; i < piece.childEdge.size(); ++i) {
        if (i > 0)
            s += (piece.childEdge[i].p - piece.childEdge[i - 1].p).norm();
        along.push_back(s);
    }
    std::vector<Vector2d> starboard;
    std::size_t k = 0;
    for (std::size_t i = 0; i < piece.parentEdge.size(); ++i) {
        const RowPoint& edge = piece.parentEdge[i];
        // the centreline point on the same column; columns of both lists rise together
        while (k + 2 < piece.childEdge.size() && piece.childEdge[k + 1].column < edge.column)
            ++k;
        const RowPoint& a = piece.childEdge[k];
        const RowPoint& b = piece.childEdge[std::min(k + 1, piece.childEdge.size() - 1)];
        const double span = b.column - a.column;
        const double f = span > 1e-12 ? std::clamp((edge.column - a.column) / span, 0.0, 1.0) : 0.0;
        const Vector3d foot = a.p + f * (b.p - a.p);
        const double at = along[k] + f * (along[std::min(k + 1, along.size() - 1)] - along[k]);
        const double r = a.distance + f * (b.distance - a.distance) - edge.distance;
        const Vector3d line = (b.p - a.p).normalized();
        const Vector3d way = foot - edge.p;
        const double slip = way.norm() > 1e-9 ? std::clamp(way.normalized().dot(line), -1.0, 1.0) : 0.0;
        const bool tip =
            (i == 0 && piece.bowPointed()) || (i + 1 == piece.parentEdge.size() && piece.sternPointed());
        starboard.emplace_back(tip ? (i == 0 ? 0.0 : s) : at - r * slip,
                               tip ? 0.0 : std::max(0.0, r) * std::sqrt(1 - slip * slip));
    }
    // seen from outside, upside down, bow to the left: the starboard edge lies below the keel line
    for (const Vector2d& p : starboard)
        strip.outline.emplace_back(p.x(), -p.y());
    strip.outlineUpperCount = strip.outline.size();
    for (auto it = starboard.rbegin(); it != starboard.rend(); ++it)
        strip.outline.push_back(*it);

    for (std::size_t i = 0; i < piece.childEdge.size(); ++i) {
        const RowPoint& c = piece.childEdge[i];
        const geometry::SurfaceJet j = surface.jet(c.uv.x(), c.uv.y());
        const std::size_t before = i > 0 ? i - 1 : 0;
        const std::size_t behind = std::min(i + 1, piece.childEdge.size() - 1);
        const geometry::Frame frame =
            geometry::frameAlong(j, piece.childEdge[behind].p - piece.childEdge[before].p);
        const geometry::StripShape shape = geometry::stripShape(j, frame);
        double width = 2 * starboard.back().y();
        for (std::size_t q = 1; q < starboard.size(); ++q)
            if (along[i] <= starboard[q].x()) {
                const double f = (along[i] - starboard[q - 1].x()) /
                                 std::max(1e-9, starboard[q].x() - starboard[q - 1].x());
                width = 2 * (starboard[q - 1].y() + f * (starboard[q].y() - starboard[q - 1].y()));
                break;
            }
        strip.middle.push_back({c.p.x(), c.p.y(), c.p.z()});
        strip.middleNormal.push_back(Vector3d(frame.normal.x(), 0, frame.normal.z()).normalized());
        strip.samples.push_back({along[i], c.p.x(), std::max(0.0, width), 0.0, 0.0, shape.bend});
        if (std::abs(shape.bend) > 1e-9 &&
            (!strip.bendMinRadius || 1 / std::abs(shape.bend) < *strip.bendMinRadius)) {
            strip.bendMinRadius = 1 / std::abs(shape.bend);
            strip.bendAtX = c.p.x();
        }
        strip.strainMax = std::max(strip.strainMax, context.strength->strain(0, shape.bend, 0));
    }
    strip.length = s;
    for (const StripSample& sample : strip.samples)
        if (strip.widths.empty() || sample.s - strip.widths.back()[0] >= 50 ||
            &sample == &strip.samples.back())
            strip.widths.push_back({sample.s, sample.width});
    if (!strip.samples.empty()) {
        strip.edgeBend.atX = strip.twistAtX = strip.strainAtX = strip.samples[strip.samples.size() / 2].x;
        if (!strip.bendMinRadius)
            strip.bendAtX = strip.edgeBend.atX;
    }
    return strip;
}

} // namespace sheerlay::core
