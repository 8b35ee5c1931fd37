#include "core/sheets/graph.hpp"

#include "core/sheets/compose.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

std::string tickText(double value, double step) {
    return numberText(value, step < 1.0 ? 1 : 0);
}

/// Height of the curve at a place across, along its chords.
double heightAt(const std::vector<Vector2d>& points, double x) {
    for (std::size_t i = 1; i < points.size(); ++i)
        if (x <= points[i].x()) {
            const double bay = points[i].x() - points[i - 1].x();
            const double f = bay > 0.0 ? std::max(0.0, (x - points[i - 1].x()) / bay) : 0.0;
            return std::lerp(points[i - 1].y(), points[i].y(), f);
        }
    return points.back().y();
}

} // namespace

double roundStep(double range) {
    const double rough = range / 9;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double f : {1.0, 2.0, 5.0})
        if (f * power >= rough * (1 - 1e-9))
            return f * power;
    return 10 * power;
}

std::vector<Item> drawGraph(const Graph& graph, double width, double height, double type) {
    std::vector<Item> items;
    if (graph.points.size() < 2)
        return items;
    Vector2d low(0, 0), high = graph.points.front();
    for (const Vector2d& p : graph.points) {
        low = low.cwiseMin(p);
        high = high.cwiseMax(p);
    }
    high = high.cwiseMax(low + Vector2d(1e-9, 1e-9));
    const Vector2d step(roundStep(high.x() - low.x()),
                        roundStep(1.5 * (high.y() - low.y()))); // paper is wide, not high
    const auto beyond = [](double value, double by) { return std::ceil(value / by - 1e-9) * by; };
    low = {-beyond(-low.x(), step.x()), -beyond(-low.y(), step.y())};
    high = {beyond(high.x(), step.x()), beyond(high.y(), step.y())};

    const double titled = graph.title.empty() ? 0.0 : 2.4 * type;
    const double left = 6 * type, top = titled + 1.8 * type, right = width - 2 * type,
                 bottom = height - 3.2 * type;
    const auto at = [&](const Vector2d& p) {
        return Vector2d(left + (p.x() - low.x()) / (high.x() - low.x()) * (right - left),
                        bottom - (p.y() - low.y()) / (high.y() - low.y()) * (bottom - top));
    };
    for (double x = low.x(); x <= high.x() + 0.5 * step.x(); x += step.x()) {
        items.emplace_back(makeLine(at({x, low.y()}), at({x, high.y()}), LineKind::Thin, colours::bench));
        items.emplace_back(makeText(at({x, low.y()}) + Vector2d(0, 1.3 * type),
                                    tickText(x, step.x()),
                                    {.size = type, .anchor = Anchor::Middle}));
    }
    for (double y = low.y(); y <= high.y() + 0.5 * step.y(); y += step.y()) {
        items.emplace_back(makeLine(at({low.x(), y}), at({high.x(), y}), LineKind::Thin, colours::bench));
        items.emplace_back(makeText(at({low.x(), y}) + Vector2d(-0.6 * type, 0.35 * type),
                                    tickText(y, step.y()),
                                    {.size = type, .anchor = Anchor::Right}));
    }
    items.emplace_back(makeLine(at({low.x(), 0}), at({high.x(), 0}), LineKind::Thin));
    items.emplace_back(makeLine(at({0, low.y()}), at({0, high.y()}), LineKind::Thin));
    items.emplace_back(
        makeText({right, height - 0.4 * type}, graph.across, {.size = type, .anchor = Anchor::Right}));
    items.emplace_back(makeText({0.0, titled + 0.9 * type}, graph.up, {.size = type}));

    if (!graph.title.empty())
        items.emplace_back(
            makeText({0.0, 1.5 * type}, graph.title, {.size = 1.6 * type, .weight = Weight::Bold}));

    Path curve;
    curve.colour = colours::lineBlue;
    for (const Vector2d& p : graph.points)
        curve.points.push_back(at(p));
    items.emplace_back(std::move(curve));
    int below = 0;
    for (const auto& [x, words] : graph.marks) {
        const Vector2d foot = at({x, low.y()}), head = at({x, heightAt(graph.points, x)});
        items.emplace_back(makeLine(head, foot, LineKind::Hidden, colours::cedar));
        const bool toLeft = foot.x() > (left + right) / 2;
        items.emplace_back(makeText(
            Vector2d(foot.x() + (toLeft ? -1 : 1) * 0.6 * type, bottom - (0.8 + 1.5 * below++) * type),
            words,
            {.size = type, .anchor = toLeft ? Anchor::Right : Anchor::Left}));
    }
    return items;
}

} // namespace sheerlay::core
