#include "geometry/trims.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::geometry {

HalfSiding::HalfSiding(std::vector<std::array<double, 2>> points) : m_points(std::move(points)) {
    const std::size_t n = m_points.size();
    if (n == 0)
        return;
    m_constant = m_points.front()[1];
    m_slopes.assign(n, 0.0);
    // Fritsch-Carlson: harmonic mean of the neighbouring slopes keeps the curve monotone between points
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double h0 = m_points[i][0] - m_points[i - 1][0];
        const double h1 = m_points[i + 1][0] - m_points[i][0];
        const double d0 = (m_points[i][1] - m_points[i - 1][1]) / h0;
        const double d1 = (m_points[i + 1][1] - m_points[i][1]) / h1;
        if (d0 * d1 > 0)
            m_slopes[i] = 3 * (h0 + h1) / ((2 * h1 + h0) / d0 + (h1 + 2 * h0) / d1);
    }
}

double HalfSiding::at(double x) const noexcept {
    if (m_points.size() < 2)
        return m_constant;
    if (x <= m_points.front()[0])
        return m_points.front()[1];
    if (x >= m_points.back()[0])
        return m_points.back()[1];
    const auto it = std::upper_bound(
        m_points.begin(), m_points.end(), x, [](double value, const auto& p) { return value < p[0]; });
    const auto i = static_cast<std::size_t>(it - m_points.begin()) - 1;
    const double h = m_points[i + 1][0] - m_points[i][0];
    const double t = (x - m_points[i][0]) / h;
    const double t2 = t * t;
    const double t3 = t2 * t;
    return (2 * t3 - 3 * t2 + 1) * m_points[i][1] + (t3 - 2 * t2 + t) * h * m_slopes[i] +
           (3 * t2 - 2 * t3) * m_points[i + 1][1] + (t3 - t2) * h * m_slopes[i + 1];
}

double HalfSiding::slopeAt(double x) const noexcept {
    if (m_points.size() < 2)
        return 0.0;
    constexpr double h = 1e-3;
    return (at(x + h) - at(x - h)) / (2 * h);
}

HalfSiding HalfSiding::shifted(double dx) const {
    HalfSiding moved = *this;
    for (auto& p : moved.m_points)
        p[0] += dx;
    return moved;
}

HalfSiding HalfSiding::widened(double dy) const {
    HalfSiding wide = *this;
    wide.m_constant += dy;
    for (auto& p : wide.m_points)
        p[1] += dy;
    return wide;
}

namespace {

/// Value and slope of the cubic Hermite through two nodes.
std::array<double, 2> between(const UpperEdge::Node& a, const UpperEdge::Node& b, double x) {
    const double h = b.x - a.x;
    const double t = (x - a.x) / h;
    const double t2 = t * t;
    const double t3 = t2 * t;
    return {(2 * t3 - 3 * t2 + 1) * a.v + (t3 - 2 * t2 + t) * h * a.slope + (3 * t2 - 2 * t3) * b.v +
                (t3 - t2) * h * b.slope,
            (6 * t2 - 6 * t) * (a.v - b.v) / h + (3 * t2 - 4 * t + 1) * a.slope + (3 * t2 - 2 * t) * b.slope};
}

std::array<double, 2> along(const std::vector<UpperEdge::Node>& nodes, double x) {
    if (x <= nodes.front().x)
        return {nodes.front().v + nodes.front().slope * (x - nodes.front().x), nodes.front().slope};
    if (x >= nodes.back().x)
        return {nodes.back().v + nodes.back().slope * (x - nodes.back().x), nodes.back().slope};
    const auto next = std::upper_bound(
        nodes.begin(), nodes.end(), x, [](double value, const UpperEdge::Node& n) { return value < n.x; });
    return between(*(next - 1), *next, x);
}

} // namespace

double UpperEdge::at(double x) const noexcept {
    return along(m_nodes, x)[0];
}

double UpperEdge::slopeAt(double x) const noexcept {
    return along(m_nodes, x)[1];
}

double Trims::value(Trim trim, double v, const Eigen::Vector3d& p) const noexcept {
    switch (trim) {
    case Trim::Sheer:
        return upper ? v - upper->at(p.x()) : v;
    case Trim::Centre:
        return p.y() - siding.at(p.x());
    case Trim::BowPlane:
        return bow ? p.x() - bow->xAt(p.z()) : 1e9;
    case Trim::SternPlane:
        return stern ? stern->xAt(p.z()) - p.x() : 1e9;
    case Trim::None:
        break;
    }
    return 1e9;
}

