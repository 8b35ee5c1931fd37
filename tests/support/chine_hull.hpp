#pragma once

#include "core/project/project.hpp"

#include <Eigen/Core>

#include <algorithm>
#include <array>
#include <cmath>

/// Invented hulls with a knuckle whose sections are straight from sheer to knuckle and from there to the
/// keel.
namespace sheerlay::test {

/// A section's three corners, (half-breadth, height) mm: sheer, knuckle, keel.
using ChineSection = std::array<Eigen::Vector2d, 3>;

/// The same section all along: two planes a side.
inline ChineSection prismSection(double) {
    return {Eigen::Vector2d(500, 350), Eigen::Vector2d(400, 100), Eigen::Vector2d(0, 0)};
}

/// A skiff of 3.6 m with a raked stem, knuckle and keel running into it, and a V bottom that flattens aft.
inline ChineSection skiffSection(double x) {
    const double aft = x - 60; // where the knuckle meets the stem
    const auto keel = [](double at) {
        return 20 * std::pow((at - 2000) / 1600, 2) + 469 * std::pow(std::max(0.0, 1 - at / 1000), 8);
    };
    const double lift = (keel(60) - 90) / std::pow(1 - 60.0 / 3000, 3);
    const double sheer = 620 * (1 - std::pow(1 - x / 3000, 2));
    const double knuckle = 520 * (1 - std::pow(1 - aft / 2940, 2));
    return {Eigen::Vector2d(sheer, 380 + 120 * std::pow(1 - x / 3000, 2)),
            Eigen::Vector2d(knuckle, 90 + lift * std::pow(1 - x / 3000, 3)),
            Eigen::Vector2d(0, keel(x))};
}

/// A station of such a hull with a waterline every 75 mm and a buttock every 100 mm, all rounded to `unit`.
template <class SectionAt> core::Station chineStation(SectionAt section, double x, double unit) {
    const auto rounded = [unit](double v) { return std::round(v / unit) * unit; };
    const auto point = [&](core::PointKind kind, const Eigen::Vector2d& p) {
        return core::TablePoint{kind, rounded(p.x()), rounded(p.y()), "1", "1", 0};
    };
    const ChineSection s = section(x);
    core::Station station;
    station.x = x;
    station.printedX = std::to_string(std::lround(x));
    station.sheer = point(core::PointKind::Sheer, s[0]);
    station.knuckle = point(core::PointKind::Knuckle, s[1]);
    station.keel = point(core::PointKind::Keel, s[2]);
    constexpr double clear = 8; // mm from the corners, which are told by themselves
    for (double z = 75; z < s[0].y() - clear; z += 75)
        for (const std::size_t k : {0, 1}) {
            const Eigen::Vector2d &a = s[k], &b = s[k + 1];
            if (z < a.y() - clear && z > b.y() + clear) {
                const double f = (z - a.y()) / (b.y() - a.y());
                station.points.push_back(
                    {core::PointKind::Waterline, rounded(a.x() + f * (b.x() - a.x())), z, "1", "1", 0});
            }
        }
    for (double y = 100; y < s[1].x() - clear; y += 100)
        station.points.push_back({core::PointKind::Buttock,
                                  y,
                                  rounded(s[2].y() + y / s[1].x() * (s[1].y() - s[2].y())),
                                  "1",
                                  "1",
                                  0});
    return station;
}

inline core::Project chineProject() {
    core::Project p;
    p.name = "knuckle";
    p.strips = {6.35, 19.05, 16.0, "western-redcedar"};
    p.planking.start.kind = core::StartLine::Kind::Knuckle;
    return p;
}

/// 2.4 m between plumb transoms, as exact as a table can be.
inline core::Project prismProject() {
    core::Project p = chineProject();
    p.hull.roundedTo = 0.1;
    for (double x = 0; x <= 2400; x += 300)
        p.hull.stations.push_back(chineStation(prismSection, x, 0.1));
    p.hull.transoms = {{core::End::Bow, 0, 0, 0}, {core::End::Stern, 2400, 2400, 0}};
    return p;
}

/// The skiff, rounded to a sixteenth of an inch, with a transom at 3600.
inline core::Project skiffProject() {
    constexpr double unit = 25.4 / 16;
    core::Project p = chineProject();
    p.hull.roundedTo = unit;
    p.hull.stations.push_back(chineStation(skiffSection, 150, unit));
    for (double x = 300; x <= 3600; x += 300)
        p.hull.stations.push_back(chineStation(skiffSection, x, unit));
    for (const double x : {0.0, 30.0, 60.0, 90.0, 150.0, 220.0})
        p.hull.profile.push_back({x, std::round(skiffSection(x)[2].y() / unit) * unit, std::nullopt, 0});
    p.hull.transoms = {{core::End::Stern, 3600, 3600, 0}};
    return p;
}

/// Distance of a point of a section from the formula's, mm; the nearer of its two straight sides.
inline double offSection(const ChineSection& s, const Eigen::Vector2d& p) {
    double least = 1e300;
    for (const std::size_t k : {0, 1}) {
        const Eigen::Vector2d along = s[k + 1] - s[k];
        const double f = std::clamp((p - s[k]).dot(along) / along.squaredNorm(), 0.0, 1.0);
        least = std::min(least, (p - s[k] - f * along).norm());
    }
    return least;
}

} // namespace sheerlay::test
