#include "core/solids/boat_shapes.hpp"
#include "geometry/occt/mesh_files.hpp"
#include "geometry/occt/step_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/scratch_file.hpp"
#include "tests/support/step_reading.hpp"

#include <cmath>
#include <map>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::test;

namespace {

const std::vector<std::string> examples{"brindlewick", "marsh-hen", "sedgewren", "tanglepike"};

/// mm2, of the flat outline: what is sawn from the board, inside the trims.
double flatArea(const core::Strip& strip) {
    double twice = 0.0;
    for (std::size_t i = 0; i < strip.outline.size(); ++i) {
        const Eigen::Vector2d& p = strip.outline[i];
        const Eigen::Vector2d& q = strip.outline[(i + 1) % strip.outline.size()];
        twice += p.x() * q.y() - p.y() * q.x();
    }
    return 0.5 * std::abs(twice);
}

/// Planked once for all that is asked of it.
const Planked& example(const std::string& name) {
    static std::map<std::string, Planked> boats;
    if (!boats.contains(name))
        boats.emplace(name, planked(projectAt(SHEERLAY_EXAMPLES "/" + name + "/" + name + ".sheerlay")));
    return boats.at(name);
}

} // namespace

// Measure: OpenCASCADE's volume of each solid read back, against the strip's flattened area times its
// thickness. The planking is laid by its mid-thickness in the examples, so bending takes off inside what it
// adds outside.
TEST_CASE("every strip of the examples comes back from STEP as one valid solid of its wood") {
    for (const std::string& name : examples) {
        INFO(name);
        const Planked& boat = example(name);
        REQUIRE(boat.project.planking.layOn == core::LayOn::MidThickness);
        const ScratchFile file(name + ".step");
        REQUIRE(geometry::writeStep(
            core::stripShapes(boat.project, boat.hull, boat.plan), name, "Test", file.path()));
        const std::vector<StepThing> things = readStepFile(file.path());
        REQUIRE(things.size() == boat.plan.strips.size());
        double solids = 0.0;
        double wood = 0.0;
        for (std::size_t i = 0; i < things.size(); ++i) {
            const core::Strip& strip = boat.plan.strips[i];
            INFO(strip.id);
            CHECK(things[i].name == strip.id);
            CHECK(things[i].solids == 1);
            CHECK(things[i].valid);
            CHECK(things[i].colour);
            const double board = flatArea(strip) * boat.project.strips.thickness;
            solids += things[i].volume;
            wood += board;
            // a thin piece at the sheer: to 0.01 mm of its width
            const double hair = 0.01 * strip.length * boat.project.strips.thickness;
            // a centre piece lies flat across the keel, where its outline is measured over both sides
            CHECK_THAT(things[i].volume,
                       WithinRel(board, strip.side == core::Side::Centre ? 0.03 : 1e-3) ||
                           WithinAbs(board, hair));
        }
        CHECK_THAT(solids, WithinRel(wood, 1e-3));
    }
}

TEST_CASE("the examples' hulls come back from STEP with their area, and close to a body") {
    for (const std::string& name : examples) {
        INFO(name);
        const core::LoftedHull& hull = example(name).hull;
        const ScratchFile file(name + "-hull.step");
        REQUIRE(geometry::writeStep(core::hullShapes(hull), name, "Test", file.path()));
        const std::vector<StepThing> things = readStepFile(file.path());
        REQUIRE(things.size() == 2);
        for (const StepThing& thing : things) {
            CHECK(thing.valid);
            CHECK_THAT(thing.area, WithinRel(hull.drawn.halfArea, 1e-4));
        }
        const auto half = geometry::faceMesh(core::hullFace(hull.drawn, false), 0.2);
        REQUIRE(half);
        const geometry::Mesh body = geometry::closedAcrossCentre(*half, 0.45);
        CHECK(geometry::isClosed(body));
        // against sections of the loft, by Simpson over 200 of them
        double sum = 0.0;
        constexpr int slices = 200;
        for (int i = 0; i <= slices; ++i) {
            const double x = hull.drawn.length * i / slices;
            const auto section = core::sectionAt(hull.drawn, x, 200);
            double area = 0.0; // both sides, under the lid
            for (std::size_t k = 0; k + 1 < section.size(); ++k)
                area += (section[k].y() + section[k + 1].y()) * (section[k].z() - section[k + 1].z());
            sum += area * (i == 0 || i == slices ? 1.0 : i % 2 == 1 ? 4.0 : 2.0);
        }
        const double volume = sum * hull.drawn.length / slices / 3.0;
        CHECK_THAT(geometry::enclosedVolume(body), WithinRel(volume, 2e-3));
    }
}

// Measure: OpenCASCADE's volume of each solid read back, against the board's triangles, and the moulds'
// against area times thickness by the shoelace rule.
TEST_CASE("the examples' moulds, stem forms and transoms come back from STEP as one valid solid each") {
    for (const std::string& name : examples) {
        INFO(name);
        const Planked& boat = example(name);
        const auto set = core::mouldsOf(boat.project, boat.hull);
        REQUIRE(set);
        const ScratchFile file(name + "-moulds.step");
        REQUIRE(geometry::writeStep(core::mouldShapes(*set), name, "Test", file.path()));
        const std::vector<StepThing> things = readStepFile(file.path());
        const std::vector<geometry::NamedMesh> meshes = core::mouldMeshes(*set);
        REQUIRE(things.size() == meshes.size());
        double solids = 0.0;
        for (std::size_t i = 0; i < things.size(); ++i) {
            INFO(meshes[i].name);
            CHECK(things[i].name == meshes[i].name);
            CHECK(things[i].solids == 1);
            CHECK(things[i].valid);
            CHECK(geometry::isClosed(meshes[i].mesh));
            CHECK_THAT(geometry::enclosedVolume(meshes[i].mesh), WithinRel(things[i].volume, 1e-3));
            if (things[i].name.starts_with("Mould"))
                solids += things[i].volume;
        }
        double boards = 0.0; // both halves of each mould, as its pattern has them
        for (const core::Mould& mould : set->moulds) {
            double twice = 0.0;
            for (std::size_t k = 0; k < mould.outline.size(); ++k) {
                const Eigen::Vector2d& p = mould.outline[k];
                const Eigen::Vector2d& q = mould.outline[(k + 1) % mould.outline.size()];
                twice += p.x() * q.y() - p.y() * q.x();
            }
            boards += std::abs(twice) * mould.thickness;
        }
        CHECK_THAT(solids, WithinRel(boards, 1e-3));
    }
}
