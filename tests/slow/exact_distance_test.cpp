#include "tests/slow/polyhedral_hull.hpp"
#include "tests/slow/row_targets.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::test;

// Rows against exact shortest distances over a polyhedron, by CGAL. Both meshes have the start line's points
// every 5 mm for corners. Places of the plan whose foot on the line is such a point are
// judged without error from that; for the others the points are too far by at most 25 / (8 distance) mm,
// never too near. The meshes' own error falls with the square of their steps and is extrapolated away.

namespace {

constexpr MeshSteps coarseSteps{20, 10}, fineSteps{10, 5};
constexpr double linePoints = 5.0; // mm apart

double largest(const std::vector<double>& a, const std::vector<double>& b) {
    double most = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        most = std::max(most, std::abs(a[i] - b[i]));
    return most;
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

void judge(const std::string& file) {
    const Planked boat = planked(projectAt(std::string(SHEERLAY_REFERENCE) + "/" + file));
    REQUIRE(boat.plan.lastRow - boat.plan.firstRow > 30);
    const RowTargets rows = rowTargets(boat, 5, boat.plan.coverWidth);
    REQUIRE(rows.points.size() > 3000);
    const auto line = startParameters(boat, linePoints);
    const PolyhedralHull coarse(boat.hull.laid, line, coarseSteps);
    const PolyhedralHull fine(boat.hull.laid, line, fineSteps);
    CHECK(coarse.farthest(rows.points) < 0.15); // chord error; also: no row lies off the mesh
    CHECK(fine.farthest(rows.points) < 0.04);
    const auto far = coarse.exactDistances(rows.points);
    const auto near = fine.exactDistances(rows.points);
    const auto exact = extrapolated(far, near);
    const double meshError = largest(near, exact);
    std::vector<double> off;
    double tooNear = 0;
    for (std::size_t i = 0; i < exact.size(); ++i) {
        off.push_back(std::abs(exact[i] - rows.planned[i]));
        tooNear = std::max(tooNear, rows.planned[i] - exact[i]);
    }
    WARN(rows.points.size() << " places on rows " << boat.plan.firstRow << " to " << boat.plan.lastRow
                            << "; mm: planned distances are off the fine mesh's by "
                            << largest(near, rows.planned) << " at most, and that mesh by " << meshError
                            << " itself; off what the meshes tend to by " << largest(exact, rows.planned)
                            << " at most (points for the line included), too near by " << tooNear
                            << ", half of them by less than " << median(off));
    CHECK(meshError < 0.015);
    CHECK(largest(near, rows.planned) < 0.03);
    CHECK(largest(exact, rows.planned) < 0.03);
    CHECK(tooNear < 0.005);
    CHECK(median(off) < 0.002);
    // what is left is the mesh's: it falls to a quarter with the step
    std::vector<double> ratio;
    for (std::size_t i = 0; i < near.size(); ++i)
        if (rows.planned[i] > 250)
            ratio.push_back((far[i] - rows.planned[i]) / (near[i] - rows.planned[i]));
    REQUIRE(ratio.size() > 500);
    CHECK_THAT(median(ratio), WithinAbs(4, 0.5));
}

} // namespace

TEST_CASE("the judge itself: distances from a great circle") {
    constexpr double radius = 400;
    const auto hull = quarterSphere(radius);
    std::vector<Eigen::Vector2d> line;
    std::vector<Eigen::Vector3d> places;
    std::vector<double> closed;
    for (int i = -70; i <= 70; ++i) {
        const double a = i * 0.0175; // rad, about 1 degree
        line.emplace_back(radius * (1 + a / (std::numbers::pi / 2)), 0);
        for (int k = 1; k <= 6 && i % 10 == 5; ++k) { // not i = 0, it runs along a line of the mesh
            const double down = 0.1 * k;              // rad
            places.push_back(radius * Eigen::Vector3d(std::cos(down) * std::sin(a) + 1,
                                                      std::cos(down) * std::cos(a),
                                                      -std::sin(down)));
            closed.push_back(radius * down);
        }
    }
    const auto far = PolyhedralHull(hull.laid, line, {8, 8}).exactDistances(places);
    const auto near = PolyhedralHull(hull.laid, line, {4, 4}).exactDistances(places);
    CHECK(largest(far, closed) > 0.03); // the meshes do differ from the sphere
    CHECK(largest(near, closed) < 0.015);
    CHECK(largest(extrapolated(far, near), closed) < 0.005);
}

TEST_CASE("the canoe's rows from the sheer lie at their exact distances") {
    judge("formula_canoe.sheerlay");
}

TEST_CASE("the canoe's rows from a geodesic lie at their exact distances, fillers too") {
    judge("formula_canoe_geodesic.sheerlay");
}
