#include "geometry/mesh_sections.hpp"
#include "geometry/occt/make_shape.hpp"
#include "geometry/occt/step_file.hpp"
#include "geometry/occt/surface_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/scratch_file.hpp"
#include "tests/support/surface_writing.hpp"
#include "tests/support/surfaces.hpp"

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepPrimAPI_MakeBox.hxx>

#include <cmath>
#include <fstream>
#include <numbers>
#include <random>

using namespace sheerlay;
using namespace sheerlay::geometry;
using namespace sheerlay::test;

namespace {

constexpr double radius = 300;

/// A piece of pipe, 3000 long, from the horizontal down a quarter turn; to port its image.
NamedShape pipePiece(bool mirror) {
    TrimmedFace face{splineOf(
                         [](double u, double v) {
                             return Eigen::Vector3d(
                                 u, radius * std::cos(v / radius), -radius * std::sin(v / radius));
                         },
                         {-100, 40, 80},
                         {-60, 20, 30}),
                     {},
                     mirror};
    const double v = radius * std::numbers::pi / 2;
    face.boundary = {{{0, 0}, {3000, 0}}, {{3000, 0}, {3000, v}}, {{3000, v}, {0, v}}, {{0, v}, {0, 0}}};
    return {"Pipe", {}, face};
}

void checkPipe(const GivenFaces& given, double area) {
    double all = 0;
    for (const GivenFace& face : given.faces) {
        CHECK_FALSE(face.flat);
        all += face.area;
    }
    CHECK_THAT(all, WithinRel(area, 1e-4));
    CHECK(given.chord < 0.02);
    double worst = 0;
    for (const Eigen::Vector3d& p : given.mesh.points)
        worst = std::max(worst, std::abs(std::hypot(p.y(), p.z()) - radius));
    CHECK(worst < 1e-3); // the spline follows the circle about so near
    CHECK(given.faceOf.size() == given.mesh.triangles.size());
}

SurfaceFileProblem refused(const std::string& path) {
    const auto read = readSurfaceFile(path);
    REQUIRE_FALSE(read.has_value());
    CHECK_FALSE(read.error().would.empty());
    return read.error();
}

SurfaceFileProblem refusedText(const std::string& text) {
    const ScratchFile file("made.step");
    std::ofstream(file.path(), std::ios::binary) << text;
    return refused(file.path());
}

constexpr double quarter = 3000 * radius * std::numbers::pi / 2;

} // namespace

TEST_CASE("faces come back from STEP, joined where they meet") {
    const ScratchFile file("pipe.step");
    REQUIRE(writeStep({pipePiece(false), pipePiece(true)}, "Pipe", "Test", file.path()).has_value());
    const auto given = readSurfaceFile(file.path());
    REQUIRE(given.has_value());
    CHECK(given->faces.size() == 2);
    CHECK(given->unit == 1.0);
    CHECK(given->solids == 0);
    checkPipe(*given, 2 * quarter);
    // one rim: the two faces hang together along the keel
    CHECK(rimsOf(given->mesh).size() == 1);
    CHECK(std::ranges::max(piecesOf(given->mesh)) == 0);
    // every triangle's side in the middle is shared, so a plane cuts one line from rim to rim
    REQUIRE(MeshSections(given->mesh).at(1234.5).size() == 1);
}

TEST_CASE("inches and metres are taken into account, in STEP and IGES") {
    const ScratchFile file("pipe.x");
    const TopoDS_Shape shape = makeShape(pipePiece(false));
    for (const auto& [unit, mm] : {std::pair{"INCH", 25.4}, std::pair{"M", 1000.0}, std::pair{"MM", 1.0}}) {
        for (const bool iges : {false, true}) {
            iges ? writeIges({shape}, file.path(), unit) : writeSurfaces({shape}, file.path(), unit);
            const auto given = readSurfaceFile(file.path());
            INFO(unit << (iges ? " in IGES" : " in STEP"));
            REQUIRE(given.has_value());
            CHECK_THAT(given->unit, WithinRel(mm, 1e-9));
            CHECK_FALSE(given->unitName.empty());
            checkPipe(*given, quarter);
        }
    }
}

TEST_CASE("a file that holds no faces, or is none, is refused in words") {
    const ScratchFile file("odd.step");
    writeSurfaces({BRepBuilderAPI_MakeEdge(gp_Pnt(0, 0, 0), gp_Pnt(1000, 0, 0)).Edge()}, file.path());
    CHECK(refused(file.path()).found == "no face, only curves or points");
    CHECK(refused(file.path() + ".none").found == "no file that can be opened");
    CHECK(refused("/").found.find("no file") == 0);
    CHECK(refusedText("").found == "an empty file");
    CHECK(refusedText("x,y,z\n1,2,3\n").found == "neither STEP nor IGES by its first line");
    CHECK(refusedText("ISO-10303-21;\nHEADER;\nnothing\nEND-ISO-10303-21;\n").would.find("anew") !=
          std::string::npos);
}

TEST_CASE("a solid's faces are found and counted") {
    const ScratchFile file("box.step");
    writeSurfaces({BRepPrimAPI_MakeBox(4000, 800, 300).Shape()}, file.path());
    const auto given = readSurfaceFile(file.path());
    REQUIRE(given.has_value());
    CHECK(given->solids == 1);
    CHECK(given->faces.size() == 6);
    CHECK(std::ranges::all_of(given->faces, &GivenFace::flat));
    CHECK(isClosed(given->mesh) == false); // what the triangles face says nothing
    CHECK(rimsOf(given->mesh).empty());
}

TEST_CASE("files cut short and files with errors in them do no harm") {
    const ScratchFile good("good.step");
    const ScratchFile bad("bad.step");
    std::mt19937 random(7); // the same trials everywhere
    for (const bool iges : {false, true}) {
        const TopoDS_Shape shape = makeShape(pipePiece(false));
        iges ? writeIges({shape}, good.path()) : writeSurfaces({shape}, good.path());
        const std::string text = good.bytes();
        const auto write = [&](const std::string& made) {
            std::ofstream(bad.path(), std::ios::binary | std::ios::trunc) << made;
        };
        for (const double part : {0.1, 0.5, 0.9, 0.999}) {
            write(text.substr(0, static_cast<std::size_t>(part * static_cast<double>(text.size()))));
            CHECK(refused(bad.path()).found.find("without its last line") != std::string::npos);
        }
        int read = 0;
        for (int trial = 0; trial < 12; ++trial) {
            std::string broken = text;
            for (int k = 0; k < 1 + trial % 8; ++k)
                broken[200 + random() % (text.size() - 400)] = static_cast<char>('!' + random() % 90);
            write(broken);
            const auto given = readSurfaceFile(bad.path());
            if (given) {
                ++read;
                CHECK(given->mesh.points.size() > 2);
            } else {
                CHECK_FALSE(given.error().found.empty());
            }
        }
        CHECK(read > 0); // a letter in a name does no harm
    }
}
