#pragma once

#include "core/planking/plan.hpp"

#include <cmath>
#include <vector>

namespace sheerlay::test {

/// A strip on the outside of a cylinder about x, its edges at two angles below the horizontal.
[[nodiscard]] inline core::Strip
onCylinder(double radius, double first, double last, double length, core::Side side) {
    core::Strip strip;
    strip.side = side;
    const double sign = side == core::Side::Port ? -1.0 : 1.0;
    const auto line = [&](double angle) {
        std::vector<Eigen::Vector3d> points;
        for (int i = 0; i <= 20; ++i)
            points.emplace_back(length * i / 20, sign * radius * std::cos(angle), -radius * std::sin(angle));
        return points;
    };
    strip.upperEdge = line(first);
    strip.lowerEdge = line(last);
    strip.middle = line(0.5 * (first + last));
    for (const Eigen::Vector3d& p : strip.middle)
        strip.middleNormal.push_back(Eigen::Vector3d(0.0, p.y(), p.z()).normalized());
    return strip;
}

} // namespace sheerlay::test
