#include "geometry/graph_edge.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlay::geometry {
namespace {

/// First and second derivative along a row of equally spaced values, of fourth order where two living
/// neighbours stand on each side.
struct Slopes {
    double first = 0.0, second = 0.0;
};

template <class Value>
Slopes slopesAt(const std::vector<RowNode>& line, std::size_t i, double h, Value value) {
    const auto lives = [&](std::ptrdiff_t k) {
        return k >= 0 && k < static_cast<std::ptrdiff_t>(line.size()) &&
               line[static_cast<std::size_t>(k)].alive;
    };
    const auto at = [&](std::ptrdiff_t k) { return value(static_cast<std::size_t>(k)); };
    const auto c = static_cast<std::ptrdiff_t>(i);
    if (lives(c - 1) && lives(c + 1)) {
        const double odd = (at(c + 1) - at(c - 1)) / (2 * h);
        const double even = (at(c + 1) - 2 * at(c) + at(c - 1)) / (h * h);
        if (!lives(c - 2) || !lives(c + 2))
            return {odd, even};
        const double oddWide = (at(c + 2) - at(c - 2)) / (4 * h);
        const double evenWide = (at(c + 2) - 2 * at(c) + at(c - 2)) / (4 * h * h);
        return {(4 * odd - oddWide) / 3, (4 * even - evenWide) / 3};
    }
    // at an end: of second order from the three nearest; the second derivative is its neighbour's
    const std::ptrdiff_t step = lives(c + 1) ? 1 : -1;
    if (!lives(c + step))
        return {};
    if (!lives(c + 2 * step))
        return {static_cast<double>(step) * (at(c + step) - at(c)) / h, 0};
    return {static_cast<double>(step) * (4 * at(c + step) - 3 * at(c) - at(c + 2 * step)) / (2 * h),
            (at(c) - 2 * at(c + step) + at(c + 2 * step)) / (h * h)};
}

} // namespace

std::vector<RowNode>
turnedOntoEdge(std::vector<RowNode> line, const std::vector<double>& distance, double spacing, FanSide side) {
    const double away = side == FanSide::TowardKeel ? 1.0 : -1.0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        RowNode& node = line[i];
        if (!node.alive)
            continue;
        const Slopes w = slopesAt(line, i, spacing, [&](std::size_t k) { return distance[k]; });
        const double g = node.state.jacobi;
        const double rate = node.state.jacobiRate;
        // J changes along the edge by the way it runs and by the way it slants off its parallel
        const double alongG =
            slopesAt(line, i, spacing, [&](std::size_t k) { return line[k].state.jacobi; }).first -
            rate * w.first;
        const Eigen::Vector3d run =
            (node.jet.u * node.state.velocity.x() + node.jet.v * node.state.velocity.y()).normalized();
        const Eigen::Vector3d normal = node.jet.normal();
        const Eigen::Vector3d parallel = (away * run).cross(normal);
        node.frame = frameAlong(node.jet, g * parallel + w.first * run);
        node.aft = parameterComponents(node.jet, node.frame.tangent);
        node.edgeBend = away * g *
                        (w.second - g * rate - (2 * rate * w.first * w.first + alongG * w.first) / g) /
                        std::pow(g * g + w.first * w.first, 1.5);
    }
    return line;
}

EvenMaster masterAlong(const std::vector<RowNode>& edge, double wanted) {
    double longest = 0;
    double run = 0;
    for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
        run = edge[i].alive && edge[i + 1].alive ? run + arcLength(edge[i], edge[i + 1]) : 0.0;
        longest = std::max(longest, run);
    }
    EvenMaster master;
    master.spacing = longest > 0 ? longest / std::max(1.0, std::round(longest / wanted)) : wanted;
    std::vector<MasterNode>& nodes = master.nodes;
    constexpr double hair = 1e-6; // mm, so that rounding drops no last node
    double next = 0;              // mm from edge[i] to the next node
    bool running = false;
    for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
        const RowNode& a = edge[i];
        const RowNode& b = edge[i + 1];
        if (!a.alive || !b.alive) {
            running = false;
            continue;
        }
        if (!running) {
            if (!nodes.empty()) {
                constexpr double nowhere = std::numeric_limits<double>::max();
                nodes.push_back({{nowhere, nowhere}, nodes.back().velocity, 0});
            }
            running = true;
            next = 0;
        }
        const double length = arcLength(a, b);
        const ParameterArc arc = arcBetween(a, b);
        const bool last = i + 2 == edge.size() || !edge[i + 2].alive;
        for (; next < length + (last ? hair : 0.0); next += master.spacing) {
            const double f = std::min(1.0, next / length);
            const Eigen::Vector2d rate = 6 * f * (1 - f) * (arc.end - arc.start) +
                                         (1 - f) * (1 - 3 * f) * arc.startRate -
                                         f * (2 - 3 * f) * arc.endRate;
            nodes.push_back({arc.at(f), rate / length, (1 - f) * a.edgeBend + f * b.edgeBend});
        }
        next -= length;
    }
    return master;
}

} // namespace sheerlay::geometry
