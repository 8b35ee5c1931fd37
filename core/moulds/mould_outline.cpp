#include "core/moulds/mould_outline.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr int edgePoints = 400;    // a chord of 2 mm on a bilge of 50 mm radius is 0.01 mm short
constexpr double leastHeight = 20; // mm, of a mould worth sawing
constexpr double leastBreadth = 5; // mm, of half a mould
constexpr double horn = 25;        // mm, the edge goes on plumb above the sheer for a clamp to hold

/// The edge outside half-breadth `from`: a stem form takes the middle.
std::vector<EdgePoint> cutAt(const std::vector<EdgePoint>& edge, double from) {
    std::vector<EdgePoint> left;
    for (std::size_t i = 0; i < edge.size(); ++i) {
        if (edge[i].at.x() >= from) {
            left.push_back(edge[i]);
            continue;
        }
        if (left.empty())
            continue;
        const EdgePoint& a = left.back();
        const double t = (a.at.x() - from) / (a.at.x() - edge[i].at.x());
        EdgePoint end;
        end.at = a.at + t * (edge[i].at - a.at);
        end.outward = (a.outward + t * (edge[i].outward - a.outward)).normalized();
        end.bevel = a.bevel + t * (edge[i].bevel - a.bevel);
        left.push_back(end);
        break;
    }
    return left;
}

} // namespace

EdgePoint edgePointOf(const SectionPoint& p, double into) {
    const Vector2d inPlane(p.normal.y(), p.normal.z());
    EdgePoint e;
    e.at = {p.point.y(), p.point.z()};
    e.outward = inPlane.normalized();
    e.bevel = std::atan2(p.normal.x() * into, inPlane.norm());
    return e;
}

std::optional<Mould> mouldOutline(const Project& project, const LoftedHull& hull, const MouldPlace& place) {
    Mould mould;
    mould.x = place.x;
    mould.forward = place.forward;
    mould.thickness = project.moulds.thickness;
    mould.foot = place.foot;
    mould.stemCut = place.stemCut;
    for (const SectionPoint& p : sectionWithNormals(hull.moulds, place.x, edgePoints))
        mould.edge.push_back(edgePointOf(p, place.forward ? -1.0 : 1.0));
    if (place.stemCut > 0.0)
        mould.edge = cutAt(mould.edge, place.stemCut);
    if (mould.edge.size() < 3)
        return std::nullopt;
    const Vector2d top = mould.edge.front().at;
    const Vector2d bottom = mould.edge.back().at;
    double widest = 0.0;
    for (const EdgePoint& e : mould.edge)
        widest = std::max(widest, e.at.x());
    if (top.y() - bottom.y() < leastHeight || widest - place.stemCut < leastBreadth)
        return std::nullopt;

    mould.sheer = top.y();
    mould.keel = bottom.y();
    mould.legHalfBreadth = std::min(top.x(), project.moulds.strongback.width / 2);
    for (const EdgePoint& e : mould.edge)
        mould.outline.push_back(e.at);
    const auto corner = [&](double y, double z) {
        if ((mould.outline.back() - Vector2d(y, z)).norm() > 1e-6)
            mould.outline.emplace_back(y, z);
    };
    corner(place.stemCut, bottom.y());
    corner(place.stemCut, place.foot);
    corner(mould.legHalfBreadth, place.foot);
    const double shoulder = std::min(top.y() + horn, place.foot);
    if (mould.legHalfBreadth < top.x()) {
        corner(mould.legHalfBreadth, shoulder);
        corner(top.x(), shoulder);
    }
    return mould;
}

} // namespace sheerlay::core
