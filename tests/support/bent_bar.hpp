#pragma once

#include "geometry/ruled_bar.hpp"

#include <array>
#include <cmath>
#include <vector>

namespace sheerlay::test {

/// A bar on the outside of a pipe about the x axis, bent round it, `width` along x: a break every 25 mm.
/// @param sharpAt  number of the break that is called sharp; out of range: none
[[nodiscard]] inline geometry::RuledBar
bentBar(double radius, double length, double width, double thickness, std::size_t sharpAt = 100000) {
    std::array<std::vector<Eigen::Vector3d>, 4> lines;
    const int pieces = static_cast<int>(length / 25.0);
    for (int i = 0; i <= pieces; ++i) {
        const double a = length / radius * i / pieces;
        const Eigen::Vector3d out(0.0, std::cos(a), -std::sin(a));
        for (std::size_t k = 0; k < 4; ++k)
            lines[k].push_back((radius + (k < 2 ? thickness : 0.0)) * out +
                               Eigen::Vector3d(k == 0 || k == 3 ? 0.0 : width, 0, 0));
    }
    const std::vector<double> breaks = geometry::CubicLine(lines[0]).breaks();
    const auto edge = [&](std::size_t k) { return geometry::CubicLine(lines[k], breaks); };
    const std::array<geometry::CubicLine, 4> edges{edge(0), edge(1), edge(2), edge(3)};
    geometry::RuledBar bar;
    for (std::size_t i = 0; i < breaks.size(); ++i) {
        const double t = breaks[i];
        bar.breaks.push_back(
            {t, i == sharpAt, {edges[0].at(t), edges[1].at(t), edges[2].at(t), edges[3].at(t)}});
    }
    return bar;
}

} // namespace sheerlay::test
