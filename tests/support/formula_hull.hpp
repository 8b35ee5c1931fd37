#pragma once

#include "core/project/project.hpp"

#include <Eigen/Core>
#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <vector>

/// Invented hulls given by formulas, and the tables of offsets a lofting floor would take off them.
/// Common section (q >= 0 the half-breadth of a sharp-edged V bent up): z = zk + c (a q + q^2 I / 2),
/// y = q / (1 + (q/B)^4)^(1/4) (1 - tumblehome (z/300)^3), c = sqrt(1 + zk'^2), up to the sheer z = zs.
/// Source: made for this project; the canoe's formula is also told in tests/reference/make_projects.py.
namespace sheerlay::test {

struct FormulaHull {
    using Fn = std::function<double(double)>;
    Fn keel, sheer, rise, roundness, breadth, tumblehome; ///< of t: zk, zs, a, I = 1/R, B, tau
    double half = 0.0;     ///< mm, |t| at which the stem head stands (double-enders)
    double stemPush = 0.0; ///< mm, ends pushed outward below the heads: near plumb to recurved stems
    double headHeight = 1.0;

    [[nodiscard]] double pushed(double t, double z) const {
        const double f = std::max(0.0, 1 - z / headHeight), xi = std::abs(t) / half;
        return t + std::copysign(stemPush * std::pow(f, 1.5) * std::pow(xi, 8), t);
    }
    /// Parameter t at which the pushed hull has x at height z.
    [[nodiscard]] double unpushed(double x, double z) const {
        if (stemPush == 0.0)
            return x;
        double lo = -1.3 * half, hi = 1.3 * half;
        for (int i = 0; i < 80; ++i) {
            const double m = 0.5 * (lo + hi);
            (pushed(m, z) < x ? lo : hi) = m;
        }
        return 0.5 * (lo + hi);
    }
    [[nodiscard]] double tilt(double t) const {
        const double slope = (keel(t + 0.01) - keel(t - 0.01)) / 0.02;
        return std::sqrt(1 + slope * slope);
    }
    [[nodiscard]] Eigen::Vector3d point(double t, double q) const {
        const double z = keel(t) + tilt(t) * (rise(t) * q + 0.5 * q * q * roundness(t));
        const double y =
            q / std::pow(1 + std::pow(q / breadth(t), 4), 0.25) * (1 - tumblehome(t) * std::pow(z / 300, 3));
        return {pushed(t, z), y, z};
    }
    [[nodiscard]] double q(double t, double z) const {
        const double p = (z - keel(t)) / tilt(t), a = rise(t), i = roundness(t);
        return p <= 0 ? 0.0 : 2 * p / (a + std::sqrt(a * a + 2 * p * i));
    }
    /// Half-breadth at height z of the section at x; 0 below the keel.
    [[nodiscard]] double halfBreadth(double x, double z) const {
        const double t = unpushed(x, z);
        return point(t, q(t, z)).y();
    }
    /// Height of sheer or keel at x, by bisection where the ends are pushed.
    [[nodiscard]] double heightOf(const Fn& line, double x) const {
        double z = line(x);
        for (int i = 0; i < 200 && stemPush != 0.0; ++i)
            z = 0.5 * (z + line(unpushed(x, z)));
        return z;
    }
    /// Distance of p from the formula's surface, by Gauss-Newton from the section's own point at this height.
    [[nodiscard]] double distance(const Eigen::Vector3d& p) const {
        double t = unpushed(p.x(), p.z());
        double s = std::max(q(t, p.z()), p.y());
        const double h = 1e-3;
        for (int i = 0; i < 20; ++i) {
            const Eigen::Vector3d r = point(t, s) - p;
            Eigen::Matrix<double, 3, 2> j;
            j.col(0) = (point(t + h, s) - point(t - h, s)) / (2 * h);
            j.col(1) = (point(t, s + h) - point(t, s - h)) / (2 * h);
            Eigen::Vector2d d = (j.transpose() * j).inverse() * (j.transpose() * r);
            d = d.cwiseMax(-20.0).cwiseMin(20.0);
            t -= d.x();
            s -= d.y();
        }
        return (point(t, s) - p).norm();
    }
};

/// The canoe of the reference tables; x from amidships, 2438.4 mm to each stem head.
[[nodiscard]] inline FormulaHull formulaCanoe() {
    FormulaHull f;
    f.half = 2438.4;
    f.headHeight = 500;
    const auto xi2 = [](double x) { return x * x / (2438.4 * 2438.4); };
    f.keel = [=](double x) { return 28 * xi2(x) + 472 * std::pow(xi2(x), 7); };
    f.sheer = [=](double x) { return 300 + 60 * xi2(x) + 140 * std::pow(xi2(x), 3); };
    f.rise = [=](double x) { return 3.3 * xi2(x) * xi2(x); };
    f.roundness = [=](double x) { return (1 - 0.8 * xi2(x)) / 1030; };
    f.breadth = [=](double x) { return 458 * (1 - 0.955 * xi2(x)); };
    f.tumblehome = [=](double x) { return 0.055 * (1 - xi2(x)) * (1 - xi2(x)); };
    return f;
}

/// A beamy pulling boat, transom at x = 3657.6, stem head at x = 0; t is x here.
[[nodiscard]] inline FormulaHull formulaSkiff() {
    constexpr double L = 3657.6;
    FormulaHull f;
    f.half = L;
    const auto at = [](double x) { return 1 - x / L; }; // 0 at the transom, 1 at the bow
    f.keel = [=](double x) { return 50 * std::pow(2 * at(x) - 1, 2) + 470 * std::pow(at(x), 18); };
    f.sheer = [=](double x) { return 430 + 70 * at(x) * at(x) + 20 * std::pow(at(x), 6); };
    f.rise = [=](double x) { return 0.05 + 2.6 * std::pow(std::abs(at(x)), 7); };
    f.roundness = [=](double x) { return (1 - 0.75 * at(x) * at(x)) / 1900; };
    f.breadth = [=](double x) { return 510 + 330 * at(x) - 820 * std::pow(at(x), 3); };
    f.tumblehome = [](double) { return 0.0; };
    return f;
}

[[nodiscard]] inline double rounded(double value, double to) {
    return to > 0 ? std::round(value / to) * to : value;
}

/// A station of the table: waterlines every `step` mm, buttocks every `step` below the lowest useful
/// waterline.
[[nodiscard]] inline core::Station
tableStation(const FormulaHull& f, double x, double unit, double step = 50) {
    core::Station s;
    s.x = x;
    s.printedX = std::to_string(static_cast<int>(std::lround(x)));
    const double zs = f.heightOf(f.sheer, x), zk = f.heightOf(f.keel, x);
    s.sheer = {core::PointKind::Sheer, rounded(f.halfBreadth(x, zs), unit), rounded(zs, unit), "", "", 0};
    s.keel = core::TablePoint{core::PointKind::Keel, 0, rounded(zk, unit), "0", "", 0};
    for (double z = step * std::floor(zs / step); z > zk + 8; z -= step)
        if (z < zs - 8)
            s.points.push_back(
                {core::PointKind::Waterline, rounded(f.halfBreadth(x, z), unit), z, "", "", 0});
    // buttocks: lowest height at which the half-breadth is reached
    for (double y = step; y < f.halfBreadth(x, zs) - 8; y += step) {
        double lo = zk, hi = zs;
        for (int i = 0; i < 60; ++i) {
            const double m = 0.5 * (lo + hi);
            (f.halfBreadth(x, m) < y ? lo : hi) = m;
        }
        if (hi < zs - 8)
            s.points.push_back({core::PointKind::Buttock, y, rounded(hi, unit), "", "", 0});
    }
    return s;
}

/// Points of the stem between keel and head, every 40 mm of height; `end` -1 the forward one, +1 the after.
[[nodiscard]] inline std::vector<core::ProfilePoint>
stemPoints(const FormulaHull& f, double from, double head, int end, double unit) {
    std::vector<core::ProfilePoint> points;
    for (double z = from; z < head + 20; z += 40) {
        const double height = std::min(z, head);
        double lo = 0, hi = 1.05 * f.half; // |t|, the keel's height grows with it
        for (int i = 0; i < 80; ++i) {
            const double m = 0.5 * (lo + hi);
            (f.keel(end * m) < height ? lo : hi) = m;
        }
        points.push_back({rounded(f.pushed(end * hi, height), unit), rounded(height, unit), {}, 0});
    }
    return points;
}

/// A double-ender's table, stations every 300 mm with a half station at each end.
[[nodiscard]] inline core::Project doubleEnder(const FormulaHull& f, double unit) {
    core::Project p;
    p.name = "Invented double-ender";
    p.hull.roundedTo = unit;
    for (double x = -2100; x <= 2100; x += 300)
        p.hull.stations.push_back(tableStation(f, x, unit));
    p.hull.stations.insert(p.hull.stations.begin(), tableStation(f, -2270, unit));
    p.hull.stations.push_back(tableStation(f, 2270, unit));
    for (const int end : {-1, 1})
        for (const auto& point : stemPoints(f, 60, f.keel(f.half), end, unit))
            p.hull.profile.push_back(point);
    return p;
}

} // namespace sheerlay::test
