#include "core/solids/boat_shapes.hpp"
#include "geometry/mesh.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <Eigen/Geometry>

#include <algorithm>
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

TEST_CASE("moulds are the boards they are sawn from, as solids and as closed triangles") {
    const core::LoftedHull pipe = quarterPipe(300.0, 2000.0);
    const core::Project project;
    const auto set = core::mouldsOf(project, pipe);
    REQUIRE(set);
    const auto shapes = core::mouldShapes(*set);
    const auto meshes = core::mouldMeshes(*set);
    REQUIRE(set->moulds.size() >= 5);
    REQUIRE(shapes.size() == set->moulds.size() + set->transoms.size());
    REQUIRE(meshes.size() == shapes.size());
    for (std::size_t i = 0; i < set->moulds.size(); ++i) {
        const core::Mould& mould = set->moulds[i];
        CHECK(shapes[i].name == "Mould " + mould.name);
        CHECK(meshes[i].name == shapes[i].name);
        // half a disc below the sheer, the horn on both sides above it, then the leg
        const double horn = 25.0, wide = 2 * 300.0, leg = 2 * mould.legHalfBreadth;
        const double area =
            0.5 * std::numbers::pi * 300.0 * 300.0 + wide * horn + leg * (mould.foot - mould.sheer - horn);
        CHECK(geometry::isClosed(meshes[i].mesh));
        CHECK_THAT(geometry::enclosedVolume(meshes[i].mesh), WithinRel(area * mould.thickness, 3e-4));
        const auto [low, high] =
            std::ranges::minmax(meshes[i].mesh.points, {}, [](const Eigen::Vector3d& p) { return p.x(); });
        CHECK_THAT(low.x(), WithinAbs(std::min(mould.x, mould.farFace()), 1e-9));
        CHECK_THAT(high.x(), WithinAbs(std::max(mould.x, mould.farFace()), 1e-9));
        CHECK_THAT(std::get<geometry::Board>(shapes[i].shape).through.norm(),
                   WithinAbs(mould.thickness, 1e-9));
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
