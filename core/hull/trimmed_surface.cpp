#include "core/hull/trimmed_surface.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Walks the section in the plane x = const down from the sheer: parameters and points at steps of about
/// `step` in v.
struct SectionWalk {
    std::vector<Vector2d> uv;
    std::vector<Vector3d> points;
    std::vector<double> girth;
};

/// u with surface.x(u, v) = x, starting from a near one.
double uAtX(const geometry::TensorSurface& surface, double x, double u, double v) {
    for (int i = 0; i < 12; ++i) {
        const geometry::SurfaceJet j = surface.jet(u, v);
        const double e = j.p.x() - x;
        if (std::abs(e) < 1e-10)
            break;
        u -= e / j.u.x();
    }
    return u;
}

bool inside(const TrimmedSurface& h, const Vector2d& uv, const Vector3d& p) {
    return h.trims.violated(uv.y(), p) == geometry::Trim::None;
}

SectionWalk walkSection(const TrimmedSurface& h, double x, double step) {
    SectionWalk walk;
    const double vEnd = h.surface.knotsV().last();
    double u = x;
    const auto at = [&](double v) {
        u = uAtX(h.surface, x, u, v);
        return Vector2d(u, v);
    };
    // past a blunt end the plane misses the surface at this v, and the search for it runs away
    const auto holds = [&](const Vector2d& uv) {
        const Vector3d p = h.surface.point(uv.x(), uv.y());
        return std::abs(p.x() - x) < 1e-6 && inside(h, uv, p);
    };
    // a corner is a point of the section, whatever the steps are
    const double corner = h.surface.crease().value_or(vEnd + 2 * step);
    const auto after = [&](double from) {
        return from < corner && from + step > corner ? corner : from + step;
    };
    const auto push = [&](const Vector2d& uv) {
        const Vector3d p = h.surface.point(uv.x(), uv.y());
        walk.girth.push_back(walk.points.empty() ? 0.0 : walk.girth.back() + (p - walk.points.back()).norm());
        walk.uv.push_back(uv);
        walk.points.push_back(p);
    };
    // near a raked end the section may begin below the sheer
    double v = 0;
    bool in = false;
    double before = 0;
    for (; v <= vEnd && !in; before = v, v = after(v)) {
        const Vector2d uv = at(v);
        in = holds(uv) && h.outline.region.contains(uv.x(), uv.y() + 1e-6);
        if (in)
            break;
        if (!std::isfinite(u) || std::abs(u - x) > h.length)
            u = x;
    }
    if (!in)
        return walk;
    const auto boundary = [&](Vector2d good, double bad) {
        for (int i = 0; i < 40; ++i) {
            const double m = 0.5 * (good.y() + bad);
            u = good.x();
            if (const Vector2d uv = at(m); holds(uv))
                good = uv;
            else
                bad = m;
        }
        u = good.x();
        return good;
    };
    if (v > 0)
        push(boundary({u, v}, before));
    Vector2d last(u, v);
    for (; v <= vEnd; v = after(v)) {
        const Vector2d uv = at(v);
        if (!holds(uv)) {
            push(boundary(last, v));
            break;
        }
        push(uv);
        last = uv;
    }
    return walk;
}

} // namespace

