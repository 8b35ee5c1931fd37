#include "core/solids/strip_bar.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/pipe_strip.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using sheerlay::test::onCylinder;

namespace {

constexpr double radius = 300.0;
constexpr double thickness = 6.35;
constexpr StripFaces bothSides{-0.5 * thickness, 0.5 * thickness};

/// mm2: the section's area from its four corners.
double sectionArea(const geometry::RuledBar::Break& b) {
    const Eigen::Vector3d across = b.at[2].p - b.at[0].p;
    return 0.5 * across.cross(b.at[3].p - b.at[1].p).norm();
}

} // namespace

TEST_CASE("a strip's mesh is a closed bar of its length, chord and thickness, port as starboard") {
    for (const Side side : {Side::Starboard, Side::Port}) {
        const geometry::Mesh mesh = stripMesh(onCylinder(radius, 0.60, 0.66, 1500.0, side), bothSides, 0.01);
        CHECK(geometry::isClosed(mesh));
        CHECK(mesh.points.size() == 8); // straight edges: their ends suffice
        // edges are moved along the middle's normal, so the bar keeps its width through its thickness
        CHECK_THAT(geometry::enclosedVolume(mesh),
                   WithinRel(1500.0 * 2.0 * radius * std::sin(0.03) * thickness, 1e-9));
    }
}

TEST_CASE("a strip that runs out to points is closed without a needless point") {
    Strip strip = onCylinder(radius, 0.60, 0.66, 1500.0, Side::Starboard);
    for (std::size_t i = 0; i < strip.lowerEdge.size(); ++i) { // a lens
        const double f = std::sin(std::numbers::pi * static_cast<double>(i) / 20.0);
        strip.lowerEdge[i] = strip.upperEdge[i] + f * (strip.lowerEdge[i] - strip.upperEdge[i]);
    }
    strip.lowerEdge.front() = strip.upperEdge.front();
    strip.lowerEdge.back() = strip.upperEdge.back();
    const geometry::Mesh mesh = stripMesh(strip, bothSides, 0.01);
    CHECK(geometry::isClosed(mesh));
    std::vector<bool> used(mesh.points.size(), false);
    for (const auto& t : mesh.triangles)
        for (const int i : t)
            used[static_cast<std::size_t>(i)] = true;
    CHECK(std::all_of(used.begin(), used.end(), [](bool u) { return u; }));
    // a lens of sine shape holds 2 / pi of its rectangle; 20 chords of the sine take off pi^2 / (12 * 400)
    const double full = 1500.0 * 2.0 * radius * std::sin(0.03) * thickness;
    CHECK_THAT(geometry::enclosedVolume(mesh), WithinRel(full * 2.0 / std::numbers::pi, 0.005));
    const geometry::RuledBar bar = stripBar(strip, bothSides);
    REQUIRE(bar.breaks.size() >= 2);
    for (const auto* end : {&bar.breaks.front(), &bar.breaks.back()})
        CHECK_THAT((end->at[0].p - end->at[1].p).norm(), WithinAbs(pointWidth, 1e-9));
}

TEST_CASE("a strip's smooth bar has its edges where the faces stand") {
    for (const Side side : {Side::Starboard, Side::Port}) {
        const geometry::RuledBar bar = stripBar(onCylinder(radius, 0.60, 0.66, 1500.0, side), {-2.0, 5.0});
        REQUIRE(bar.breaks.size() == 2);
        const double chord = 2.0 * radius * std::sin(0.03);
        const double level = radius * std::cos(0.03); // of both edges, along the middle's normal
        const Eigen::Vector3d normal(
            0.0, (side == Side::Port ? -1.0 : 1.0) * std::cos(0.63), -std::sin(0.63));
        for (const auto& b : bar.breaks) {
            CHECK_THAT(sectionArea(b), WithinRel(chord * 7.0, 1e-9));
            for (std::size_t k = 0; k < 4; ++k)
                CHECK_THAT(b.at[k].p.dot(normal), WithinAbs(level + (k < 2 ? 5.0 : -2.0), 1e-9));
            CHECK(b.at[0].p.z() > b.at[1].p.z()); // the upper edge comes first
        }
    }
}

