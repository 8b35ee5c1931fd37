#include "geometry/mesh_sections.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay::geometry;

namespace {

/// A piece of pipe about the x axis, from angle 0 to `angle`; a whole turn is closed.
Mesh pipe(double radius, double length, double angle, bool closed) {
    constexpr int along = 20;
    constexpr int around = 48;
    Mesh mesh;
    const int columns = closed ? around : around + 1;
    for (int i = 0; i <= along; ++i)
        for (int j = 0; j < columns; ++j) {
            const double a = angle * j / around;
            mesh.points.emplace_back(length * i / along, radius * std::cos(a), radius * std::sin(a));
        }
    for (int i = 0; i < along; ++i)
        for (int j = 0; j < around; ++j) {
            const auto at = [&](int a, int b) { return a * columns + b % columns; };
            mesh.triangles.push_back({at(i, j), at(i + 1, j), at(i + 1, j + 1)});
            mesh.triangles.push_back({at(i, j), at(i + 1, j + 1), at(i, j + 1)});
        }
    return mesh;
}

double lengthOf(const std::vector<Eigen::Vector3d>& line) {
    double length = 0;
    for (std::size_t i = 1; i < line.size(); ++i)
        length += (line[i] - line[i - 1]).norm();
    return length;
}

} // namespace

TEST_CASE("a plane cuts a pipe in a ring, a piece of one in an arc") {
    // 48 chords of the circle: each 2 r sin(a / 2)
    const double chord = 2 * 300 * std::sin(std::numbers::pi / 48);
    const Mesh whole = pipe(300, 1000, 2 * std::numbers::pi, true);
    for (const double x : {123.4, 500.0, 1000.0}) { // 500 and 1000 are rows of points
        const auto lines = MeshSections(whole).at(x);
        REQUIRE(lines.size() == 1);
        CHECK(lines.front().front() == lines.front().back());
        CHECK_THAT(lengthOf(lines.front()), WithinAbs(48 * chord, 0.02 * 48 * chord));
        CHECK(std::ranges::all_of(lines.front(), [x](const auto& p) { return p.x() == x; }));
    }
    const Mesh half = pipe(300, 1000, std::numbers::pi, false);
    const auto arc = MeshSections(half).at(777.0);
    REQUIRE(arc.size() == 1);
    CHECK_THAT((arc.front().front() - arc.front().back()).norm(), WithinAbs(600.0, 1e-9));
    CHECK(MeshSections(half).at(1000.5).empty());
    CHECK(MeshSections(half).at(-0.5).empty());
    CHECK(MeshSections(half).at(0.0).empty()); // touched, not cut
    CHECK(MeshSections(Mesh{}).at(0.0).empty());
}

TEST_CASE("rims are where a mesh ends") {
    CHECK(rimsOf(pipe(300, 1000, 2 * std::numbers::pi, true)).size() == 2); // a ring at each end
    const auto rims = rimsOf(pipe(300, 1000, std::numbers::pi, false));
    REQUIRE(rims.size() == 1);
    CHECK(rims.front().front() == rims.front().back());
    CHECK(rims.front().size() == 2 * (20 + 48) + 1);
    Mesh holed = pipe(300, 1000, std::numbers::pi, false);
    holed.triangles.erase(holed.triangles.begin() + 500);
    REQUIRE(rimsOf(holed).size() == 2);
    CHECK(std::ranges::any_of(rimsOf(holed), [](const auto& rim) { return rim.size() == 4; }));
}

TEST_CASE("pieces hang together by their sides") {
    const Mesh one = pipe(300, 1000, std::numbers::pi, false);
    CHECK(std::ranges::max(piecesOf(one)) == 0);
    const std::vector<int> two = piecesOf(together(one, mirrored(one)));
    CHECK(std::ranges::max(two) == 1);
    CHECK(std::ranges::count(two, 0) == std::ranges::count(two, 1));
}
