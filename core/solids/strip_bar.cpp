#include "core/solids/strip_bar.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

constexpr double edgeTolerance = 0.02; // mm, of a smooth bar's edges
constexpr double apart = 1e-9;         // of t, from 0 to 1
constexpr double repeated = 1e-3;      // mm, between points of an edge

double partOfChord(const Vector3d& p, const Vector3d& a, const Vector3d& b) {
    const Vector3d chord = b - a;
    const double square = chord.squaredNorm();
    return square > 0.0 ? std::clamp((p - a).dot(chord) / square, 0.0, 1.0) : 0.0;
}

double distanceToChord(const Vector3d& p, const Vector3d& a, const Vector3d& b) {
    return (p - a - partOfChord(p, a, b) * (b - a)).norm();
}

Vector3d fallbackNormal(const Strip& strip, const Vector3d& p) {
    if (strip.side == Side::Centre)
        return {0.0, 0.0, -1.0};
    return {0.0, p.y() < 0.0 ? -1.0 : 1.0, 0.0};
}

Vector3d tangentAt(const std::vector<Vector3d>& line, std::size_t i) {
    const std::size_t before = i > 0 ? i - 1 : i;
    const std::size_t after = std::min(i + 1, line.size() - 1);
    const Vector3d along = line[after] - line[before];
    return along.norm() > 0.0 ? Vector3d(along.normalized()) : Vector3d::UnitX();
}

/// Leaves out points that stand on the one before; the last one stays.
void dropRepeated(BarEdge& edge) {
    BarEdge kept;
    for (std::size_t i = 0; i < edge.points.size(); ++i) {
        if (!kept.points.empty() && (edge.points[i] - kept.points.back()).norm() < repeated) {
            if (i + 1 < edge.points.size() || kept.points.size() < 2)
                continue;
            kept.points.pop_back();
            kept.normals.pop_back();
        }
        kept.points.push_back(edge.points[i]);
        kept.normals.push_back(edge.normals[i]);
    }
    edge = std::move(kept);
}

} // namespace

BarEdge barEdge(const Strip& strip, std::vector<Vector3d> line) {
    BarEdge edge;
    edge.points = std::move(line);
    const std::size_t count = std::min(strip.middle.size(), strip.middleNormal.size());
    std::size_t near = 0;
    for (const Vector3d& p : edge.points) {
        if (count == 0) {
            edge.normals.push_back(fallbackNormal(strip, p));
            continue;
        }
        if (count == 1) {
            edge.normals.push_back(strip.middleNormal.front());
            continue;
        }
        // both run bow to stern, so the nearest piece of the middle only moves aft
        const auto distance = [&](std::size_t i) {
            return distanceToChord(p, strip.middle[i], strip.middle[i + 1]);
        };
        while (near + 2 < count && distance(near + 1) <= distance(near))
            ++near;
        const double f = partOfChord(p, strip.middle[near], strip.middle[near + 1]);
        edge.normals.push_back(
            ((1.0 - f) * strip.middleNormal[near] + f * strip.middleNormal[near + 1]).normalized());
    }
    return edge;
}

double acrossSign(const BarEdge& upper, const BarEdge& lower) {
    // tangent x outward normal points to the keel on starboard and to the sheer on port; ask the strip
    const std::size_t mid = upper.points.size() / 2;
    const Vector3d along = tangentAt(upper.points, mid);
    const Vector3d toLower = lower.points[lower.points.size() / 2] - upper.points[mid];
    return along.cross(upper.normals[mid]).dot(toLower - toLower.dot(along) * along) >= 0.0 ? 1.0 : -1.0;
}

std::vector<std::array<int, 3>> bandBetween(const std::vector<Vector3d>& upper,
                                            const std::vector<Vector3d>& lower) {
    std::vector<std::array<int, 3>> triangles;
    const int shift = static_cast<int>(upper.size());
    std::size_t i = 0;
    std::size_t j = 0;
    while (i + 1 < upper.size() || j + 1 < lower.size()) {
        constexpr double never = std::numeric_limits<double>::max();
        const double alongUpper = i + 1 < upper.size() ? (upper[i + 1] - lower[j]).squaredNorm() : never;
        const double alongLower = j + 1 < lower.size() ? (lower[j + 1] - upper[i]).squaredNorm() : never;
        const int a = static_cast<int>(i);
        const int b = shift + static_cast<int>(j);
        if (alongUpper <= alongLower) {
            triangles.push_back({a, a + 1, b});
            ++i;
        } else {
            triangles.push_back({a, b + 1, b});
            ++j;
        }
    }
    return triangles;
}

std::vector<Vector3d> thinned(const std::vector<Vector3d>& line, double tolerance) {
    if (line.size() < 3)
        return line;
    std::vector<bool> keep(line.size(), false);
    keep.front() = keep.back() = true;
    std::vector<std::pair<std::size_t, std::size_t>> open{{0, line.size() - 1}};
    while (!open.empty()) {
        const auto [first, last] = open.back();
        open.pop_back();
        double worst = tolerance;
        std::size_t at = first;
        for (std::size_t i = first + 1; i < last; ++i) {
            const double distance = distanceToChord(line[i], line[first], line[last]);
            if (distance > worst) {
                worst = distance;
                at = i;
            }
        }
        if (at != first) {
            keep[at] = true;
            open.emplace_back(first, at);
            open.emplace_back(at, last);
        }
    }
    std::vector<Vector3d> result;
    for (std::size_t i = 0; i < line.size(); ++i)
        if (keep[i])
            result.push_back(line[i]);
    return result;
}

