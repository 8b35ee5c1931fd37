#include "core/fitout/hull_faces.hpp"

#include "core/hull/trimmed_surface.hpp"
#include "geometry/offset_surface.hpp"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double thinnest = 1e-6;    // mm; less is no offset
constexpr double searchStep = 8.0;   // mm of girth, of the search for a height
constexpr double exactEnough = 1e-9; // mm
constexpr double farOff = 40.0;      // mm of parameter a search may run away from where it began, a step

Expected<TrimmedSurface, std::string> moved(const TrimmedSurface& moulds, double distance) {
    if (std::abs(distance) < thinnest)
        return moulds;
    return trimSurface(geometry::offsetSurface(moulds.surface, distance), moulds.trims);
}

FacePoint facePoint(const TrimmedSurface& face, const Vector2d& uv) {
    const geometry::SurfaceJet jet = face.surface.jet(uv.x(), uv.y());
    return {uv, jet.p, jet.normal()};
}

/// u at which the line v = const comes to x.
double alongTo(const TrimmedSurface& face, double x, double v, double u) {
    for (int i = 0; i < 20; ++i) {
        const geometry::SurfaceJet jet = face.surface.jet(u, v);
        const double off = jet.p.x() - x;
        if (std::abs(off) < exactEnough)
            break;
        u -= off / jet.u.x();
    }
    return u;
}

std::optional<FacePoint> newton(const TrimmedSurface& face, double x, double z, Vector2d uv) {
    for (int i = 0; i < 30; ++i) {
        const geometry::SurfaceJet jet = face.surface.jet(uv.x(), uv.y());
        const Vector2d off(jet.p.x() - x, jet.p.z() - z);
        if (off.norm() < exactEnough)
            return facePoint(face, uv);
        Matrix2d slope;
        slope << jet.u.x(), jet.v.x(), jet.u.z(), jet.v.z();
        Vector2d step = slope.inverse() * off;
        if (!step.allFinite())
            return std::nullopt;
        if (step.norm() > farOff)
            step *= farOff / step.norm();
        uv -= step;
    }
    return std::nullopt;
}

bool belongs(const TrimmedSurface& face, const FacePoint& p) {
    constexpr double rounding = 1e-6; // mm, so that a point on the edge counts
    return p.uv.y() > -rounding && p.point.y() > face.trims.siding.at(p.point.x()) - rounding;
}

} // namespace

Expected<HullFaces, std::string> facesOf(const Project& project, const LoftedHull& hull) {
    const FitoutChoices choices = project.fitout.value_or(FitoutChoices{});
    auto inside = moved(hull.moulds, -choices.glassInside);
    if (!inside)
        return unexpected("the inside of the hull can't be found: " + inside.error());
    auto outside = moved(hull.moulds, project.strips.thickness + choices.glassOutside);
    if (!outside)
        return unexpected("the outside of the hull can't be found: " + outside.error());
    HullFaces faces{std::move(*inside), std::move(*outside), 1e300, -1e300};
    for (const auto* line : {&hull.drawn.sheer, &hull.drawn.profile})
        for (const Vector3d& p : *line) {
            faces.forward = std::min(faces.forward, p.x());
            faces.aft = std::max(faces.aft, p.x());
        }
    return faces;
}

std::optional<FacePoint>
acrossAt(const TrimmedSurface& face, double x, double z, std::optional<Vector2d> near) {
    if (near) {
        const auto found = newton(face, x, z, *near);
        return found && belongs(face, *found) ? found : std::nullopt;
    }
    double u = x;
    double above = 0.0;
    for (double v = 0.0; v <= face.surface.knotsV().last(); v += searchStep) {
        u = alongTo(face, x, v, u);
        const Vector3d p = face.surface.point(u, v);
        if (v > 0.0 && p.z() <= z && above >= z) {
            const auto found = newton(face, x, z, {u, v - searchStep / 2});
            return found && belongs(face, *found) ? found : std::nullopt;
        }
        if (p.z() == z)
            return facePoint(face, {u, v});
        above = p.z();
    }
    return std::nullopt;
}

std::optional<FacePoint> sheerAt(const TrimmedSurface& face, double x) {
    if (x < face.sheer.front().x() - exactEnough || x > face.sheer.back().x() + exactEnough)
        return std::nullopt;
    const FacePoint p = facePoint(face, {alongTo(face, x, 0.0, x), 0.0});
    return p;
}

std::optional<double> bottomAt(const TrimmedSurface& face, double x) {
    std::optional<double> lowest;
    for (std::size_t i = 1; i < face.profile.size(); ++i) {
        const Vector3d& a = face.profile[i - 1];
        const Vector3d& b = face.profile[i];
        if ((a.x() - x) * (b.x() - x) > 0.0 || a.x() == b.x())
            continue;
        const double z = a.z() + (x - a.x()) / (b.x() - a.x()) * (b.z() - a.z());
        lowest = std::min(lowest.value_or(z), z);
    }
    return lowest;
}

double girthDownTo(const TrimmedSurface& face, double x, double z) {
    const auto section = sectionAt(face, x, 400);
    double girth = 0.0;
    for (std::size_t i = 1; i < section.size(); ++i) {
        const Vector3d &a = section[i - 1], &b = section[i];
        if (a.z() >= z && b.z() <= z && a.z() > b.z())
            return girth + (b - a).norm() * (a.z() - z) / (a.z() - b.z());
        girth += (b - a).norm();
    }
    return girth;
}

FacePoint nearestOn(const TrimmedSurface& face, const Vector3d& point, Vector2d near) {
    for (int i = 0; i < 20; ++i) {
        const geometry::SurfaceJet jet = face.surface.jet(near.x(), near.y());
        const Vector3d off = point - jet.p;
        Matrix2d metric;
        metric << jet.u.dot(jet.u), jet.u.dot(jet.v), jet.u.dot(jet.v), jet.v.dot(jet.v);
        const Vector2d step = metric.inverse() * Vector2d(off.dot(jet.u), off.dot(jet.v));
        near += step;
        if (step.norm() < exactEnough)
            break;
    }
    return facePoint(face, near);
}

} // namespace sheerlay::core
