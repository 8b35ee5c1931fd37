#include "core/planking/planking.hpp"
#include "core/solids/boat_shapes.hpp"
#include "core/surfaces/read_surface.hpp"
#include "geometry/occt/make_shape.hpp"
#include "geometry/occt/step_file.hpp"
#include "geometry/occt/surface_file.hpp"
#include "geometry/polyline.hpp"
#include "tests/support/made_project.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/scratch_file.hpp"
#include "tests/support/surface_writing.hpp"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeBox.hxx>

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// The three examples, lofted, written as STEP or IGES in the ways designers' programs do, read back, planked:
// against the strips planned straight from their tables.

namespace {

Project example(const std::string& name) {
    return projectAt(std::string(SHEERLAY_EXAMPLES) + "/" + name + "/" + name + ".sheerlay");
}

LoftedHull lofted(const Project& project) {
    auto hull = loft(project);
    REQUIRE(hull.has_value());
    return std::move(hull).value();
}

std::vector<TopoDS_Shape> facesOf(const LoftedHull& hull) {
    std::vector<TopoDS_Shape> shapes;
    for (const geometry::NamedShape& shape : hullShapes(hull))
        shapes.push_back(geometry::makeShape(shape));
    return shapes; // starboard, port
}

MadeText readBack(const std::string& path, const std::vector<std::string>& takes = {}) {
    const auto given = geometry::readSurfaceFile(path);
    if (!given)
        UNSCOPED_INFO(given.error().found);
    REQUIRE(given.has_value());
    return readSurface(*given, path, "Again", corrected(takes));
}

struct Apart {
    double most = 0.0, rms = 0.0; ///< mm, of the edges' points between their ends
    int points = 0, over = 0;     ///< over 0.05 mm
    double at = 0.0;              ///< mm from the bow, of the most
};

/// How far the strips of one plan lie off those of another, the datums laid over each other.
Apart apart(const Plan& one, const Plan& other, double shift) {
    Apart result;
    REQUIRE(one.strips.size() == other.strips.size());
    double squares = 0;
    for (std::size_t k = 0; k < one.strips.size(); ++k) {
        REQUIRE(one.strips[k].id == other.strips[k].id);
        for (const auto& [edge, image] : {std::pair{&one.strips[k].upperEdge, &other.strips[k].upperEdge},
                                          std::pair{&one.strips[k].lowerEdge, &other.strips[k].lowerEdge}})
            for (std::size_t i = 1; i + 1 < edge->size(); ++i) {
                const double d = geometry::distanceTo(*image, (*edge)[i] + Vector3d(shift, 0, 0));
                squares += d * d;
                ++result.points;
                result.over += d > 0.05 ? 1 : 0;
                if (d > result.most) {
                    result.most = d;
                    result.at = (*edge)[i].x();
                }
            }
    }
    result.rms = std::sqrt(squares / result.points);
    return result;
}

/// Planks the example by way of its surface, against its plan.
Apart byWayOf(const MadeText& read, const Planked& direct) {
    Project again = direct.project;
    again.hull = projectOf(read).hull;
    const LoftedHull second = lofted(again);
    const auto other = plank(again, second);
    REQUIRE(other.has_value());
    return apart(direct.plan, *other, second.xShift);
}

} // namespace

