#include "geometry/graph_edge.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <vector>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

const ParameterBox everywhere{-1e9, 1e9, -1e9, 1e9};
constexpr double spacing = 20;

struct Edge {
    std::vector<RowNode> line;
    std::vector<double> s, distance;
};

/// The edge at distance W(s) from a master, reached in steps as rows are.
template <class F>
Edge edgeFrom(const Surface& surface, const std::vector<MasterNode>& master, FanSide side, double from, F W) {
    Edge e;
    for (std::size_t i = 0; i < master.size(); ++i) {
        e.s.push_back(from + spacing * static_cast<double>(i));
        e.distance.push_back(W(e.s.back()));
    }
    ParallelFan fan(surface, master, side, everywhere);
    std::vector<double> part = e.distance;
    for (double& d : part)
        d /= 10;
    for (int k = 0; k < 10; ++k)
        fan.advance(part);
    e.line = turnedOntoEdge(fan.row(), e.distance, spacing, side);
    return e;
}

std::vector<MasterNode> straightOnCylinder() {
    std::vector<MasterNode> m;
    for (double u = -600; u <= 600; u += spacing)
        m.push_back({{u, 0}, {1, 0}, 0});
    return m;
}

} // namespace

TEST_CASE("on a cylinder an edge drawn as a circle in the unrolled plane bends like that circle") {
    const CylinderSurface cylinder(400);
    const double rho = 1500;
    for (const FanSide side : {FanSide::TowardKeel, FanSide::TowardSheer}) {
        const double away = side == FanSide::TowardKeel ? 1 : -1;
        const auto W = [&](double s) { return 200 - (rho - std::sqrt(rho * rho - s * s)); }; // bows away
        const Edge e = edgeFrom(cylinder, straightOnCylinder(), side, -600, W);
        for (std::size_t i = 3; i + 3 < e.line.size(); ++i) {
            const RowNode& n = e.line[i];
            CHECK_THAT(n.state.uv.y(), WithinAbs(away * e.distance[i], 1e-9));
            // its centre lies on the master's side
            CHECK_THAT(n.edgeBend, WithinRel(-away / rho, 1e-5));
            const double slope = -e.s[i] / std::sqrt(rho * rho - e.s[i] * e.s[i]);
            const Vector2d unit = Vector2d(1, away * slope).normalized();
            CHECK((n.aft - unit).norm() < 1e-7);
            CHECK_THAT(n.frame.tangent.norm(), WithinAbs(1, 1e-12));
            CHECK_THAT(n.frame.across.dot(n.frame.tangent), WithinAbs(0, 1e-12));
        }
    }
}

TEST_CASE("on a sphere a tilted great circle, told from the equator, has no edge bend") {
    const double R = 1200, tilt = 0.3;
    const RevolutionSurface s = sphere(R);
    std::vector<MasterNode> equator;
    for (int i = 0; i <= 60; ++i)
        equator.push_back({{0, -spacing * i / R}, {0, -1 / R}, 0});
    const auto W = [&](double a) { return R * std::atan(std::tan(tilt) * std::sin(a / R + 0.4)); };
    const Edge e = edgeFrom(s, equator, FanSide::TowardKeel, 0, W);
    for (std::size_t i = 2; i + 2 < e.line.size(); ++i)
        CHECK_THAT(e.line[i].edgeBend, WithinAbs(0, 2e-9)); // 1/mm
    CHECK(std::abs(e.line[20].state.jacobiRate) > 1e-5);    // the parallel there is bent
}

TEST_CASE("a new master along an edge starts its parallels where the edge lies") {
    const CylinderSurface cylinder(400);
    const double rho = 900;
    const auto W = [&](double s) {
        return 150 + rho - std::sqrt(rho * rho - s * s);
    }; // hollow: bends to the keel
    const Edge e = edgeFrom(cylinder, straightOnCylinder(), FanSide::TowardKeel, -600, W);
    const EvenMaster even = masterAlong(e.line, spacing);
    const std::vector<MasterNode>& master = even.nodes;
    REQUIRE(master.size() > 60);
    CHECK_THAT(even.spacing, WithinAbs(spacing, 0.2));
    CHECK((master.back().uv - e.line.back().state.uv).norm() < 1e-5); // nothing is lost at the end
    const Vector2d centre(0, 150 + rho);
    double last = 0;
    for (std::size_t i = 0; i < master.size(); ++i) {
        const Vector2d d = master[i].uv - centre;
        if (i < 4 || i + 4 >= master.size())
            continue; // one-sided differences at the very ends, outside any hull: 0.004 mm
        CHECK_THAT(d.norm(), WithinAbs(rho, 1e-4));
        const double angle = std::atan2(d.x(), -d.y());
        if (i > 4)
            CHECK_THAT((angle - last) * rho, WithinAbs(even.spacing, 1e-4));
        last = angle;
        CHECK_THAT(master[i].velocity.norm(), WithinAbs(1, 1e-5));
        CHECK_THAT(master[i].velocity.dot(d), WithinAbs(0, 1e-2));
    }
    ParallelFan fan(cylinder, master, FanSide::TowardKeel, everywhere);
    for (int k = 1; k <= 10; ++k) {
        fan.advance(17);
        for (std::size_t i = 3; i + 3 < fan.row().size(); ++i) {
            CHECK_THAT((fan.row()[i].state.uv - centre).norm(), WithinAbs(rho - 17 * k, 1e-4));
            CHECK_THAT(fan.row()[i].edgeBend, WithinRel(1 / (rho - 17 * k), 1e-4));
        }
    }
}

TEST_CASE("an edge that dies in between gives two runs, parted by a node outside every box") {
    const CylinderSurface cylinder(400);
    Edge e = edgeFrom(cylinder, straightOnCylinder(), FanSide::TowardKeel, -600, [](double) { return 50; });
    for (std::size_t i = 25; i < 30; ++i)
        e.line[i].alive = false;
    const std::vector<MasterNode> master = masterAlong(e.line, spacing).nodes;
    ParallelFan fan(cylinder, master, FanSide::TowardKeel, {-1e4, 1e4, -1e4, 1e4});
    int dead = 0;
    for (const RowNode& n : fan.row())
        dead += !n.alive;
    CHECK(dead == 1);
    CHECK_THAT(fan.row().front().state.uv.x(), WithinAbs(-600, 1e-9));
}