geometry::Mesh stripMesh(const Strip& strip, const StripFaces& faces, double tolerance) {
    geometry::Mesh mesh;
    if (strip.upperEdge.size() < 2 || strip.lowerEdge.size() < 2)
        return mesh;
    const BarEdge upper = barEdge(strip, thinned(strip.upperEdge, tolerance));
    const BarEdge lower = barEdge(strip, thinned(strip.lowerEdge, tolerance));
    const int nu = static_cast<int>(upper.points.size());
    const int nl = static_cast<int>(lower.points.size());
    // where the strip runs out to a point its edges share that point
    const bool bowPoint = (upper.points.front() - lower.points.front()).norm() < 1e-6;
    const bool sternPoint = (upper.points.back() - lower.points.back()).norm() < 1e-6;
    std::array<std::vector<int>, 2> face; // index of each point of upper, then lower, on outer and inner face
    for (std::size_t f = 0; f < 2; ++f) {
        const double height = f == 0 ? faces.outer : faces.inner;
        for (const BarEdge* edge : {&upper, &lower})
            for (std::size_t i = 0; i < edge->points.size(); ++i) {
                face[f].push_back(static_cast<int>(mesh.points.size()));
                mesh.points.push_back(edge->points[i] + height * edge->normals[i]);
            }
        const auto weld = [&](int from, int to) {
            face[f][static_cast<std::size_t>(from)] = face[f][static_cast<std::size_t>(to)];
        };
        if (bowPoint)
            weld(nu, 0);
        if (sternPoint)
            weld(nu + nl - 1, nu - 1);
    }
    const bool turned = acrossSign(upper, lower) < 0.0;
    const auto add = [&](int a, int b, int c) {
        if (a == b || b == c || c == a)
            return;
        if (turned)
            std::swap(b, c);
        mesh.triangles.push_back({a, b, c});
    };
    const auto outer = [&](int i) { return face[0][static_cast<std::size_t>(i)]; };
    const auto inner = [&](int i) { return face[1][static_cast<std::size_t>(i)]; };
    // on starboard, seen from outside, the bow lies to the left: upper aft, then down, turns right
    for (const auto& [a, b, c] : bandBetween(upper.points, lower.points)) {
        add(outer(a), outer(c), outer(b));
        add(inner(a), inner(b), inner(c));
    }
    const auto wall = [&](int from, int to) { // walked so by the outer face
        add(outer(to), outer(from), inner(from));
        add(outer(to), inner(from), inner(to));
    };
    for (int i = 0; i + 1 < nu; ++i)
        wall(i + 1, i);
    for (int i = 0; i + 1 < nl; ++i)
        wall(nu + i, nu + i + 1);
    wall(0, nu);
    wall(nu + nl - 1, nu - 1);
    std::vector<int> used(mesh.points.size(), -1); // welding leaves points nobody uses
    geometry::Mesh tidy;
    for (auto& t : mesh.triangles)
        for (int& i : t) {
            int& place = used[static_cast<std::size_t>(i)];
            if (place < 0) {
                place = static_cast<int>(tidy.points.size());
                tidy.points.push_back(mesh.points[static_cast<std::size_t>(i)]);
            }
            i = place;
        }
    tidy.triangles = std::move(mesh.triangles);
    return tidy;
}

geometry::RuledBar stripBar(const Strip& strip, const StripFaces& faces) {
    if (strip.upperEdge.size() < 2 || strip.lowerEdge.size() < 2)
        return {};
    BarEdge upper = barEdge(strip, strip.upperEdge);
    BarEdge lower = barEdge(strip, strip.lowerEdge);
    const double sign = acrossSign(upper, lower);
    const auto blunt = [&](bool stern) {
        Vector3d& a = stern ? upper.points.back() : upper.points.front();
        Vector3d& b = stern ? lower.points.back() : lower.points.front();
        if ((b - a).norm() >= pointWidth)
            return;
        const std::size_t i = stern ? upper.points.size() - 1 : 0;
        const Vector3d down = sign * tangentAt(upper.points, i).cross(upper.normals[i]).normalized();
        const Vector3d middle = 0.5 * (a + b);
        a = middle - 0.5 * pointWidth * down;
        b = middle + 0.5 * pointWidth * down;
    };
    blunt(false);
    blunt(true);
    for (BarEdge* edge : {&upper, &lower}) {
        dropRepeated(*edge);
        if (edge->points.size() < 2)
            return {};
    }
    // both lines of an edge share its parameter, so that the bar is cut square to it
    const auto lifted = [](const BarEdge& edge, double height) {
        std::vector<Vector3d> line = edge.points;
        for (std::size_t i = 0; i < line.size(); ++i)
            line[i] += height * edge.normals[i];
        return geometry::CubicLine(std::move(line), geometry::CubicLine(edge.points).breaks());
    };
    const std::array<geometry::CubicLine, 4> edges{lifted(upper, faces.outer),
                                                   lifted(lower, faces.outer),
                                                   lifted(lower, faces.inner),
                                                   lifted(upper, faces.inner)};
    std::vector<std::pair<double, bool>> places; // t, sharp
    for (const geometry::CubicLine& edge : edges) {
        for (const double t : edge.breaks())
            places.emplace_back(t, false);
        for (const double t : edge.corners())
            places.emplace_back(t, true);
    }
    std::sort(places.begin(), places.end());
    geometry::RuledBar bar;
    for (const auto& [t, sharp] : places) {
        if (!bar.breaks.empty() && t - bar.breaks.back().t < apart) {
            bar.breaks.back().sharp |= sharp;
            continue;
        }
        bar.breaks.push_back({t, sharp, {edges[0].at(t), edges[1].at(t), edges[2].at(t), edges[3].at(t)}});
    }
    return geometry::withFewBreaks(bar, edgeTolerance);
}

} // namespace sheerlay::core
