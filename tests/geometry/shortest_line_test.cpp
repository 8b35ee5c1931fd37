#include "geometry/shortest_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

std::vector<Vector3d> lineOn(const Surface& surface, const Vector2d& from, const Vector2d& to, int pieces) {
    std::vector<Vector3d> points;
    for (const Vector2d& uv : shortestLine(surface, from, to, pieces))
        points.push_back(surface.jet(uv.x(), uv.y()).p);
    return points;
}

} // namespace

TEST_CASE("in a plane the shortest line is straight, its pieces alike") {
    const PlaneSurface plane({1, 2, 3}, {2, 0, 1}, {0.5, 1, -3});
    const std::vector<Vector3d> line = lineOn(plane, {-40, 10}, {300, 80}, 8);
    REQUIRE(line.size() == 9);
    CHECK_THAT(smoothLength(line), WithinAbs((line.back() - line.front()).norm(), 1e-9));
    for (std::size_t i = 1; i < line.size(); ++i)
        CHECK_THAT((line[i] - line[i - 1]).norm(), WithinAbs((line.back() - line.front()).norm() / 8, 1e-9));
}

TEST_CASE("unrolled, a cylinder's shortest line is straight") {
    const CylinderSurface pipe(400);
    const Vector2d from(100, 30), to(1300, 560);
    const std::vector<Vector3d> line = lineOn(pipe, from, to, 64);
    CHECK_THAT(smoothLength(line), WithinAbs((to - from).norm(), 1e-4));
}

TEST_CASE("on a cone the line follows the unrolled sector, far from the straight way between parameters") {
    const double half = 0.4; // rad, of the cone's opening
    const RevolutionSurface surface = cone(half);
    const Vector2d from(500, 0.2), to(900, 2.2);
    const double sector = (to.y() - from.y()) * std::sin(half);
    const double exact = std::sqrt(from.x() * from.x() + to.x() * to.x() -
                                   2 * from.x() * to.x() * std::cos(sector)); // cosine rule
    CHECK_THAT(smoothLength(lineOn(surface, from, to, 64)), WithinAbs(exact, 1e-3));
}

TEST_CASE("on a sphere it is the great circle, also between two places of one latitude") {
    const double R = 500;
    const RevolutionSurface ball = sphere(R);
    const Vector2d from(0.9, 0.1), to(0.9, 2.4);
    const Vector3d a = ball.jet(from.x(), from.y()).p, b = ball.jet(to.x(), to.y()).p;
    const double exact = R * std::acos(a.dot(b) / (R * R));
    const std::vector<Vector3d> line = lineOn(ball, from, to, 64);
    CHECK_THAT(smoothLength(line), WithinAbs(exact, 1e-3));
    const Vector3d axis = a.cross(b).normalized();
    for (const Vector3d& p : line)
        CHECK_THAT(p.dot(axis), WithinAbs(0.0, 0.01));
}

TEST_CASE("the length of a smooth line is told from its chords") {
    for (const int points : {9, 10}) {
        std::vector<Vector3d> arc;
        for (int i = 0; i < points; ++i) {
            const double t = 1.2 * i / (points - 1);
            arc.emplace_back(300 * std::cos(t), 300 * std::sin(t), 0);
        }
        // chords alone are short by theta^2 / 24 of a piece
        CHECK_THAT(smoothLength(arc), WithinAbs(360.0, points == 9 ? 0.005 : 0.35));
    }
}

TEST_CASE("the nearest place of a surface is the foot of the point") {
    const RevolutionSurface ball = sphere(500);
    const Vector2d there(0.4, 0.7);
    const Vector3d out = 1.02 * ball.jet(there.x(), there.y()).p;
    const Vector2d found = nearestPlace(ball, out, {0.1, 0.3});
    CHECK_THAT((found - there).norm(), WithinAbs(0.0, 1e-8));
}

TEST_CASE("a line of no pieces is no line") {
    CHECK_THROWS_AS(shortestLine(PlaneSurface({0, 0, 0}, {1, 0, 0}, {0, 1, 0}), {0, 0}, {1, 1}, 0),
                    std::invalid_argument);
}