Expected<TrimmedSurface, std::string> trimSurface(geometry::TensorSurface surface, geometry::Trims trims) {
    TrimmedSurface h;
    h.surface = std::move(surface);
    h.trims = std::move(trims);
    auto outline = geometry::traceOutline(h.surface, h.trims);
    // a plumb stem on a straight keel makes the half-breadth a saddle with a level near 0 at their corner;
    // when the keel line runs on through it, a hair's breadth of siding leads it round the corner
    for (const double hair : {0.02, 0.05, 0.1, 0.2, 0.4}) {
        if (outline)
            break;
        geometry::Trims narrowed = h.trims;
        narrowed.siding = narrowed.siding.widened(hair);
        if (auto again = geometry::traceOutline(h.surface, narrowed)) {
            outline = std::move(again);
            h.trims = std::move(narrowed);
        }
    }
    if (!outline)
        return unexpected(outline.error());
    h.outline = std::move(outline.value());
    double lo = 1e300;
    double hi = -1e300;
    const auto see = [&](const Vector2d& uv) {
        const Vector3d p = h.surface.point(uv.x(), uv.y());
        lo = std::min(lo, p.x());
        hi = std::max(hi, p.x());
        return p;
    };
    for (const Vector2d& uv : h.outline.sheer)
        h.sheer.push_back(see(uv));
    for (const Vector2d& uv : h.outline.profile)
        h.profile.push_back(see(uv));
    h.length = hi - lo;
    h.halfArea = geometry::areaInside(h.surface, h.outline.region);

    // widest section: coarse search, then by thirds about the best
    const double margin = 0.02 * h.length;
    double best = 0.5 * (lo + hi);
    constexpr int coarse = 24;
    for (int i = 0; i <= coarse; ++i) {
        const double x = lo + margin + (h.length - 2 * margin) * i / coarse;
        const double g = halfGirthAt(h, x);
        if (g > h.halfGirthMax) {
            h.halfGirthMax = g;
            best = x;
        }
        for (const Vector3d& p : walkSection(h, x, 20).points)
            h.beam = std::max(h.beam, 2 * p.y());
    }
    double a = std::max(lo + margin, best - h.length / coarse);
    double b = std::min(hi - margin, best + h.length / coarse);
    for (int i = 0; i < 16; ++i) {
        const double third = (b - a) / 3;
        if (halfGirthAt(h, a + third) < halfGirthAt(h, b - third))
            a += third;
        else
            b -= third;
    }
    h.halfGirthMaxX = 0.5 * (a + b);
    h.halfGirthMax = halfGirthAt(h, h.halfGirthMaxX);
    // beam: the coarse sections lie close to the widest one; refine over the sheer and the widest section's
    // neighbours
    for (const double x : {h.halfGirthMaxX - h.length / 48, h.halfGirthMaxX, h.halfGirthMaxX + h.length / 48})
        for (const Vector3d& p : walkSection(h, x, 5).points)
            h.beam = std::max(h.beam, 2 * p.y());
    return h;
}

double halfGirthAt(const TrimmedSurface& hull, double x) {
    const SectionWalk walk = walkSection(hull, x, 8);
    return walk.girth.empty() ? 0.0 : walk.girth.back();
}

Vector2d parametersAtGirth(const TrimmedSurface& hull, double x, double girth) {
    const SectionWalk walk = walkSection(hull, x, 2);
    if (walk.uv.empty())
        return {x, 0};
    for (std::size_t i = 1; i < walk.girth.size(); ++i)
        if (girth <= walk.girth[i]) {
            const double f = (girth - walk.girth[i - 1]) / (walk.girth[i] - walk.girth[i - 1]);
            return walk.uv[i - 1] + f * (walk.uv[i] - walk.uv[i - 1]);
        }
    return walk.uv.back();
}

namespace {

SectionWalk walkInPoints(const TrimmedSurface& hull, double x, int points) {
    const double rough = std::max(halfGirthAt(hull, x), 1.0);
    return walkSection(hull, x, std::max(rough / std::max(points, 2), 0.5));
}

} // namespace

std::vector<Vector3d> sectionAt(const TrimmedSurface& hull, double x, int points) {
    return walkInPoints(hull, x, points).points;
}

std::vector<SectionPoint> sectionWithNormals(const TrimmedSurface& hull, double x, int points) {
    const SectionWalk walk = walkInPoints(hull, x, points);
    std::vector<SectionPoint> section;
    for (std::size_t i = 0; i < walk.points.size(); ++i)
        section.push_back({walk.points[i], hull.surface.jet(walk.uv[i].x(), walk.uv[i].y()).normal()});
    return section;
}

} // namespace sheerlay::core
