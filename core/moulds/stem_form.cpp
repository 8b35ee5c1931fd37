#include "core/moulds/stem_form.hpp"

#include "geometry/trims.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// The part of a line in the centreplane from its end at the head to x = at, the last point on it.
template <class Point, class X>
std::vector<Point>
upTo(std::vector<Point> line, End end, double at, X x, Point (*between)(const Point&, const Point&, double)) {
    const double sign = end == End::Bow ? 1.0 : -1.0;
    if (end == End::Stern)
        std::reverse(line.begin(), line.end());
    std::vector<Point> part;
    for (const Point& p : line) {
        if (sign * (x(p) - at) < 0.0) {
            part.push_back(p);
            continue;
        }
        if (!part.empty()) {
            const double a = x(part.back());
            part.push_back(between(part.back(), p, (at - a) / (x(p) - a)));
        }
        return part;
    }
    return {};
}

EdgePoint edgeBetween(const EdgePoint& a, const EdgePoint& b, double t) {
    return {a.at + t * (b.at - a.at),
            (a.outward + t * (b.outward - a.outward)).normalized(),
            a.bevel + t * (b.bevel - a.bevel)};
}

Vector2d pointBetween(const Vector2d& a, const Vector2d& b, double t) {
    return a + t * (b - a);
}

std::vector<EdgePoint> wholeEdge(const TrimmedSurface& hull) {
    std::vector<EdgePoint> edge;
    for (const Vector2d& uv : hull.outline.profile) {
        const geometry::SurfaceJet jet = hull.surface.jet(uv.x(), uv.y());
        const Vector3d n = jet.normal();
        EdgePoint e;
        e.at = {jet.p.x(), jet.p.z()};
        e.outward = Vector2d(n.x(), n.z()).normalized();
        e.bevel = std::asin(std::clamp(n.y(), -1.0, 1.0));
        edge.push_back(e);
    }
    return edge;
}

/// Where the hull's inside is half a board's thickness away from the centreplane.
std::vector<Vector2d> wholeBevelLine(const TrimmedSurface& hull, double halfThickness) {
    geometry::Trims trims = hull.trims;
    const double siding = trims.siding.at(0.5 * (hull.profile.front().x() + hull.profile.back().x()));
    if (siding >= halfThickness)
        return {}; // the flat is as wide as the board
    trims.siding = trims.siding.widened(halfThickness - siding);
    const auto outline = geometry::traceOutline(hull.surface, trims);
    if (!outline)
        return {};
    std::vector<Vector2d> line;
    for (const Vector2d& uv : outline->profile) {
        const Vector3d p = hull.surface.point(uv.x(), uv.y());
        line.emplace_back(p.x(), p.z());
    }
    return line;
}

} // namespace

std::optional<double> stemReach(const LoftedHull& hull, End end) {
    const TrimmedSurface& inside = hull.moulds;
    if (end == End::Bow ? inside.trims.bow.has_value() : inside.trims.stern.has_value())
        return std::nullopt;
    std::vector<Vector3d> line = inside.profile;
    if (end == End::Stern)
        std::reverse(line.begin(), line.end());
    // from amidships outward, so that a plumb or recurved head is not looked at first
    for (std::size_t i = line.size() / 2; i > 0; --i) {
        const Vector3d step = line[i - 1] - line[i];
        if (step.z() > std::abs(step.x()))
            return line[i].x();
    }
    return line.front().x();
}

std::optional<StemForm>
stemForm(const Project& project, const LoftedHull& hull, End end, const Mould& against) {
    StemForm form;
    form.end = end;
    form.thickness = project.moulds.thickness;
    form.mould = against.name;
    form.endsAt =
        end == End::Bow ? std::min(against.x, against.farFace()) : std::max(against.x, against.farFace());
    form.foot = against.foot;
    form.edge = upTo(
        wholeEdge(hull.moulds), end, form.endsAt, [](const EdgePoint& e) { return e.at.x(); }, edgeBetween);
    if (form.edge.size() < 3)
        return std::nullopt;
    form.bevelLine = upTo(
        wholeBevelLine(hull.moulds, form.thickness / 2),
        end,
        form.endsAt,
        [](const Vector2d& p) { return p.x(); },
        pointBetween);
    for (const EdgePoint& e : form.edge)
        form.outline.push_back(e.at);
    form.outline.emplace_back(form.endsAt, form.foot);
    form.outline.emplace_back(form.edge.front().at.x(), form.foot);
    return form;
}

} // namespace sheerlay::core