TEST_CASE("strips planned from our own exported hull lie where the table's do") {
    // Sedgewren's tapers magnify what her surfaces differ by: 0.002 mm rms amidships become 0.02 mm.
    for (const std::string name : {"brindlewick", "marsh-hen", "sedgewren"}) {
        const Planked direct = planked(example(name));
        const ScratchFile file("hull.step");
        REQUIRE(geometry::writeStep(hullShapes(direct.hull), name, "Test", file.path()).has_value());
        const Apart result = byWayOf(readBack(file.path()), direct);
        INFO(name << ": most " << result.most << " mm, rms " << result.rms << " mm, " << result.over << " of "
                  << result.points << " points over 0.05 mm");
        CHECK(result.points > 10'000);
        CHECK(result.most <= 0.05);
        CHECK(result.rms <= 0.01);
    }
}

TEST_CASE("a half, several faces, flipped ones, inches and IGES give the same strips") {
    const Planked direct = planked(example("marsh-hen"));
    const auto shapes = facesOf(direct.hull);
    const ScratchFile file("hull.x");
    const auto check = [&](const std::string& what) {
        const Apart result = byWayOf(readBack(file.path()), direct);
        INFO(what << ": most " << result.most << " mm at x " << result.at << ", rms " << result.rms << " mm");
        CHECK(result.most <= 0.05);
    };
    // port alone, in three faces that were never joined
    const TopoDS_Shape fore = BRepPrimAPI_MakeBox(gp_Pnt(-900, -900, -900), gp_Pnt(2000, 900, 900)).Shape();
    const TopoDS_Shape aft = BRepAlgoAPI_Cut(shapes[1], fore).Shape();
    const TopoDS_Shape low = BRepPrimAPI_MakeBox(gp_Pnt(-900, -900, -900), gp_Pnt(9000, 900, 120)).Shape();
    writeSurfaces({BRepAlgoAPI_Common(shapes[1], fore).Shape(),
                   BRepAlgoAPI_Common(aft, low).Shape(),
                   BRepAlgoAPI_Cut(aft, low).Shape()},
                  file.path());
    check("port alone in three faces");
    writeSurfaces({shapes[0].Reversed(), shapes[1]}, file.path(), "INCH");
    check("one face flipped, inches");
    writeIges(shapes, file.path());
    check("IGES");
    writeIges({shapes[0]}, file.path(), "INCH");
    check("starboard alone in IGES, inches");
}

TEST_CASE("a hull that lies otherwise in its file is turned") {
    const Project project = example("sedgewren");
    const LoftedHull hull = lofted(project);
    const ScratchFile file("hull.step");
    // length along z with the bow up, breadth along x, height along -y; moved off the origin
    gp_Trsf turn;
    turn.SetValues(0, 1, 0, 120, 0, 0, -1, 40, -1, 0, 0, 900);
    std::vector<TopoDS_Shape> shapes;
    for (const TopoDS_Shape& shape : facesOf(hull))
        shapes.push_back(moved(shape, turn));
    writeSurfaces(shapes, file.path());
    const MadeText read = readBack(file.path());
    const Project again = projectOf(read);
    REQUIRE(again.hull.transoms.size() == 1);
    CHECK(again.hull.transoms.front().end == End::Stern);
    const LoftedHull second = lofted(again);
    CHECK_THAT(second.drawn.length, WithinAbs(hull.drawn.length, 0.05));
    CHECK_THAT(second.drawn.beam, WithinAbs(hull.drawn.beam, 0.05));
    CHECK_THAT(second.drawn.halfArea, WithinRel(hull.drawn.halfArea, 1e-4));
}

TEST_CASE("a gap cut into one face is refused with its size and place") {
    const LoftedHull hull = lofted(example("marsh-hen"));
    const auto shapes = facesOf(hull);
    const ScratchFile file("hull.step");
    // 30 mm of the starboard side are missing, 2000 mm from the bow
    const TopoDS_Shape hole = BRepPrimAPI_MakeBox(gp_Pnt(2000, 50, 100), gp_Pnt(2030, 900, 130)).Shape();
    writeSurfaces({BRepAlgoAPI_Cut(shapes[0], hole).Shape()}, file.path());
    const std::string holed = refusalOf(readBack(file.path()));
    INFO(holed);
    CHECK(holed.find("a hole in the skin, 30.0 mm along the boat") != std::string::npos);
    CHECK(holed.find("2015 mm from the bow") != std::string::npos);
    // a slit from sheer to keel leaves two pieces
    const TopoDS_Shape slit = BRepPrimAPI_MakeBox(gp_Pnt(2000, -900, -900), gp_Pnt(2002, 900, 900)).Shape();
    writeSurfaces({BRepAlgoAPI_Cut(shapes[0], slit).Shape()}, file.path());
    const std::string parted = refusalOf(readBack(file.path()));
    INFO(parted);
    CHECK(parted.find("2 pieces of skin that do not meet: 2.00 mm apart") != std::string::npos);
    // one that begins at the sheer and ends in the side
    const TopoDS_Shape crack = BRepPrimAPI_MakeBox(gp_Pnt(2000, -900, 100), gp_Pnt(2002, 900, 900)).Shape();
    writeSurfaces({BRepAlgoAPI_Cut(shapes[0], crack).Shape()}, file.path());
    const std::string cracked = refusalOf(readBack(file.path()));
    INFO(cracked);
    CHECK(cracked.find("rises or falls") != std::string::npos);
    CHECK(cracked.find("200") != std::string::npos);
}

TEST_CASE("a closed box and a boat of millimetres are refused") {
    const ScratchFile file("box.step");
    writeSurfaces({BRepPrimAPI_MakeBox(4000, 800, 300).Shape()}, file.path());
    CHECK(refusalOf(readBack(file.path())).find("nothing but flat faces") != std::string::npos);
    gp_Trsf small; // metres written as if they were millimetres
    small.SetScale(gp_Pnt(0, 0, 0), 1e-3);
    writeSurfaces({moved(facesOf(lofted(example("marsh-hen")))[0], small)}, file.path());
    const std::string refusal = refusalOf(readBack(file.path()));
    CHECK(refusal.find("a boat 5.06 mm long") != std::string::npos);
    CHECK(refusal.find("units = m\"") != std::string::npos);
    CHECK(projectOf(readBack(file.path(), {"units = m"})).hull.stations.size() > 40);
}
