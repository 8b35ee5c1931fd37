#include "core/outlines/drawing.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr int perSpan = 16;
constexpr std::size_t mostPoles = 10'000; // a half section has dozens

/// A pole with its weight, and weighted.
struct Weighted {
    double x = 0.0;
    double y = 0.0;
    double w = 1.0;
};

/// De Boor's rule: point at u of the span that begins with knot k.
DrawnPoint pointAt(const DrawnSpline& spline, std::size_t k, double u) {
    const auto degree = static_cast<std::size_t>(spline.degree);
    std::vector<Weighted> d;
    for (std::size_t i = k - degree; i <= k; ++i) {
        const double w = spline.weights.empty() ? 1.0 : spline.weights[i];
        d.push_back({spline.poles[i].x * w, spline.poles[i].y * w, w});
    }
    for (std::size_t round = 1; round <= degree; ++round)
        for (std::size_t j = degree; j >= round; --j) {
            const std::size_t i = k - degree + j;
            const double from = spline.knots[i];
            const double part = (u - from) / (spline.knots[i + degree - round + 1] - from);
            const auto between = [part](double a, double b) { return a + part * (b - a); };
            d[j] = {between(d[j - 1].x, d[j].x), between(d[j - 1].y, d[j].y), between(d[j - 1].w, d[j].w)};
        }
    return {d[degree].x / d[degree].w, d[degree].y / d[degree].w};
}

bool isSpline(const DrawnSpline& spline) {
    if (spline.degree < 1 || spline.degree > 15 || spline.poles.size() > mostPoles)
        return false;
    const auto degree = static_cast<std::size_t>(spline.degree);
    if (spline.poles.size() < degree + 1 || spline.knots.size() != spline.poles.size() + degree + 1)
        return false;
    if (!spline.weights.empty() && spline.weights.size() != spline.poles.size())
        return false;
    return std::ranges::is_sorted(spline.knots) &&
           std::ranges::all_of(spline.weights, [](double w) { return w > 0.0; });
}

} // namespace

std::vector<DrawnPoint>
arcPoints(DrawnPoint centre, double radiusX, double radiusY, double from, double sweep) {
    constexpr double step = std::numbers::pi / 180;
    const auto count = static_cast<int>(std::ceil(std::min(std::abs(sweep), 2 * std::numbers::pi) / step));
    std::vector<DrawnPoint> points;
    for (int i = 0; i <= std::max(count, 1); ++i) {
        const double angle = from + sweep * i / std::max(count, 1);
        points.push_back({centre.x + radiusX * std::cos(angle), centre.y + radiusY * std::sin(angle)});
    }
    return points;
}

std::vector<DrawnPoint> splinePoints(const DrawnSpline& spline) {
    std::vector<DrawnPoint> points;
    if (!isSpline(spline))
        return points;
    const auto degree = static_cast<std::size_t>(spline.degree);
    for (std::size_t k = degree; k < spline.poles.size(); ++k) {
        const double from = spline.knots[k];
        const double to = spline.knots[k + 1];
        if (!(to > from))
            continue;
        for (int i = points.empty() ? 0 : 1; i <= perSpan; ++i)
            points.push_back(pointAt(spline, k, from + (to - from) * i / perSpan));
    }
    return points;
}

} // namespace sheerlay::core
