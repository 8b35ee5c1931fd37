#include "core/planking/start_chart.hpp"
#include "core/planking/start_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

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

TEST_CASE("between columns and rows the chart gives what a spline through the edge's own points gives") {
    const LoftedHull hull =
        loft(projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay")).value();
    StartLine start;
    start.kind = StartLine::Kind::Geodesic;
    start.girth = 261;
    const auto master = startLine(hull.laid, start, spacing).value();
    for (const auto side : {geometry::FanSide::TowardKeel, geometry::FanSide::TowardSheer}) {
        const StartChart chart(hull.laid, master, spacing, side, 8.5);
        const double toKeel = side == geometry::FanSide::TowardKeel ? 1 : -1;
        // an edge 120 mm from the start, wavering by 10 mm over 1.6 m
        const double wave = 2 * std::numbers::pi / 1600;
        const auto W = [&](double s) { return 120 + 10 * std::sin(wave * s); };
        std::vector<double> difference;
        for (std::size_t i = 2; i + 2 < chart.columns(); ++i) {
            const double s = spacing * static_cast<double>(i);
            std::array<Eigen::Vector3d, 5> p;
            Eigen::Vector3d normal = Eigen::Vector3d::Zero();
            bool in = true;
            for (std::size_t k = 0; k < 5 && in; ++k) {
                const double w = W(s + spacing * (static_cast<double>(k) - 2));
                in = chart.reaches(i + k - 2, w) && chart.inside(i + k - 2, w);
                if (!in)
                    break;
                const Eigen::Vector2d uv = chart.uv(i + k - 2, w);
                const geometry::SurfaceJet jet = hull.laid.surface.jet(uv.x(), uv.y());
                p[k] = jet.p;
                if (k == 2)
                    normal = jet.normal();
            }
            if (!in)
                continue;
            const Eigen::Vector3d first = (p[0] - 8 * p[1] + 8 * p[3] - p[4]) / (12 * spacing);
            const Eigen::Vector3d second =
                (-p[0] + 16 * p[1] - 30 * p[2] + 16 * p[3] - p[4]) / (12 * spacing * spacing);
            const Eigen::Vector3d across = normal.cross(first.normalized());
            const double kappa = toKeel * second.dot(across) / first.squaredNorm();
            const GraphPoint e{W(s), 10 * wave * std::cos(wave * s), -10 * wave * wave * std::sin(wave * s)};
            difference.push_back(std::abs(chart.edgeBend(i, e) - kappa));
            // and between columns nothing new happens
            const double between = chart.edgeBendBetween(static_cast<double>(i) + 0.5, e);
            const double mean = (chart.edgeBend(i, e) + chart.edgeBend(i + 1, e)) / 2;
            CHECK_THAT(between, WithinAbs(mean, 5e-6));
        }
        REQUIRE(difference.size() > 100);
        std::sort(difference.begin(), difference.end());
        CHECK(difference[difference.size() / 2] < 0.4e-6); // closing.md: median 0.0004, most 0.0007 /m
        CHECK(difference.back() < 2e-6);
    }
}
