#include "core/solids/boat_shapes.hpp"
#include "geometry/mesh.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <Eigen/Geometry>

#include <cmath>
#include <numbers>
#include <set>

using namespace sheerlay;
using namespace sheerlay::test;

TEST_CASE("the hull's face is bounded by sheer, transoms and keel, end to end") {
    const core::LoftedHull pipe = quarterPipe(300.0, 2000.0);
    const geometry::TrimmedFace face = core::hullFace(pipe.drawn, false);
    REQUIRE(face.boundary.size() == 4);
    double twice = 0.0;
    for (std::size_t i = 0; i < face.boundary.size(); ++i) {
        const auto& line = face.boundary[i];
        CHECK(line.back() == face.boundary[(i + 1) % face.boundary.size()].front());
        for (std::size_t k = 0; k + 1 < line.size(); ++k)
            twice += line[k].x() * line[k + 1].y() - line[k].y() * line[k + 1].x();
    }
    // u is x and v arc length on this surface
    CHECK_THAT(0.5 * std::abs(twice), WithinRel(2000.0 * 300.0 * std::numbers::pi / 2, 1e-6));
    // stems at both ends: only the sheer and the keel's line
    CHECK(core::hullFace(quarterSphere(800.0).drawn, false).boundary.size() == 2);
}

TEST_CASE("moulds are the sections at the stations, sheer to sheer") {
    core::LoftedHull pipe = quarterPipe(300.0, 2000.0);
    core::Project project;
    const auto shapes = core::mouldShapes(project, pipe);
    const auto meshes = core::mouldMeshes(project, pipe);
    REQUIRE(shapes.size() >= 5);
    REQUIRE(meshes.size() == shapes.size());
    const double halfDisc = 0.5 * std::numbers::pi * 300.0 * 300.0;
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        CHECK(shapes[i].name == meshes[i].name);
        const auto& outline = std::get<geometry::FlatSheet>(shapes[i].shape).outline;
        double twice = 0.0;
        for (std::size_t k = 0; k < outline.size(); ++k) {
            const Eigen::Vector3d& p = outline[k];
            const Eigen::Vector3d& q = outline[(k + 1) % outline.size()];
            CHECK_THAT(p.x(), WithinAbs(outline.front().x(), 1e-9));
            twice += p.y() * q.z() - p.z() * q.y();
        }
        // chords of a circle of 60 a quarter: short by (pi / 120)^2 / 6 of the area
        CHECK_THAT(0.5 * std::abs(twice), WithinRel(halfDisc, 3e-4));
        double area = 0.0;
        const geometry::Mesh& mesh = meshes[i].mesh;
        for (const auto& t : mesh.triangles) {
            const auto at = [&](int k) { return mesh.points[static_cast<std::size_t>(k)]; };
            area += 0.5 * (at(t[1]) - at(t[0])).cross(at(t[2]) - at(t[0])).norm();
        }
        CHECK_THAT(area, WithinRel(halfDisc, 3e-4));
    }
}

TEST_CASE("every strip is a named shape and a closed mesh, port and starboard told apart") {
    const Planked boat = planked(projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    const auto shapes = core::stripShapes(boat.project, boat.hull, boat.plan);
    const auto meshes = core::stripMeshes(boat.project, boat.hull, boat.plan);
    REQUIRE(shapes.size() == boat.plan.strips.size());
    REQUIRE(meshes.size() == boat.plan.strips.size());
    std::set<std::string> names;
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        CHECK(shapes[i].name == boat.plan.strips[i].id);
        CHECK(meshes[i].name == boat.plan.strips[i].id);
        CHECK(std::get<geometry::RuledBar>(shapes[i].shape).breaks.size() >= 2);
        CHECK(geometry::isClosed(meshes[i].mesh));
        CHECK(geometry::enclosedVolume(meshes[i].mesh) > 0.0);
        names.insert(shapes[i].name);
    }
    CHECK(names.size() == shapes.size());
    core::Strip strip;
    const geometry::Colour starboard = core::stripColour(strip);
    strip.side = core::Side::Port;
    CHECK(core::stripColour(strip).red != starboard.red);
}
