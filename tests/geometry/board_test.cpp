#include "geometry/board.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay::geometry;
using Eigen::Vector3d;

namespace {

/// A half disc with a square notch in its straight side, in a plane of constant x; `turned` the other way
/// round.
std::vector<Vector3d> notched(bool turned) {
    std::vector<Vector3d> line;
    for (int i = 0; i <= 60; ++i) {
        const double a = std::numbers::pi * i / 60;
        line.emplace_back(7.0, 100.0 * std::cos(a), -100.0 * std::sin(a));
    }
    for (const auto& [y, z] :
         {std::pair{-10.0, 0.0}, {-10.0, -20.0}, {10.0, -20.0}, {10.0, 0.0}, {40.0, 0.0}})
        line.emplace_back(7.0, y, z);
    if (turned)
        std::reverse(line.begin(), line.end());
    return line;
}

} // namespace

TEST_CASE("a board with a notch closes, faces outward and has its area times its thickness") {
    // sixty triangles of the disc, less the notch
    const double area = 60 * 0.5 * 100.0 * 100.0 * std::sin(std::numbers::pi / 60) - 20.0 * 20.0;
    for (const bool turned : {false, true})
        for (const double through : {18.0, -18.0}) {
            const std::vector<Vector3d> line = notched(turned);
            const Mesh mesh = boardMesh({{line, {line.back(), line.front()}}, {through, 0.0, 0.0}});
            CHECK(mesh.points.size() == 2 * line.size());
            CHECK(mesh.triangles.size() == 4 * line.size() - 4); // two faces of n - 2, n edges of 2
            CHECK(isClosed(mesh));
            CHECK_THAT(enclosedVolume(mesh), WithinRel(18.0 * area, 1e-12));
        }
}

TEST_CASE("a board that leans has the volume of its upright height") {
    const std::vector<Vector3d> square{{0, 0, 0}, {0, 50, 0}, {0, 50, 40}, {0, 0, 40}, {0, 0, 0}};
    CHECK_THAT(enclosedVolume(boardMesh({{square}, {6.0, 0.0, 3.0}})), WithinRel(50.0 * 40.0 * 6.0, 1e-12));
}

TEST_CASE("no board where nothing is enclosed or nothing is thick") {
    const auto line = [](std::vector<Vector3d> points) {
        points.push_back(points.front());
        return points;
    };
    CHECK(boardMesh({{line({{0, 0, 0}, {0, 1, 0}})}, {1, 0, 0}}).triangles.empty());
    CHECK(boardMesh({{line({{0, 0, 0}, {0, 1, 0}, {0, 2, 0}})}, {1, 0, 0}}).triangles.empty());
    CHECK(boardMesh({{line({{0, 0, 0}, {0, 1, 0}, {0, 0, 1}})}, {0, 0, 0}}).triangles.empty());
}
