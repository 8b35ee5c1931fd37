#include "core/hull/measured_line.hpp"

#include "core/hull/section_tape.hpp"
#include "geometry/shortest_line.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr int finePieces = 64, searchPieces = 16; // even: their length is told to the fourth power
constexpr int crossingsTried = 24;                // along the centreline, then narrowed down about the best
constexpr int narrowings = 26;                    // each leaves 0.62 of the reach
constexpr double edgeAir = 0.5;                   // mm past the hull's edge that are no matter

Vector3d mirrored(const Vector3d& p) {
    return {p.x(), -p.y(), p.z()};
}

/// The place of the surface nearest to a point, and how its girth is told.
std::optional<HullPlace> placed(const TrimmedSurface& hull, const Vector3d& starboard, bool port) {
    if (hull.outline.profile.size() < 2)
        return std::nullopt;
    const SectionTape tape(hull, starboard.x());
    if (tape.misses())
        return std::nullopt;
    Vector2d guess(starboard.x(), tape.whole() - tape.leftFrom(starboard));
    double nearest = 1e300; // v is only about the girth: the best of a few is where to start
    for (int i = 0; i <= 12; ++i) {
        const double v = hull.surface.knotsV().last() * i / 12.0;
        const double off = (hull.surface.point(starboard.x(), v) - starboard).squaredNorm();
        if (off < nearest) {
            nearest = off;
            guess.y() = v;
        }
    }
    HullPlace place;
    place.uv = geometry::nearestPlace(hull.surface, starboard, guess);
    const geometry::SurfaceJet here = hull.surface.jet(place.uv.x(), place.uv.y());
    const double girth = tape.leftFrom(here.p);
    place.onPort = port;
    place.point = port ? mirrored(here.p) : here.p;
    place.normal = port ? mirrored(here.normal()) : here.normal();
    place.girth = port ? -girth : girth;
    place.bottom = tape.endBreadth();
    return place;
}

/// One stretch of the line, on the starboard half.
struct Leg {
    std::vector<Vector3d> points, normals;
    bool onHull = true;

    Leg(const TrimmedSurface& hull, const Vector2d& from, const Vector2d& to, int pieces) {
        using geometry::Trim;
        for (const Vector2d& uv : geometry::shortestLine(hull.surface, from, to, pieces)) {
            const geometry::SurfaceJet here = hull.surface.jet(uv.x(), uv.y());
            points.push_back(here.p);
            normals.push_back(here.normal());
            for (const Trim trim : {Trim::Sheer, Trim::Centre, Trim::BowPlane, Trim::SternPlane})
                onHull = onHull && hull.trims.value(trim, uv.y(), points.back()) > -edgeAir;
        }
    }
    [[nodiscard]] double length() const { return geometry::smoothLength(points); }
};

/// Where a line from one side to the other crosses the bottom.
class Crossing {
public:
    Crossing(const TrimmedSurface& hull, const HullPlace& from, const HullPlace& to)
        : m_hull(hull), m_from(from.uv), m_to(to.uv) {}

    /// Parameters of the place on the centreline (or the batten's side) with the shortest way.
    [[nodiscard]] Vector2d best() const {
        const double last = static_cast<double>(m_hull.outline.profile.size() - 1);
        double least = 1e300, about = 0.0;
        for (int i = 0; i <= crossingsTried; ++i) {
            const double at = last * i / crossingsTried;
            if (const double length = by(at); length < least) {
                least = length;
                about = at;
            }
        }
        double a = std::max(0.0, about - last / crossingsTried);
        double b = std::min(last, about + last / crossingsTried);
        for (int i = 0; i < narrowings; ++i) {
            const double c = b - 0.618034 * (b - a), d = a + 0.618034 * (b - a);
            if (by(c) < by(d))
                b = d;
            else
                a = c;
        }
        return at(0.5 * (a + b));
    }

private:
    [[nodiscard]] Vector2d at(double index) const {
        const std::vector<Vector2d>& line = m_hull.outline.profile;
        const auto i = std::min(static_cast<std::size_t>(index), line.size() - 2);
        return line[i] + (index - static_cast<double>(i)) * (line[i + 1] - line[i]);
    }
    [[nodiscard]] double by(double index) const {
        const Vector2d over = at(index);
        return Leg(m_hull, m_from, over, searchPieces).length() +
               Leg(m_hull, over, m_to, searchPieces).length() +
               2.0 * std::abs(m_hull.surface.point(over.x(), over.y()).y());
    }

    const TrimmedSurface& m_hull;
    Vector2d m_from, m_to;
};

void append(MeasuredLine& line, const Leg& leg, bool port) {
    for (std::size_t i = 0; i < leg.points.size(); ++i) {
        line.points.push_back(port ? mirrored(leg.points[i]) : leg.points[i]);
        line.normals.push_back(port ? mirrored(leg.normals[i]) : leg.normals[i]);
    }
    line.length += leg.length();
    line.onHull = line.onHull && leg.onHull;
}

} // namespace

std::optional<HullPlace> placeAtGirth(const TrimmedSurface& hull, double x, double girth) {
    if (hull.outline.profile.size() < 2)
        return std::nullopt;
    const SectionTape tape(hull, x);
    if (tape.misses())
        return std::nullopt;
    return placed(hull, tape.at(std::abs(girth)), girth < 0.0);
}

std::optional<HullPlace> placeNear(const TrimmedSurface& hull, const Vector3d& point) {
    return placed(hull, {point.x(), std::abs(point.y()), point.z()}, point.y() < 0.0);
}

MeasuredLine measureBetween(const TrimmedSurface& hull, const HullPlace& from, const HullPlace& to) {
    MeasuredLine line;
    line.along = std::abs(to.point.x() - from.point.x());
    line.around = std::abs(to.girth - from.girth);
    if (from.onPort == to.onPort) {
        append(line, Leg(hull, from.uv, to.uv, finePieces), from.onPort);
        return line;
    }
    line.around += from.bottom + to.bottom;
    const Vector2d over = Crossing(hull, from, to).best();
    const Leg first(hull, from.uv, over, finePieces);
    append(line, first, from.onPort);
    const Leg second(hull, over, to.uv, finePieces);
    line.length += 2.0 * std::abs(first.points.back().y()); // over the batten
    append(line, second, to.onPort);
    return line;
}

} // namespace sheerlay::core
