#pragma once

#include "core/afloat/afloat.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/graph.hpp"

#include <Eigen/Core>

#include <vector>

namespace sheerlay::core {

/// The boat seen from starboard, bow to the left, with the water drawn on her and her load as dots.
struct BoatProfile {
    std::vector<Item> items;                          ///< against the upper left corner
    double height = 0.0;                              ///< mm of paper
    Eigen::Vector2d origin = Eigen::Vector2d::Zero(); ///< mm of paper, of x = 0, z = 0
    double scale = 1.0;                               ///< mm of paper to a mm of the boat
};
[[nodiscard]] BoatProfile boatProfile(const AfloatReport& report, double width, double type);

/// Arms to starboard, and to port where they differ.
[[nodiscard]] std::vector<Graph> rightingGraphs(const AfloatReport& report, Units units);

/// Draught over weight on an even keel.
[[nodiscard]] Graph displacementGraph(const AfloatReport& report, Units units);

/// The boat in the water on one sheet, to look at while a weight is moved: profile with water line and loads,
/// the first figures, righting arms and what she displaces.
struct LoadBoard {
    Sheet sheet;
    Eigen::Vector2d origin = Eigen::Vector2d::Zero(); ///< mm of paper, of x = 0, z = 0
    double scale = 1.0;                               ///< mm of paper to a mm of the boat

    [[nodiscard]] Eigen::Vector2d onPaper(double x, double z) const {
        return origin + scale * Eigen::Vector2d(x, -z);
    }
    /// (x, z) of a place on the paper, mm of the boat.
    [[nodiscard]] Eigen::Vector2d onBoat(const Eigen::Vector2d& paper) const {
        return Eigen::Vector2d(paper.x() - origin.x(), origin.y() - paper.y()) / scale;
    }
};

/// @param width, height  mm of paper; at least 120 by 100
[[nodiscard]] LoadBoard loadBoard(const AfloatReport& report, Units units, double width, double height);

} // namespace sheerlay::core
