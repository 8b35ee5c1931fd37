#include "core/outlines/half_section.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

double distance(DrawnPoint a, DrawnPoint b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// Puts `next` behind or in front of the chain where their ends meet.
bool join(std::vector<DrawnPoint>& chain, std::vector<DrawnPoint> next, double tolerance) {
    const auto meet = [tolerance](DrawnPoint a, DrawnPoint b) { return distance(a, b) <= tolerance; };
    if (meet(chain.front(), next.front()) || meet(chain.front(), next.back()))
        std::ranges::reverse(chain);
    if (meet(chain.back(), next.back()))
        std::ranges::reverse(next);
    if (!meet(chain.back(), next.front()))
        return false;
    chain.insert(chain.end(), next.begin() + 1, next.end());
    return true;
}

/// The side of positive x of a section that crosses the centreline once.
Expected<std::vector<DrawnPoint>, std::string> rightHalf(const std::vector<DrawnPoint>& chain) {
    std::vector<DrawnPoint> right;
    int crossings = 0;
    for (std::size_t i = 0; i < chain.size(); ++i) {
        if (i > 0 && (chain[i - 1].x < 0.0) != (chain[i].x < 0.0)) {
            ++crossings;
            const double part = chain[i - 1].x / (chain[i - 1].x - chain[i].x);
            right.push_back({0.0, chain[i - 1].y + part * (chain[i].y - chain[i - 1].y)});
        }
        if (chain[i].x >= 0.0)
            right.push_back(chain[i]);
    }
    if (crossings != 1)
        return unexpected(std::string("a curve that crosses the centreline ") + std::to_string(crossings) +
                          " times");
    return right;
}

} // namespace

std::vector<std::vector<DrawnPoint>> joined(std::vector<std::vector<DrawnPoint>> curves, double tolerance) {
    std::vector<std::vector<DrawnPoint>> chains;
    while (!curves.empty()) {
        std::vector<DrawnPoint> chain = std::move(curves.front());
        curves.erase(curves.begin());
        for (bool grew = true; grew;) {
            grew = false;
            for (std::size_t i = 0; i < curves.size() && !grew; ++i)
                if (join(chain, curves[i], tolerance)) {
                    curves.erase(curves.begin() + static_cast<std::ptrdiff_t>(i));
                    grew = true;
                }
        }
        chains.push_back(std::move(chain));
    }
    return chains;
}

Expected<std::vector<DrawnPoint>, std::string> halfSection(std::vector<DrawnPoint> chain, double tolerance) {
    if (chain.size() < 2 || distance(chain.front(), chain.back()) <= tolerance)
        return unexpected(std::string("a closed outline"));
    const auto [left, right] = std::ranges::minmax(chain, {}, &DrawnPoint::x);
    if (left.x < -tolerance && right.x > tolerance) {
        auto half = rightHalf(chain);
        if (!half)
            return unexpected(half.error());
        chain = std::move(half).value();
    } else if (-left.x > right.x) {
        for (DrawnPoint& point : chain)
            point.x = -point.x;
    }
    for (DrawnPoint& point : chain)
        point.x = std::max(point.x, 0.0); // within the tolerance
    if (chain.size() < 2 || std::abs(chain.front().y - chain.back().y) <= tolerance)
        return unexpected(
            std::string("a curve whose ends are equally high, so that sheer and keel can't be told apart"));
    if (chain.front().y < chain.back().y)
        std::ranges::reverse(chain);
    return chain;
}

std::vector<DrawnPoint> thinned(const std::vector<DrawnPoint>& points, std::size_t count) {
    if (points.size() <= count || count < 2)
        return points;
    std::vector<double> along{0.0};
    for (std::size_t i = 1; i < points.size(); ++i)
        along.push_back(along.back() + distance(points[i - 1], points[i]));
    std::vector<DrawnPoint> kept{points.front()};
    std::size_t last = 0;
    for (std::size_t k = 1; k + 1 < count; ++k) {
        const double wanted = along.back() * static_cast<double>(k) / static_cast<double>(count - 1);
        auto i = static_cast<std::size_t>(std::ranges::lower_bound(along, wanted) - along.begin());
        if (i > 0 && wanted - along[i - 1] < along[i] - wanted)
            --i;
        if (i <= last || i + 1 >= points.size())
            continue;
        kept.push_back(points[i]);
        last = i;
    }
    kept.push_back(points.back());
    return kept;
}

} // namespace sheerlay::core