TEST_CASE("normals between two places of the middle are in between") {
    Strip strip = onCylinder(radius, 0.60, 0.66, 1500.0, Side::Starboard);
    strip.middle = {{0, 0, 0}, {1500, 0, 0}};
    strip.middleNormal = {{0, 1, 0}, {0, std::sqrt(0.5), -std::sqrt(0.5)}};
    const BarEdge edge = barEdge(strip, {{375, 3, 4}, {1500, -3, 4}});
    const Eigen::Vector3d expected =
        (0.75 * strip.middleNormal[0] + 0.25 * strip.middleNormal[1]).normalized();
    CHECK((edge.normals[0] - expected).norm() < 1e-12);
    CHECK((edge.normals[1] - strip.middleNormal[1]).norm() < 1e-12);
}

TEST_CASE("a band between two lines uses every step of both once") {
    std::vector<Eigen::Vector3d> upper;
    std::vector<Eigen::Vector3d> lower;
    for (int i = 0; i <= 10; ++i)
        upper.emplace_back(i, 0, 0);
    for (const double x : {0.0, 1.5, 9.0, 10.0})
        lower.emplace_back(x, 0, -1);
    const auto band = bandBetween(upper, lower);
    CHECK(band.size() == 10 + 3);
    double area = 0.0;
    const auto at = [&](int i) {
        const auto k = static_cast<std::size_t>(i);
        return k < upper.size() ? upper[k] : lower[k - upper.size()];
    };
    for (const auto& t : band)
        area += 0.5 * (at(t[1]) - at(t[0])).cross(at(t[2]) - at(t[0])).norm();
    CHECK_THAT(area, WithinAbs(10.0, 1e-12));
}

TEST_CASE("which side is down is asked of the strip") {
    const Strip starboard = onCylinder(radius, 0.60, 0.66, 1500.0, Side::Starboard);
    const Strip port = onCylinder(radius, 0.60, 0.66, 1500.0, Side::Port);
    const auto sign = [](const Strip& s) {
        return acrossSign(barEdge(s, s.upperEdge), barEdge(s, s.lowerEdge));
    };
    CHECK(sign(starboard) == -sign(port));
}

TEST_CASE("thinning stays within its tolerance and keeps both ends") {
    std::vector<Eigen::Vector3d> line;
    for (int i = 0; i <= 400; ++i) {
        const double angle = 0.5 * std::numbers::pi * i / 400;
        line.emplace_back(1000.0 * std::cos(angle), 1000.0 * std::sin(angle), 50.0 * angle);
    }
    const double tolerance = 0.15;
    const std::vector<Eigen::Vector3d> thin = thinned(line, tolerance);
    CHECK(thin.front() == line.front());
    CHECK(thin.back() == line.back());
    CHECK(thin.size() < line.size() / 5);
    double worst = 0.0;
    for (const Eigen::Vector3d& p : line) {
        double nearest = 1e9;
        for (std::size_t i = 0; i + 1 < thin.size(); ++i) {
            const Eigen::Vector3d chord = thin[i + 1] - thin[i];
            const double t = std::clamp((p - thin[i]).dot(chord) / chord.squaredNorm(), 0.0, 1.0);
            nearest = std::min(nearest, (p - thin[i] - t * chord).norm());
        }
        worst = std::max(worst, nearest);
    }
    CHECK(worst <= tolerance);
}

TEST_CASE("a straight line thins to its ends") {
    std::vector<Eigen::Vector3d> line;
    for (int i = 0; i <= 50; ++i)
        line.emplace_back(i, 2.0 * i, -i);
    CHECK(thinned(line, 0.01).size() == 2);
}
