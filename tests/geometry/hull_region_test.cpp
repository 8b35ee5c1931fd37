#include "geometry/hull_region.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

using namespace sheerlay::geometry;
using Eigen::Vector2d;

namespace {

/// Crossings of a ray, counted without any bins.
bool evenOdd(const std::vector<Vector2d>& polygon, const Vector2d& p) {
    bool inside = false;
    for (std::size_t i = 0, k = polygon.size() - 1; i < polygon.size(); k = i++) {
        const Vector2d &a = polygon[i], &b = polygon[k];
        if ((a.y() > p.y()) != (b.y() > p.y()) &&
            p.x() < a.x() + (p.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y()))
            inside = !inside;
    }
    return inside;
}

double distanceTo(const std::vector<Vector2d>& polygon, const Vector2d& p) {
    double least = 1e300;
    for (std::size_t i = 0, k = polygon.size() - 1; i < polygon.size(); k = i++) {
        const Vector2d d = polygon[i] - polygon[k];
        const double f =
            d.squaredNorm() == 0 ? 0.0 : std::clamp((p - polygon[k]).dot(d) / d.squaredNorm(), 0.0, 1.0);
        least = std::min(least, (p - polygon[k] - f * d).norm());
    }
    return least;
}

} // namespace

TEST_CASE("inside is what a ray's crossings say, on random simple polygons") {
    const unsigned seed = 1234;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> d(0, 1);
    int seenInside = 0, seenOutside = 0;
    for (int n = 3; n < 60; ++n) {
        // star-shaped about its middle, so simple; long in u as a hull is
        std::vector<Vector2d> polygon;
        for (int i = 0; i < n; ++i) {
            const double a = 2 * std::numbers::pi * (i + 0.9 * d(random)) / n, r = 0.2 + d(random);
            polygon.emplace_back(2500 + 2400 * r * std::cos(a), 300 * r * std::sin(a));
        }
        if (n % 2 == 0)
            std::reverse(polygon.begin(), polygon.end()); // either way around
        const HullRegion region(polygon);
        CHECK(region.boundary().size() == polygon.size());
        for (int k = 0; k < 400; ++k) {
            const Vector2d p(-1000 + 7000 * d(random), -400 + 800 * d(random));
            if (distanceTo(polygon, p) < 1e-6)
                continue;
            const bool wanted = evenOdd(polygon, p);
            (wanted ? seenInside : seenOutside)++;
            INFO("seed " << seed << ", " << n << " corners, at " << p.transpose());
            CHECK(region.contains(p.x(), p.y()) == wanted);
        }
    }
    CHECK(seenInside > 1000);
    CHECK(seenOutside > 1000);
}

TEST_CASE("a polygon with edges square to u, as transoms give it") {
    const HullRegion region({{0, 0}, {100, 0}, {100, 50}, {60, 50}, {60, 20}, {0, 20}});
    CHECK(region.contains(1e-9, 10));
    CHECK_FALSE(region.contains(-1e-9, 10));
    CHECK(region.contains(99.999, 49.9));
    CHECK_FALSE(region.contains(100.001, 25));
    CHECK_FALSE(region.contains(59.999, 30));
    CHECK(region.contains(60.001, 30));
    CHECK_FALSE(region.contains(50, -0.001));
}

TEST_CASE("nothing lies in an empty region") {
    const HullRegion none;
    CHECK_FALSE(none.contains(0, 0));
    CHECK(none.boundary().empty());
}
