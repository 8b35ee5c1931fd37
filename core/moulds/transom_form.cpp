#include "core/moulds/transom_form.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr int edgePoints = 400;
constexpr double solved = 1e-7; // mm off the plane

/// Points of the surface on a plane from the sheer down to the centreplane; empty where it doesn't come
/// there.
std::vector<geometry::SurfaceJet>
section(const TrimmedSurface& hull, const geometry::TransomPlane& plane, const Vector2d& start, double vEnd) {
    std::vector<geometry::SurfaceJet> line;
    double u = start.x();
    const double step = vEnd / edgePoints;
    const auto at = [&](double v) -> std::optional<geometry::SurfaceJet> {
        for (int round = 0; round < 50; ++round) {
            const geometry::SurfaceJet jet = hull.surface.jet(u, v);
            const double off = jet.p.x() - plane.xAt(jet.p.z());
            if (std::abs(off) < solved)
                return jet;
            const double slope = jet.u.x() - plane.slope * jet.u.z();
            if (std::abs(slope) < 1e-6)
                return std::nullopt;
            u -= std::clamp(off / slope, -50.0, 50.0);
        }
        return std::nullopt;
    };
    const auto beyond = [&](const geometry::SurfaceJet& jet) {
        return jet.p.y() - hull.trims.siding.at(jet.p.x());
    };
    for (int i = 0; i <= 2 * edgePoints; ++i) {
        auto jet = at(i * step);
        if (!jet)
            return {};
        if (beyond(*jet) > 0.0 || line.empty()) {
            line.push_back(*jet);
            continue;
        }
        double inside = (i - 1) * step, outside = i * step; // halve up to the centreplane
        for (int round = 0; round < 40; ++round) {
            const double half = 0.5 * (inside + outside);
            jet = at(half);
            if (!jet)
                return {};
            (beyond(*jet) > 0.0 ? inside : outside) = half;
        }
        line.push_back(*jet);
        return line;
    }
    return {};
}

} // namespace

double TransomForm::rake() const noexcept {
    return std::atan(-slope);
}

bool TransomForm::fullerInside() const {
    double sum = 0.0;
    for (const EdgePoint& e : edge)
        sum += e.bevel;
    return sum < 0.0;
}

std::optional<TransomForm> transomForm(const Project& project, const LoftedHull& hull, End end) {
    const TrimmedSurface& moulds = hull.moulds;
    const auto& plane = end == End::Bow ? moulds.trims.bow : moulds.trims.stern;
    if (!plane || moulds.outline.sheer.empty() || moulds.outline.profile.empty())
        return std::nullopt;
    const bool bow = end == End::Bow;
    const Vector2d start = bow ? moulds.outline.sheer.front() : moulds.outline.sheer.back();
    const double vEnd = (bow ? moulds.outline.profile.front() : moulds.outline.profile.back()).y();
    TransomForm form;
    form.end = end;
    form.thickness = project.moulds.thickness;
    form.slope = plane->slope;
    form.level = plane->level;
    const double steep = std::hypot(1.0, plane->slope);
    const Vector3d along = Vector3d(plane->slope, 0.0, 1.0) / steep;
    const Vector3d into = (bow ? 1.0 : -1.0) * Vector3d(1.0, 0.0, -plane->slope) / steep;
    const Vector3d origin(plane->at, 0.0, plane->level);
    const auto onBoard = [&](const Vector3d& p) { return Vector2d(p.y(), (p - origin).dot(along)); };

    const auto outer = section(moulds, *plane, start, vEnd);
    geometry::TransomPlane innerPlane = *plane;
    innerPlane.at += (bow ? 1.0 : -1.0) * form.thickness * steep;
    const auto inner = section(moulds, innerPlane, start, vEnd);
    if (outer.size() < 3 || inner.size() < 3)
        return std::nullopt;
    for (const geometry::SurfaceJet& jet : outer) {
        const Vector3d n = jet.normal();
        const Vector2d inPlane(n.y(), n.dot(along));
        form.edge.push_back({onBoard(jet.p), inPlane.normalized(), std::atan2(n.dot(into), inPlane.norm())});
    }
    for (const geometry::SurfaceJet& jet : inner)
        form.inside.push_back(onBoard(jet.p));
    form.xAtSheer = outer.front().p.x();
    form.sheerHeight = outer.front().p.z();
    return form;
}

} // namespace sheerlay::core
