#pragma once

#include "geometry/given_faces.hpp"

#include <Eigen/Core>
#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <numbers>

/// A hull by formula as a designer's file would give it, for tests that need no file.
namespace sheerlay::test {

/// Section at x: y = b sin t, z = keel + (sheer - keel) (1 - cos t), t from 0 at the keel to a quarter turn;
/// b and sheer are parabolas in xi = 2 x / length - 1, the keel is 420 xi^8: a straight keel with
/// raked stems, which every section shrinks into.
struct HullFormula {
    double length = 4200.0, halfBeam = 400.0; // mm
    [[nodiscard]] double xi(double x) const { return 2 * x / length - 1; }
    [[nodiscard]] double breadth(double x) const { return halfBeam * (1 - xi(x) * xi(x)); }
    [[nodiscard]] double keel(double x) const { return 420 * std::pow(xi(x), 8); }
    [[nodiscard]] double sheer(double x) const { return 300 + 120 * xi(x) * xi(x); }
    [[nodiscard]] Eigen::Vector3d point(double x, double t) const {
        return {x, breadth(x) * std::sin(t), keel(x) + (sheer(x) - keel(x)) * (1 - std::cos(t))};
    }
    /// How far a point of the plane x lies off the section, about: mm along its radius.
    [[nodiscard]] double off(const Eigen::Vector3d& p) const {
        const double b = breadth(p.x());
        const double depth = sheer(p.x()) - keel(p.x());
        if (b < 1e-6)
            return p.y();
        return (std::hypot(p.y() / b, (sheer(p.x()) - p.z()) / depth) - 1) * std::max(b, depth);
    }
};

/// What of it the file holds. Faces in this order: bottom (with `split`) and topsides, then deck, transom.
struct GivenParts {
    bool whole = false;
    bool split = false;   ///< bottom and topsides are two faces
    double apart = 0.0;   ///< mm, the bottom lies this much too low: a gap all along
    bool hole = false;    ///< four quads amidships are missing
    bool deck = false;    ///< from sheer to centreplane
    double end = 1.0;     ///< part of the length where she is cut off by a plumb transom
    bool transom = false; ///< with a face of its own
};

[[nodiscard]] inline geometry::GivenFaces givenHull(const GivenParts& parts, const HullFormula& f = {}) {
    constexpr int along = 160;
    constexpr int around = 32;
    geometry::GivenFaces given;
    auto& points = given.mesh.points;
    const auto quad = [&](int face, int a, int b, int c, int d) {
        for (const auto& t : {std::array<int, 3>{a, b, c}, std::array<int, 3>{a, c, d}}) {
            const auto at = [&](int i) { return points[static_cast<std::size_t>(i)]; };
            if (t[0] == t[1] || t[1] == t[2] || t[2] == t[0] ||
                (at(t[1]) - at(t[0])).cross(at(t[2]) - at(t[0])).norm() < 1e-9)
                continue;
            given.mesh.triangles.push_back(t);
            given.faceOf.push_back(face);
        }
    };
    const int first = parts.whole ? -around : 0;
    const int rows = around - first + 1;
    const int middle = around / 2;
    const auto x = [&](int i) { return parts.end * f.length * i / along; };
    const auto grid = [&](double drop) {
        const int base = static_cast<int>(points.size());
        for (int i = 0; i <= along; ++i)
            for (int j = first; j <= around; ++j)
                points.emplace_back(f.point(x(i), 0.5 * std::numbers::pi * std::abs(j) / around) -
                                    Eigen::Vector3d(0, 0, drop));
        for (int i = 0; i <= along; ++i)
            for (int j = first; j < 0; ++j)
                points[static_cast<std::size_t>(base + i * rows + j - first)].y() *= -1;
        return base;
    };
    const int top = grid(0.0);
    const int bottom = parts.apart > 0.0 ? grid(parts.apart) : top;
    given.faces.push_back({0.0, false});
    if (parts.split)
        given.faces.push_back({0.0, false});
    for (int i = 0; i < along; ++i)
        for (int j = first; j < around; ++j) {
            const bool low = j >= -middle && j < middle;
            const int base = low ? bottom : top;
            // at a stem all points of a section are one
            const auto at = [&](int a, int b) {
                return base + a * rows + (f.breadth(x(a)) < 1e-6 ? 0 : b - first);
            };
            if (parts.hole && std::abs(i - along / 2) < 1 && j >= middle && j < middle + 2)
                continue;
            quad(parts.split && !low ? 1 : 0, at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
        }
    if (parts.deck) {
        const int face = static_cast<int>(given.faces.size());
        given.faces.push_back({0.0, false});
        int last = -1;
        const auto edge = [&](int i, int j) {
            return top + i * rows + (f.breadth(x(i)) < 1e-6 ? 0 : j - first);
        };
        for (int i = 0; i <= along; ++i) {
            int centre = top + i * rows; // at a stem
            if (f.breadth(x(i)) >= 1e-6) {
                centre = static_cast<int>(points.size());
                points.emplace_back(x(i), 0, f.sheer(x(i)) + 0.1 * f.breadth(x(i)));
            }
            for (const int j : {first, around})
                if (i > 0 && std::abs(j) == around)
                    quad(face, edge(i - 1, j), edge(i, j), centre, last);
            last = centre;
        }
    }
    if (parts.transom) {
        const int face = static_cast<int>(given.faces.size());
        given.faces.push_back({0.0, true});
        points.emplace_back(x(along), 0, f.sheer(x(along)));
        const int centre = static_cast<int>(points.size()) - 1;
        for (int j = first; j < around; ++j)
            quad(face, top + along * rows + j - first, top + along * rows + j + 1 - first, centre, centre);
    }
    return given;
}

/// The same turned, mirrored or scaled.
[[nodiscard]] inline geometry::GivenFaces turned(geometry::GivenFaces given,
                                                 const Eigen::Matrix3d& turn,
                                                 const Eigen::Vector3d& move = Eigen::Vector3d::Zero()) {
    for (Eigen::Vector3d& p : given.mesh.points)
        p = turn * p + move;
    return given;
}

} // namespace sheerlay::test
