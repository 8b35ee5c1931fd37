#include "geometry/occt/step_file.hpp"
#include "tests/support/bent_bar.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/scratch_file.hpp"
#include "tests/support/step_reading.hpp"
#include "tests/support/surfaces.hpp"

#include <BRepGProp_Face.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::geometry;
using namespace sheerlay::test;

namespace {

/// A piece of pipe, 1000 long, from the horizontal down to `angle`.
TrimmedFace pipePiece(double radius, double angle, bool mirror) {
    TrimmedFace face{splineOf(
                         [radius](double u, double v) {
                             return Eigen::Vector3d(
                                 u, radius * std::cos(v / radius), -radius * std::sin(v / radius));
                         },
                         {-100, 40, 30},
                         {-60, 20, 30}),
                     {},
                     mirror};
    const double v = radius * angle;
    face.boundary = {{{0, 0}, {1000, 0}}, {{1000, 0}, {1000, v}}, {{1000, v}, {0, v}}, {{0, v}, {0, 0}}};
    return face;
}

/// A board 18 thick, round below and straight above.
Board halfDisc(double radius) {
    std::vector<Eigen::Vector3d> round;
    for (int i = 0; i <= 60; ++i) {
        const double a = std::numbers::pi * i / 60;
        round.emplace_back(5.0, radius * std::cos(a), -radius * std::sin(a));
    }
    return {{round, {round.back(), round.front()}}, {-18.0, 0.0, 0.0}};
}

/// The normal of the first face, amidst its parameters, on the side that counts as outside.
Eigen::Vector3d outwardAt(const TopoDS_Shape& shape) {
    const TopoDS_Face face = TopoDS::Face(TopExp_Explorer(shape, TopAbs_FACE).Current());
    const BRepGProp_Face read(face);
    double u0 = 0, u1 = 0, v0 = 0, v1 = 0;
    read.Bounds(u0, u1, v0, v1);
    gp_Pnt p;
    gp_Vec n;
    read.Normal(0.5 * (u0 + u1), 0.5 * (v0 + v1), p, n);
    n.Normalize();
    return {n.X(), n.Y(), n.Z()};
}

} // namespace

TEST_CASE("a bar comes back from its STEP file as one valid solid of its volume, name and colour") {
    const ScratchFile file("bar.step");
    const double angle = 1.5;
    const Colour colour{0.8, 0.4, 0.2};
    const auto written = writeStep({{"S07", colour, withFewBreaks(bentBar(800, 800 * angle, 16, 6), 0.02)},
                                    {"Fülleisten 3", colour, bentBar(500, 500, 16, 6)}},
                                   "Bars",
                                   "Test",
                                   file.path());
    REQUIRE(written);
    CHECK(*written == 2);
    const std::vector<StepThing> things = readStepFile(file.path());
    REQUIRE(things.size() == 2);
    CHECK(things[0].name == "S07");
    CHECK(things[0].valid);
    CHECK(things[0].solids == 1);
    CHECK(things[0].faces == 6);
    // Pappus: section times the way of its centroid
    CHECK_THAT(things[0].volume, WithinRel(16.0 * 6.0 * 803.0 * angle, 1e-4));
    REQUIRE(things[0].colour);
    const Quantity_Color asked(colour.red, colour.green, colour.blue, Quantity_TOC_sRGB);
    CHECK(things[0].colour->Distance(asked) < 0.01);
    CHECK(things[1].valid);
    CHECK(things[1].name.find("lleisten 3") != std::string::npos);
}

TEST_CASE("a trimmed surface and its mirror image keep their area and face outward") {
    const ScratchFile file("pipe.step");
    const double radius = 300.0;
    const double angle = 1.2;
    REQUIRE(writeStep({{"Starboard", {}, pipePiece(radius, angle, false)},
                       {"Port", {}, pipePiece(radius, angle, true)},
                       {"Board", {}, halfDisc(radius)}},
                      "Pipe",
                      "Test",
                      file.path()));
    const std::vector<StepThing> things = readStepFile(file.path());
    REQUIRE(things.size() == 3);
    for (std::size_t i = 0; i < 2; ++i) {
        CHECK(things[i].valid);
        CHECK(things[i].faces == 1);
        CHECK_THAT(things[i].area, WithinRel(1000.0 * radius * angle, 1e-5));
        const Eigen::Vector3d along = outwardAt(things[i].shape);
        CHECK(along.z() < -0.1); // down and away from the centreplane
        CHECK(along.y() * (i == 0 ? 1.0 : -1.0) > 0.1);
    }
    CHECK(things[2].valid);
    CHECK(things[2].solids == 1);
    CHECK(things[2].faces == 4); // two flat, the round edge, the straight one
    // cubics through points 3 degrees apart
    CHECK_THAT(things[2].volume, WithinRel(0.5 * std::numbers::pi * radius * radius * 18.0, 1e-5));
}

TEST_CASE("the same shapes make the same file") {
    const ScratchFile one("one.step");
    const ScratchFile two("two.step");
    const std::vector<NamedShape> shapes{{"A", {}, bentBar(800, 500, 16, 6)},
                                         {"B", {}, pipePiece(300, 1, true)}};
    REQUIRE(writeStep(shapes, "Twice", "Test", one.path()));
    REQUIRE(writeStep(shapes, "Twice", "Test", two.path()));
    CHECK(one.bytes().size() > 1000);
    CHECK((one.bytes() == two.bytes())); // not worth printing
}

TEST_CASE("what can't be built or written is told") {
    const ScratchFile file("none.step");
    const auto empty = writeStep({{"S01", {}, RuledBar{}}}, "None", "Test", file.path());
    REQUIRE_FALSE(empty);
    CHECK(empty.error().find("S01") != std::string::npos);
    const std::string nowhere = file.path() + "/no/such/folder.step";
    const auto lost = writeStep({{"S01", {}, bentBar(800, 500, 16, 6)}}, "Lost", "Test", nowhere);
    REQUIRE_FALSE(lost);
    CHECK(lost.error().find(nowhere) != std::string::npos);
}
