#pragma once

#include "core/afloat/float_body.hpp"

#include <Eigen/Geometry>

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

/// Bodies with closed forms, x from -L/2 to L/2, the sheer level at z = top. See
/// tests/reference/analytic_hulls.md.
namespace sheerlay::test {

/// Half breadth and its slopes by x and z.
struct Breadth {
    double y = 0.0, byX = 0.0, byZ = 0.0;
};

/// The body of y(x, z) between two heights; sections of even steps in height.
[[nodiscard]] inline core::FloatBody bodyOf(const std::function<Breadth(double, double)>& breadth,
                                            double length,
                                            double top,
                                            double bottom,
                                            int intervals = 160,
                                            int steps = 40) {
    const auto section = [=](double x) {
        std::vector<core::SectionPoint> points;
        for (int i = 0; i <= steps; ++i) {
            const double z = top + (bottom - top) * i / steps;
            const Breadth b = breadth(x, z);
            points.push_back({{x, b.y, z}, Eigen::Vector3d(-b.byX, 1, -b.byZ).normalized()});
        }
        return points;
    };
    std::vector<Eigen::Vector3d> sheer, profile;
    for (int i = 0; i <= 200; ++i) {
        const double x = -length / 2 + length * i / 200;
        sheer.emplace_back(x, breadth(x, top).y, top);
        profile.emplace_back(x, 0, bottom);
    }
    profile.insert(profile.begin(), {-length / 2, 0, top});
    profile.push_back({length / 2, 0, top});
    return {section, -length / 2, length / 2, sheer, profile, intervals};
}

/// y = B/2 (1 - (2x/L)^2) (1 - (z/T)^2), from `top` to the keel at -T.
[[nodiscard]] inline std::function<Breadth(double, double)> wigley(double L, double B, double T) {
    return [=](double x, double z) {
        const double f = 1 - 4 * x * x / (L * L), g = 1 - z * z / (T * T);
        return Breadth{B / 2 * f * g, B / 2 * g * -8 * x / (L * L), B / 2 * f * -2 * z / (T * T)};
    };
}

/// Sections that are half ellipses with the half axes a(x) across and b(x) down; z = 0 at the lid.
struct Axes {
    double across = 0.0, acrossByX = 0.0, down = 0.0, downByX = 0.0;
};
[[nodiscard]] inline core::FloatBody ellipticBody(const std::function<Axes(double)>& axes, double length) {
    const auto section = [=](double x) {
        const Axes a = axes(x);
        std::vector<core::SectionPoint> points;
        constexpr int steps = 40;
        for (int i = 0; i <= steps; ++i) {
            const double f = std::numbers::pi / 2 * i / steps, c = std::cos(f), s = std::sin(f);
            const Eigen::Vector3d byX(1, a.acrossByX * c, -a.downByX * s), byF(0, -a.across * s, -a.down * c);
            points.push_back({{x, a.across * c, -a.down * s}, byX.cross(byF).normalized()});
        }
        return points;
    };
    std::vector<Eigen::Vector3d> sheer, profile;
    for (int i = 0; i <= 400; ++i) {
        const double x = -length / 2 * std::cos(std::numbers::pi * i / 400);
        sheer.emplace_back(x, axes(x).across, 0);
        profile.emplace_back(x, 0, -axes(x).down);
    }
    return {section, -length / 2, length / 2, sheer, profile};
}

[[nodiscard]] inline core::FloatBody halfSpheroid(double a, double b) {
    return ellipticBody(
        [=](double x) {
            const double r = std::sqrt(1 - x * x / (a * a)), slope = -x / (a * a) / r;
            return Axes{b * r, b * slope, b * r, b * slope};
        },
        2 * a);
}

/// y = B/2 (1 - (2x/L)^2) sqrt(1 - (z/T)^2).
[[nodiscard]] inline core::FloatBody ellipticHull(double L, double B, double T) {
    return ellipticBody(
        [=](double x) {
            return Axes{B / 2 * (1 - 4 * x * x / (L * L)), B / 2 * -8 * x / (L * L), T, 0};
        },
        L);
}

/// A prism with straight sides through the given points of its half section, sheer to keel.
[[nodiscard]] inline core::FloatBody prism(const std::vector<Eigen::Vector2d>& halfSection, double length) {
    const auto section = [=](double x) {
        std::vector<core::SectionPoint> points;
        for (std::size_t i = 1; i < halfSection.size(); ++i) {
            const Eigen::Vector2d a = halfSection[i - 1], b = halfSection[i], d = (b - a).normalized();
            for (const Eigen::Vector2d& p : {a, b})
                points.push_back({{x, p.x(), p.y()}, {0, -d.y(), d.x()}});
        }
        return points;
    };
    std::vector<Eigen::Vector3d> sheer, profile;
    for (const double x : {-length / 2, 0.0, length / 2}) {
        sheer.emplace_back(x, halfSection.front().x(), halfSection.front().y());
        profile.emplace_back(x, 0, halfSection.back().y());
    }
    return {section, -length / 2, length / 2, sheer, profile};
}

} // namespace sheerlay::test