Eigen::Vector2d Trims::gradient(Trim trim, const SurfaceJet& j) const {
    switch (trim) {
    case Trim::Sheer:
        if (upper) {
            const double slope = upper->slopeAt(j.p.x());
            return {-slope * j.u.x(), 1 - slope * j.v.x()};
        }
        return {0, 1};
    case Trim::Centre: {
        const double h = siding.slopeAt(j.p.x());
        return {j.u.y() - h * j.u.x(), j.v.y() - h * j.v.x()};
    }
    case Trim::BowPlane:
        return bow ? Eigen::Vector2d(j.u.x() - bow->slope * j.u.z(), j.v.x() - bow->slope * j.v.z())
                   : Eigen::Vector2d(0, 0);
    case Trim::SternPlane:
        return stern ? Eigen::Vector2d(stern->slope * j.u.z() - j.u.x(), stern->slope * j.v.z() - j.v.x())
                     : Eigen::Vector2d(0, 0);
    case Trim::None:
        break;
    }
    return {0, 0};
}

Trim Trims::violated(double v, const Eigen::Vector3d& p) const noexcept {
    Trim worst = Trim::None;
    double least = 0.0;
    for (const Trim t : {Trim::Sheer, Trim::Centre, Trim::BowPlane, Trim::SternPlane})
        if (const double d = value(t, v, p); d < least) {
            least = d;
            worst = t;
        }
    return worst;
}

namespace {

constexpr double marchStep = 5.0; // mm; chord error under 0.02 mm on a 200 mm radius

struct Contour {
    const TensorSurface& surface;
    const Trims& trims;

    [[nodiscard]] double centre(const Eigen::Vector2d& uv) const {
        const Eigen::Vector3d p = surface.point(uv.x(), uv.y());
        return p.y() - trims.siding.at(p.x());
    }
    [[nodiscard]] double plane(Trim which, const Eigen::Vector2d& uv) const {
        return trims.value(which, uv.y(), surface.point(uv.x(), uv.y()));
    }
    struct Gradient {
        double value;
        Eigen::Vector2d slope;
    };
    [[nodiscard]] Gradient gradient(const Eigen::Vector2d& uv) const {
        const SurfaceJet j = surface.jet(uv.x(), uv.y());
        return {j.p.y() - trims.siding.at(j.p.x()), trims.gradient(Trim::Centre, j)};
    }
    [[nodiscard]] Eigen::Vector2d corrected(Eigen::Vector2d uv) const {
        for (int i = 0; i < 8; ++i) {
            const Gradient g = gradient(uv);
            if (std::abs(g.value) < 1e-10)
                break;
            uv -= g.slope * (g.value / g.slope.squaredNorm());
        }
        return uv;
    }
};

/// Root of f between a (f > 0) and b (f <= 0).
template <class F> double bisect(F f, double a, double b) {
    for (int i = 0; i < 60; ++i) {
        const double m = 0.5 * (a + b);
        (f(m) > 0 ? a : b) = m;
    }
    return 0.5 * (a + b);
}

/// Marches from amidships to one end; `sign` -1 to the bow, +1 to the stern. Empty when it leaves the domain.
std::vector<Eigen::Vector2d> march(const Contour& c, Eigen::Vector2d at, int sign, bool hasPlane) {
    const Trim planeTrim = sign < 0 ? Trim::BowPlane : Trim::SternPlane;
    const UniformKnots& ku = c.surface.knotsU();
    const UniformKnots& kv = c.surface.knotsV();
    std::vector<Eigen::Vector2d> line = {at};
    Eigen::Vector2d heading(sign, 0);
    for (int i = 0; i < 20000; ++i) {
        const auto g = c.gradient(at);
        Eigen::Vector2d along(-g.slope.y(), g.slope.x());
        if (along.norm() < 1e-12)
            return {};
        along.normalize();
        if (along.dot(heading) < 0)
            along = -along;
        heading = along;
        const Eigen::Vector2d next = c.corrected(at + marchStep * along);
        if (!next.allFinite() || next.x() < ku.first || next.x() > ku.last() || next.y() > kv.last())
            return {};
        if (hasPlane && c.plane(planeTrim, next) <= 0) {
            const double f =
                bisect([&](double t) { return c.plane(planeTrim, c.corrected(at + t * (next - at))); }, 0, 1);
            line.push_back(c.corrected(at + f * (next - at)));
            return line;
        }
        if (next.y() <= 0) {
            // the head: on the sheer the contour is a root of the half-breadth along u
            const double f = bisect([&](double t) { return c.corrected(at + t * (next - at)).y(); }, 0, 1);
            Eigen::Vector2d head = c.corrected(at + f * (next - at));
            head.y() = 0;
            line.push_back(head);
            return line;
        }
        at = next;
        line.push_back(at);
    }
    return {};
}

/// Line where a transom plane cuts the surface, from the sheer to the contour's end, `steps` + 1 points.
std::vector<Eigen::Vector2d> planeLine(const Contour& c, Trim which, const Eigen::Vector2d& foot, int steps) {
    std::vector<Eigen::Vector2d> line(static_cast<std::size_t>(steps) + 1);
    Eigen::Vector2d at = foot;
    for (int k = steps; k >= 0; --k) {
        at.y() = foot.y() * k / steps;
        for (int i = 0; i < 30; ++i) {
            const SurfaceJet j = c.surface.jet(at.x(), at.y());
            const TransomPlane& plane = which == Trim::BowPlane ? *c.trims.bow : *c.trims.stern;
            const double q = j.p.x() - plane.xAt(j.p.z());
            if (std::abs(q) < 1e-10)
                break;
            at.x() -= q / (j.u.x() - plane.slope * j.u.z());
        }
        line[static_cast<std::size_t>(k)] = at;
    }
    return line;
}

} // namespace

