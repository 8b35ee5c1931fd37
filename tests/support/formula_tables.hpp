#pragma once

#include "tests/support/formula_hull.hpp"

#include <array>

/// Tables of offsets of invented hulls, stations a foot apart with a half station at each stem, as a builder
/// would find them. Formulas: the canoe and the narrow double-ender are those of closing.md section 10 (the
/// canoe's also in make_projects.py), the others of the same family made for this project.
namespace sheerlay::test {

inline constexpr double sixteenth = 25.4 / 16; // mm

/// A double-ender's table for the length between the stem heads; x from amidships.
[[nodiscard]] inline core::Project footStations(const FormulaHull& f, double unit, double step) {
    constexpr double foot = 304.8;
    core::Project p;
    p.name = "Invented double-ender";
    p.hull.roundedTo = unit;
    const int whole = static_cast<int>(std::floor(f.half / foot - 0.75));
    std::vector<double> xs;
    for (int i = -whole; i <= whole; ++i)
        xs.push_back(i * foot);
    for (const double sign : {-1.0, 1.0})
        xs.push_back(sign * 0.5 * (whole * foot + f.half));
    std::sort(xs.begin(), xs.end());
    for (const double x : xs)
        p.hull.stations.push_back(tableStation(f, x, unit, step));
    for (const int end : {-1, 1})
        for (const auto& point : stemPoints(f, 60, f.keel(f.half), end, unit))
            p.hull.profile.push_back(point);
    return p;
}

/// The decked double-ender of closing.md section 10, near plumb stems, 17 ft.
[[nodiscard]] inline FormulaHull formulaNarrow() {
    FormulaHull f;
    f.half = 2590.8;
    f.headHeight = 312;
    f.stemPush = 130;
    const auto xi2 = [](double x) { return x * x / (2590.8 * 2590.8); };
    f.keel = [=](double x) { return 12 * xi2(x) + 300 * std::pow(xi2(x), 7); };
    f.sheer = [=](double x) { return 260 + 20 * xi2(x) + 32 * xi2(x) * xi2(x); };
    f.rise = [=](double x) { return 0.22 + 2.6 * xi2(x) * xi2(x); };
    f.roundness = [=](double x) { return (1 - 0.8 * xi2(x)) / 520; };
    f.breadth = [=](double x) { return 268 * (1 - 0.955 * xi2(x)); };
    f.tumblehome = [](double) { return 0.0; };
    return f;
}

/// One of our own: a canoe whose stems swell out past their heads.
[[nodiscard]] inline FormulaHull formulaRecurved() {
    FormulaHull f = formulaCanoe();
    f.stemPush = 560;
    return f;
}

/// The skiff: transom at 12 ft, stem head at 0, a half station forward.
[[nodiscard]] inline core::Project skiffTable(double unit, double step, double transomAtKeel = 3657.6) {
    const FormulaHull f = formulaSkiff();
    core::Project p;
    p.name = "Invented skiff";
    p.hull.roundedTo = unit;
    p.hull.stations.push_back(tableStation(f, 152.4, unit, step));
    for (int i = 1; i <= 12; ++i)
        p.hull.stations.push_back(
            tableStation(f, 304.8 * i, unit, step)); // the last one stands on the transom
    const double head = f.sheer(0);
    for (double z = 100; z < head; z += 40) {
        double lo = 0, hi = 900;
        for (int i = 0; i < 60; ++i) {
            const double m = 0.5 * (lo + hi);
            (f.keel(m) > z ? lo : hi) = m;
        }
        p.hull.profile.push_back({rounded(lo, unit), z, {}, 0});
    }
    p.hull.profile.push_back({0, rounded(head, unit), {}, 0});
    p.hull.transoms.push_back({core::End::Stern, 3657.6, transomAtKeel, 0});
    return p;
}

} // namespace sheerlay::test
