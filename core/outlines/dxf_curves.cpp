#include "core/outlines/dxf_curves.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace sheerlay::core {

namespace {

constexpr double flat = 1e-6; // of the drawing's unit, or of a unit vector

/// An arc between two corners; a bulge is the tangent of a quarter of its angle, + counter-clockwise.
void addBulge(std::vector<DrawnPoint>& points, DrawnPoint to, double bulge) {
    constexpr double straight = 1e-9;
    if (points.empty() || std::abs(bulge) < straight) {
        points.push_back(to);
        return;
    }
    const DrawnPoint from = points.back();
    const double sweep = 4 * std::atan(bulge);
    const double h = (1 / bulge - bulge) / 4; // of the chord, from its middle to the centre, to the left
    const DrawnPoint centre{(from.x + to.x) / 2 - h * (to.y - from.y),
                            (from.y + to.y) / 2 + h * (to.x - from.x)};
    const double radius = std::hypot(from.x - centre.x, from.y - centre.y);
    auto arc = arcPoints(centre, radius, radius, std::atan2(from.y - centre.y, from.x - centre.x), sweep);
    arc.back() = to;
    points.insert(points.end(), arc.begin() + 1, arc.end());
}

/// Corners with their bulges, each that of the side behind it.
struct Corner {
    DrawnPoint at;
    double bulge = 0.0;
};

std::vector<DrawnPoint> polyline(const std::vector<Corner>& corners, bool closed) {
    std::vector<DrawnPoint> points;
    for (std::size_t i = 0; i < corners.size(); ++i)
        addBulge(points, corners[i].at, i > 0 ? corners[i - 1].bulge : 0.0);
    if (closed && corners.size() > 1)
        addBulge(points, corners.front().at, corners.back().bulge);
    return points;
}

std::vector<Corner> cornersOf(const DxfEntity& entity) {
    std::vector<Corner> corners;
    for (const DxfPair& pair : entity.pairs) {
        if (pair.code == 10)
            corners.push_back({{pair.number(), 0.0}, 0.0});
        else if (pair.code == 20 && !corners.empty())
            corners.back().at.y = pair.number();
        else if (pair.code == 42 && !corners.empty())
            corners.back().bulge = pair.number();
    }
    return corners;
}

std::vector<DrawnPoint> spline(const DxfEntity& entity) {
    DrawnSpline read;
    read.degree = static_cast<int>(std::clamp(entity.first(71, 3), 0.0, 99.0));
    std::vector<DrawnPoint> through;
    for (const DxfPair& pair : entity.pairs) {
        if (pair.code == 40)
            read.knots.push_back(pair.number());
        else if (pair.code == 41)
            read.weights.push_back(pair.number());
        else if (pair.code == 10)
            read.poles.push_back({pair.number(), 0.0});
        else if (pair.code == 20 && !read.poles.empty())
            read.poles.back().y = pair.number();
        else if (pair.code == 11)
            through.push_back({pair.number(), 0.0});
        else if (pair.code == 21 && !through.empty())
            through.back().y = pair.number();
    }
    // Some programs write only the points it was drawn through; they lie on the curve, and are used alone.
    return read.poles.empty() ? through : splinePoints(read);
}

std::vector<DrawnPoint> arc(const DxfEntity& entity) {
    constexpr double degree = std::numbers::pi / 180;
    const double from = entity.first(50) * degree;
    double sweep = std::fmod(entity.first(51) * degree - from, 2 * std::numbers::pi);
    sweep += sweep <= 0.0 ? 2 * std::numbers::pi : 0.0;
    const double radius = entity.first(40);
    return arcPoints(entity.point(10), radius, radius, from, sweep);
}

/// About its centre by half its long axis; the angles are those of the circle it is a squeezed picture of.
std::vector<DrawnPoint> ellipse(const DxfEntity& entity) {
    const DrawnPoint centre = entity.point(10);
    const DrawnPoint axis = entity.point(11);
    const double ratio = entity.first(40, 1.0) * (seenFromBehind(entity) ? -1.0 : 1.0);
    const double from = entity.first(41);
    double sweep = std::fmod(entity.first(42, 2 * std::numbers::pi) - from, 2 * std::numbers::pi);
    sweep += sweep <= 0.0 ? 2 * std::numbers::pi : 0.0;
    std::vector<DrawnPoint> points = arcPoints({}, 1.0, ratio, from, sweep);
    for (DrawnPoint& p : points)
        p = {centre.x + p.x * axis.x - p.y * axis.y, centre.y + p.x * axis.y + p.y * axis.x};
    return points;
}

std::vector<Corner> verticesOf(std::span<const DxfEntity> vertices) {
    constexpr int helper = 16; // a control point of a polyline that was smoothed
    std::vector<Corner> corners;
    for (const DxfEntity& vertex : vertices)
        if ((vertex.flags() & helper) == 0)
            corners.push_back({vertex.point(10), vertex.first(42)});
    return corners;
}

} // namespace

std::vector<DrawnPoint> dxfCurve(const DxfEntity& entity, std::span<const DxfEntity> vertices) {
    const bool closed = (entity.flags() & 1) != 0;
    if (entity.name == "LINE")
        return {entity.point(10), entity.point(11)};
    if (entity.name == "SPLINE")
        return spline(entity);
    if (entity.name == "ELLIPSE")
        return ellipse(entity);
    std::vector<DrawnPoint> points;
    if (entity.name == "ARC")
        points = arc(entity);
    else if (entity.name == "LWPOLYLINE")
        points = polyline(cornersOf(entity), closed);
    else if (entity.name == "POLYLINE")
        points = polyline(verticesOf(vertices), closed);
    if (seenFromBehind(entity))
        for (DrawnPoint& point : points)
            point.x = -point.x;
    return points;
}

bool leavesThePlane(const DxfEntity& entity) {
    // of a line this is the way it is thick
    if (entity.name != "LINE" && std::max(std::abs(entity.first(210)), std::abs(entity.first(220))) > flat)
        return true;
    if (entity.name == "ELLIPSE") // 31 is of its axis
        return std::abs(entity.first(31)) > flat;
    std::optional<double> z;
    for (const DxfPair& pair : entity.pairs) {
        if (pair.code != 30 && pair.code != 31)
            continue;
        if (z && std::abs(*z - pair.number()) > flat)
            return true;
        z = pair.number();
    }
    return false;
}

bool seenFromBehind(const DxfEntity& entity) {
    return entity.first(230, 1.0) < 0.0;
}

} // namespace sheerlay::core
