#pragma once

#include "core/sheets/drawing.hpp"

#include <Eigen/Core>

#include <string>
#include <utility>
#include <vector>

namespace sheerlay::core {

/// A curve over two axes that start at nought, or below it where the curve does.
struct Graph {
    std::string title;                   ///< none where empty
    std::string across, up;              ///< what the axes say, units included
    std::vector<Eigen::Vector2d> points; ///< rising across
    /// A line down from the curve at a place across, with a few words beside it.
    std::vector<std::pair<double, std::string>> marks;
};

/// A round step, 1, 2 or 5 times a power of ten, of which four to nine make up `range`; > 0.
[[nodiscard]] double roundStep(double range);

/// Draws the graph into a box of this size against its upper left corner; nothing for fewer than two points.
/// @param type  mm, size of the words
[[nodiscard]] std::vector<Item> drawGraph(const Graph& graph, double width, double height, double type);

} // namespace sheerlay::core
