#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "ui/scene/girth_map.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

using namespace sheerlay;
using namespace sheerlay::ui;
using sheerlay::test::Spheroid;

namespace {

double area(const std::vector<Eigen::Vector2d>& polygon) {
    double twice = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Eigen::Vector2d& a = polygon[i];
        const Eigen::Vector2d& b = polygon[(i + 1) % polygon.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return 0.5 * std::abs(twice);
}

} // namespace

TEST_CASE("the map measures girth from the keel, around half circles") {
    const Spheroid hull;
    const GirthMap map([&](double x) { return hull.section(x, 200); }, 0.0, 4000.0);
    for (const double x : {150.0, 777.0, 2000.0, 3333.0, 3900.0}) {
        const double half = 0.5 * std::numbers::pi * hull.radiusAt(x);
        CHECK_THAT(map.halfGirth(x), WithinRel(half, 3e-3));
        for (const double part : {0.1, 0.5, 0.9}) {
            const Eigen::Vector3d p = hull.at(x, part * half);
            const Eigen::Vector2d there = map.place(p);
            CHECK(there.x() == p.x());
            CHECK_THAT(there.y(), WithinAbs((1.0 - part) * half, 0.005 * hull.radius));
            const Eigen::Vector2d port = map.place({p.x(), -p.y(), p.z()});
            CHECK_THAT(port.y(), WithinAbs(-there.y(), 1e-9));
        }
    }
}

TEST_CASE("a map without a hull puts everything on the keel line") {
    const GirthMap map([](double) { return std::vector<Eigen::Vector3d>(); }, 0.0, 1000.0);
    CHECK(map.ring(500.0, 0.0).empty());
    CHECK(map.halfGirth(500.0) == 0.0);
    CHECK(map.place({500.0, 100.0, 100.0}).y() == 0.0);
}

TEST_CASE("the scene has a picture for every strip, mould and line") {
    const auto boat = test::fakeBoat();
    REQUIRE(boat->scene.strips.size() == boat->plan.strips.size());
    CHECK(boat->scene.moulds.size() == boat->hull.stationX.size());
    CHECK(boat->scene.stations.size() == boat->hull.stationX.size());
    CHECK(boat->scene.lines.size() == 3);
    for (std::size_t i = 0; i < boat->plan.strips.size(); ++i) {
        const SceneStrip& strip = boat->scene.strips[i];
        CHECK(enclosedVolume(strip.fine.solid) > 0.0);
        CHECK(strip.fine.loop.front() == strip.fine.loop.back());
        // from afar: the same bar of fewer points
        CHECK(strip.coarse.solid.triangles.size() <= strip.fine.solid.triangles.size());
        CHECK_THAT(enclosedVolume(strip.coarse.solid), WithinRel(enclosedVolume(strip.fine.solid), 0.1));
        CHECK(boat->difficulty[i] == core::difficultyOf(boat->plan.strips[i]));
    }
}

TEST_CASE("stations on the map are called as the table calls them, also when one lies past the hull") {
    const Spheroid hull;
    const auto plain = test::fakeBoat(hull);
    CHECK(plain->scene.stations.at(2).name == "3"); // no table: counted
    core::Project project = plain->project;
    core::LoftedHull lofted = plain->hull;
    lofted.stationX.insert(lofted.stationX.begin(), -50.0);
    for (std::size_t i = 0; i < lofted.stationX.size(); ++i) {
        core::Station station;
        station.printedX = std::to_string(i) + "-6-0";
        project.hull.stations.push_back(station);
    }
    HullSections sections;
    sections.moulds = [hull](double x) { return hull.section(x, 40); };
    sections.laid = [hull](double x) { return hull.section(x, 200); };
    const auto boat = makeBoat(project, lofted, plain->plan, sections);
    REQUIRE(boat->scene.stations.size() == plain->scene.stations.size());
    CHECK(boat->scene.stations.front().name == "1-6-0");
    CHECK(boat->scene.stations.back().name == "9-6-0");
    CHECK(boat->scene.stations.back().x == plain->scene.stations.back().x);
}

TEST_CASE("a strip's area on the map is its girth integrated along x") {
    const Spheroid hull;
    const auto boat = test::fakeBoat(hull);
    for (const std::size_t index : {std::size_t{0}, std::size_t{7}}) {
        const core::Strip& strip = boat->plan.strips[index];
        const double shorter = strip.lowerEdge.back().x() - strip.lowerEdge.front().x();
        const double longer = strip.upperEdge.back().x() - strip.upperEdge.front().x();
        // between the edges' ends the strip covers one cover of girth everywhere; beyond, a sliver
        const double measured = area(boat->scene.strips[index].mapOutline);
        CHECK(measured > 0.99 * hull.cover * shorter);
        CHECK(measured < 1.01 * hull.cover * longer);
    }
}

TEST_CASE("a strip's outline on the map keeps to its edges, at the plumb ends as well") {
    const Spheroid hull;
    const auto boat = test::fakeBoat(hull);
    const GirthMap map([&](double x) { return hull.section(x, 200); }, 0.0, 2 * hull.halfLength);
    for (const std::size_t index : {std::size_t{0}, std::size_t{6}}) {
        const auto& outline = boat->scene.strips[index].mapOutline;
        for (const Eigen::Vector3d& vertex : boat->plan.strips[index].upperEdge) {
            const Eigen::Vector2d p = map.place(vertex);
            double nearest = 1e9;
            for (std::size_t i = 0; i + 1 < outline.size(); ++i) {
                const Eigen::Vector2d step = outline[i + 1] - outline[i];
                const double t = (p - outline[i]).dot(step) / std::max(1e-12, step.squaredNorm());
                nearest = std::min(nearest, (outline[i] + std::clamp(t, 0.0, 1.0) * step - p).norm());
            }
            CHECK(nearest < 0.31);
        }
    }
}

TEST_CASE("starboard lies on the positive side of the map, port mirrors it") {
    const auto boat = test::fakeBoat();
    for (std::size_t i = 0; i < boat->plan.strips.size(); i += 2) {
        const auto& starboard = boat->scene.strips[i].mapOutline;
        const auto& port = boat->scene.strips[i + 1].mapOutline;
        REQUIRE(starboard.size() == port.size());
        for (std::size_t k = 0; k < starboard.size(); ++k) {
            CHECK(starboard[k].y() >= 0.0);
            CHECK_THAT(port[k].y(), WithinAbs(-starboard[k].y(), 1e-9));
        }
    }
}

TEST_CASE("the laying order visits every strip once") {
    const auto boat = test::fakeBoat();
    const std::set<std::size_t> visited(boat->byOrder.begin(), boat->byOrder.end());
    CHECK(visited.size() == boat->plan.strips.size());
    for (std::size_t i = 0; i < boat->byOrder.size(); ++i)
        CHECK(boat->plan.strips[boat->byOrder[i]].order == static_cast<int>(i) + 1);
    CHECK(boat->strip("S03")->row == 3);
    CHECK(boat->strip("S99") == nullptr);
}
