#include "geometry/mesh.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay::geometry;

namespace {

/// The starboard half of an open box: x 0 to 2, y 0 to 3, z 0 to 5, without the wall on the centreplane and
/// without the lid.
Mesh halfBox() {
    Mesh mesh;
    for (const double z : {0.0, 5.0})
        for (const auto& [x, y] : {std::pair{0.0, 0.0}, {2.0, 0.0}, {2.0, 3.0}, {0.0, 3.0}})
            mesh.points.emplace_back(x, y, z);
    const auto quad = [&](int a, int b, int c, int d) {
        mesh.triangles.push_back({a, b, c});
        mesh.triangles.push_back({a, c, d});
    };
    quad(0, 3, 2, 1); // floor, seen from below
    quad(1, 2, 6, 5); // x = 2
    quad(2, 3, 7, 6); // y = 3
    quad(3, 0, 4, 7); // x = 0
    return mesh;
}

} // namespace

TEST_CASE("a half is closed across the centreplane with a lid") {
    const Mesh half = halfBox();
    CHECK_FALSE(isClosed(half));
    const Mesh whole = closedAcrossCentre(half);
    CHECK(isClosed(whole));
    CHECK_THAT(enclosedVolume(whole), WithinRel(2.0 * 6.0 * 5.0, 1e-12));
}

TEST_CASE("what lies within reach of the centreplane is put on it, and nothing else") {
    Mesh half = halfBox();
    for (Eigen::Vector3d& p : half.points)
        if (p.y() == 0.0)
            p.y() = 0.2;
    const Mesh joined = closedAcrossCentre(half, 0.25);
    CHECK(isClosed(joined));
    CHECK(joined.points.size() == 12); // four on the centreplane, four a side
    const Mesh apart = closedAcrossCentre(half, 0.1);
    CHECK(isClosed(apart));
    CHECK(apart.points.size() == 16);
    CHECK_THAT(enclosedVolume(apart), WithinRel(60.0, 1e-12)); // the gap is bridged
}

TEST_CASE("a mesh with a hole or a triangle that faces inward is not closed") {
    Mesh whole = closedAcrossCentre(halfBox());
    Mesh hole = whole;
    hole.triangles.pop_back();
    CHECK_FALSE(isClosed(hole));
    std::swap(whole.triangles.front()[0], whole.triangles.front()[1]);
    CHECK_FALSE(isClosed(whole));
    CHECK_FALSE(isClosed(Mesh{}));
}

TEST_CASE("a mirror image keeps its volume and its outside") {
    const Mesh whole = closedAcrossCentre(halfBox());
    CHECK_THAT(enclosedVolume(mirrored(whole)), WithinRel(enclosedVolume(whole), 1e-12));
    const Mesh both = together(whole, mirrored(whole));
    CHECK(isClosed(both));
    CHECK_THAT(enclosedVolume(both), WithinRel(120.0, 1e-12));
}
