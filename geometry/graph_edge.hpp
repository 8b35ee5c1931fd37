#pragma once

#include "geometry/parallels.hpp"

#include <vector>

namespace sheerlay::geometry {

/// An edge that leaves the parallels: the distance from the master varies along it, w = W(s). The fan's nodes
/// at those distances already lie on it, but their tangents and edge bends are still those of the parallels
/// through them; here they become the edge's own.
/// @param line      nodes of a fan after it was advanced by W(s) on every column
/// @param distance  mm, W at every column; only its changes along the line count
/// @param spacing   mm between columns on the master, equal all along
/// @param side      the fan's side
/// @return the same nodes with `frame`, `aft` and `edgeBend` of the edge
/// @accuracy  tests/geometry/graph_edge_test.cpp: circles and helices across a cylinder, small circles on a
/// sphere
/// @source    planking.md section 1: kappa of a graph in Fermi coordinates
[[nodiscard]] std::vector<RowNode>
turnedOntoEdge(std::vector<RowNode> line, const std::vector<double>& distance, double spacing, FanSide side);

/// A master line with its columns.
struct EvenMaster {
    std::vector<MasterNode> nodes;
    double spacing = 0.0; ///< mm between neighbours
};

/// A new master along an edge, at equal arc lengths, so that parallels can start from it. It ends where the
/// edge's longest living run does, to lose nothing however often it is done; where the edge has died in
/// between, a node outside every box parts the runs.
/// @param spacing  mm, > 0: about what the new one's shall be
[[nodiscard]] EvenMaster masterAlong(const std::vector<RowNode>& edge, double spacing);

} // namespace sheerlay::geometry
