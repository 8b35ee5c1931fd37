#pragma once

#include "core/planking/plan.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// A strip's outline laid straight, as it is marked out on a milled strip: along its middle and across it.
struct FlatStrip {
    /// (mm along the middle from its bow end, mm across, + toward the lower edge); in the order of
    /// Strip::outline. A pointed or slanted end reaches past 0 and past the length.
    std::vector<Eigen::Vector2d> straight;
    /// The same points as they lie flat and unsprung: (mm along the chord, mm across it, + toward the lower
    /// edge).
    std::vector<Eigen::Vector2d> curved;
    /// Middle line: (mm along the chord, mm across, mm along the middle).
    std::vector<Eigen::Vector3d> middle;
    /// The middle line and its run past both ends, beside the longer edge up to that edge's tip; as `middle`.
    std::vector<Eigen::Vector3d> axis;
    std::size_t upperCount = 0; ///< how many of the points belong to the upper edge

    /// Place of a point `along` the middle and `across` it on the unsprung strip; runs on straight past the
    /// tips.
    [[nodiscard]] Eigen::Vector2d curvedAt(double along, double across) const;
};

/// Lays a strip straight. Port strips come out as their starboard mirror images, so that both read alike.
/// @return  empty when the strip has no outline
/// @accuracy  0.15 mm on circular strips of 4.8 m bent up to 0.35 /m, pointed tips of 0.3 m included,
/// tests/core/sheets/flat_strip_test.cpp
[[nodiscard]] FlatStrip layStraight(const Strip& strip);

/// Where a strip crosses a station.
struct StationMark {
    std::size_t station = 0; ///< index into LoftedHull::stationX
    double along = 0.0;      ///< mm along the middle from its bow end
    double width = 0.0;      ///< mm
};

/// Every crossing of the strip's middle with the planes x = stationX[i], bow to stern.
[[nodiscard]] std::vector<StationMark> stationMarks(const Strip& strip, const std::vector<double>& stationX);

/// Width at a place of the middle, mm; the nearest end's beyond it, 0 without samples.
[[nodiscard]] double widthAt(const Strip& strip, double along);

} // namespace sheerlay::core
