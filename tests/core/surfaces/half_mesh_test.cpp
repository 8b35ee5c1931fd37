#include "core/surfaces/half_mesh.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/given_hull.hpp"

#include <Eigen/Geometry>

#include <algorithm>

using namespace sheerlay;

namespace {

double areaOf(const geometry::Mesh& mesh) {
    double area = 0;
    for (const auto& t : mesh.triangles) {
        const auto at = [&](std::size_t i) { return mesh.points[static_cast<std::size_t>(t[i])]; };
        area += (at(1) - at(0)).cross(at(2) - at(0)).norm() / 2;
    }
    return area;
}

} // namespace

TEST_CASE("half of a whole hull has half its area and ends on the centreplane") {
    // turned about x by less than a triangle, so that no point lies on the plane before
    auto whole = test::givenHull({.whole = true}).mesh;
    for (auto& p : whole.points)
        p.y() += 1.25;
    const geometry::Mesh half = core::halfOf(whole, 1e-3);
    auto other = whole;
    for (auto& p : other.points)
        p.y() = -p.y();
    CHECK_THAT(areaOf(half) + areaOf(core::halfOf(other, 1e-3)), WithinRel(areaOf(whole), 1e-12));
    CHECK(std::ranges::all_of(half.points, [](const auto& p) { return p.y() >= 0.0; }));
    CHECK(std::ranges::any_of(half.points, [](const auto& p) { return p.y() == 0.0; }));
}

TEST_CASE("points near the centreplane are put on it; a half stays as it is") {
    auto half = test::givenHull({}).mesh;
    for (auto& p : half.points)
        if (p.y() == 0.0)
            p.y() = -0.004;
    const geometry::Mesh kept = core::halfOf(half, 0.01);
    CHECK(kept.triangles.size() == half.triangles.size());
    CHECK(std::ranges::none_of(kept.points, [](const auto& p) { return p.y() < 0.0; }));
    CHECK(core::halfOf(geometry::Mesh{}, 0.01).triangles.empty());
}
