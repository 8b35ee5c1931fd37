#include "core/planking/start_chart.hpp"
#include "core/planking/start_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

constexpr double spacing = 25;

StartChart chartOf(const TrimmedSurface& hull, double step) {
    return {
        hull, startLine(hull, StartLine{}, spacing).value(), spacing, geometry::FanSide::TowardKeel, step};
}

} // namespace

TEST_CASE("on a pipe the chart is the unrolled plane") {
    const double R = 400, length = 3000;
    const LoftedHull hull = quarterPipe(R, length);
    const StartChart chart = chartOf(hull.laid, 8.5);
    REQUIRE(chart.columns() > 115);
    CHECK_THAT(chart.depth(), WithinAbs(R * std::numbers::pi / 2, 8.5));
    const std::size_t i = chart.columns() / 2;
    CHECK(chart.inside(i, 100));
    CHECK_FALSE(chart.inside(i, 650));
    CHECK_FALSE(chart.inside(0, 100)); // the start goes on past the transom
    CHECK(chart.reaches(i, 640));
    CHECK_THAT(chart.stretch(i, 333), WithinAbs(1, 1e-6));
    // a parabola w = a s^2 in the plane: kappa = 2a / (1 + (2 a s)^2)^1.5
    const double a = 1e-4;
    for (double s = -800; s < 800; s += 97) {
        const double expected = 2 * a / std::pow(1 + 4 * a * a * s * s, 1.5);
        CHECK_THAT(chart.edgeBend(i, {200 + a * s * s, 2 * a * s, 2 * a}), WithinRel(expected, 1e-5));
    }
}

TEST_CASE("on a sphere parallels bend as latitudes do, and a tilted great circle not at all") {
    const double R = 800;
    const LoftedHull hull = quarterSphere(R);
    const StartChart chart = chartOf(hull.laid, 8.5);
    const std::size_t mid = chart.columns() / 2;
    for (double w = 3; w < 900; w += 41) {
        CHECK_THAT(chart.stretch(mid, w), WithinRel(std::cos(w / R), 1e-5));
        CHECK_THAT(chart.edgeBend(mid, {w, 0, 0}), WithinAbs(std::tan(w / R) / R, 2e-8));
    }
    const double tilt = 0.25;
    for (std::size_t i = 10; i + 10 < chart.columns(); i += 3) {
        const double s = spacing * static_cast<double>(i) / R + 0.3; // longitude from the node, rad
        const auto W = [&](double t) { return R * std::atan(std::tan(tilt) * std::sin(t)); };
        if (W(s) < 0)
            continue;
        const double h = 1e-4;
        const GraphPoint e{
            W(s), (W(s + h) - W(s - h)) / (2 * h * R), (W(s + h) - 2 * W(s) + W(s - h)) / (h * h * R * R)};
        CHECK_THAT(chart.edgeBend(i, e), WithinAbs(0, 3e-8));
    }
}