Expected<HullOutline, std::string> traceOutline(const TensorSurface& surface, const Trims& trims) {
    const Contour c{surface, trims};
    const double mid = 0.5 * (surface.knotsU().first + surface.knotsU().last());
    double v = 0;
    while (c.centre({mid, v + marchStep}) > 0) {
        v += marchStep;
        if (v > surface.knotsV().last())
            return unexpected(std::string("amidships the section does not reach the centreplane"));
    }
    const Eigen::Vector2d foot(mid, bisect([&](double t) { return c.centre({mid, t}); }, v, v + marchStep));
    std::vector<Eigen::Vector2d> bow = march(c, foot, -1, trims.bow.has_value());
    const std::vector<Eigen::Vector2d> stern = march(c, foot, +1, trims.stern.has_value());
    if (bow.empty() || stern.empty()) {
        const bool sided = trims.siding.at(surface.point(foot.x(), foot.y()).x()) > 0;
        return unexpected(
            std::string("the planking does not close at the ") + (bow.empty() ? "bow" : "stern") +
            ": the keel line never meets the sheer there. " +
            (sided ? "With the half-siding given the planking would end where the table says nothing of it: "
                     "give a smaller one, or the half-breadths closer to the stem"
                   : "Where the two sides run together flat against each other, give the half-siding of stem "
                     "and keel, where the planking ends"));
    }
    HullOutline o;
    o.bowClosed = !trims.bow;
    o.sternClosed = !trims.stern;
    std::reverse(bow.begin(), bow.end());
    o.profile = std::move(bow);
    o.profile.insert(o.profile.end(), stern.begin() + 1, stern.end());

    std::vector<Eigen::Vector2d> bowLine, sternLine;
    if (trims.bow)
        bowLine = planeLine(c, Trim::BowPlane, o.profile.front(), 60);
    if (trims.stern)
        sternLine = planeLine(c, Trim::SternPlane, o.profile.back(), 60);
    const double u0 = trims.bow ? bowLine.front().x() : o.profile.front().x();
    const double u1 = trims.stern ? sternLine.front().x() : o.profile.back().x();
    if (!(u1 > u0))
        return unexpected(std::string("the sheer has no length between its ends"));
    const int n = std::max(8, static_cast<int>((u1 - u0) / marchStep));
    for (int i = 0; i <= n; ++i)
        o.sheer.emplace_back(u0 + (u1 - u0) * i / n, 0.0);

    std::vector<Eigen::Vector2d> polygon = o.sheer;
    polygon.insert(polygon.end(), sternLine.begin(), sternLine.end());
    polygon.insert(polygon.end(), o.profile.rbegin(), o.profile.rend());
    polygon.insert(polygon.end(), bowLine.rbegin(), bowLine.rend());
    o.region = HullRegion(std::move(polygon));
    return o;
}

double areaInside(const TensorSurface& surface, const HullRegion& region) {
    constexpr std::array<double, 8> node = {0.0950125098376374,
                                            0.2816035507792589,
                                            0.4580167776572274,
                                            0.6178762444026438,
                                            0.7554044083550030,
                                            0.8656312023878318,
                                            0.9445750230732326,
                                            0.9894009349916499};
    constexpr std::array<double, 8> weight = {0.1894506104550685,
                                              0.1826034150449236,
                                              0.1691565193950025,
                                              0.1495959888165767,
                                              0.1246289712555339,
                                              0.0951585116824928,
                                              0.0622535239386479,
                                              0.0271524594117541};
    const auto& b = region.boundary();
    const auto from = [&](double u, double v0, double v1) {
        double inner = 0;
        for (std::size_t k = 0; k < 8; ++k)
            for (const double s : {-1.0, 1.0})
                inner += weight[k] *
                         surface.jet(u, 0.5 * (v0 + v1) + 0.5 * (v1 - v0) * s * node[k]).cross().norm();
        return 0.5 * (v1 - v0) * inner;
    };
    const std::optional<double> crease = surface.crease();
    double total = 0;
    for (std::size_t i = 0; i < b.size(); ++i) {
        const Eigen::Vector2d& p = b[i];
        const Eigen::Vector2d& q = b[(i + 1) % b.size()];
        const double du = q.x() - p.x();
        const double u = 0.5 * (p.x() + q.x());
        const double v = 0.5 * (p.y() + q.y());
        if (du == 0 || v == 0)
            continue;
        total += du * (crease && v > *crease ? from(u, 0, *crease) + from(u, *crease, v) : from(u, 0, v));
    }
    return std::abs(total);
}

} // namespace sheerlay::geometry
