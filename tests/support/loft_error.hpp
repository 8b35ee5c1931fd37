#pragma once

#include "core/hull/hull.hpp"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <functional>

namespace sheerlay::test {

/// How far a loft lies from the hull its table was taken off.
struct LoftError {
    double rms = 0.0, max = 0.0; ///< mm
    int points = 0;
};

/// Over the sections from `from` to `to`, 25 mm apart, x in the table's datum.
/// @param distance  of a point in the table's datum from the truth, mm
[[nodiscard]] inline LoftError loftError(const core::LoftedHull& hull,
                                         const std::function<double(const Eigen::Vector3d&)>& distance,
                                         double from,
                                         double to) {
    LoftError e;
    for (double x = from; x <= to; x += 25)
        for (Eigen::Vector3d p : core::sectionAt(hull.drawn, x + hull.xShift, 40)) {
            p.x() -= hull.xShift;
            const double d = std::abs(distance(p));
            e.max = std::max(e.max, d);
            e.rms += d * d;
            ++e.points;
        }
    e.rms = std::sqrt(e.rms / std::max(e.points, 1));
    return e;
}

} // namespace sheerlay::test
