#include "core/planking/strip_ends.hpp"
#include "tests/support/catch.hpp"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRep_Tool.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Shape.hxx>
#include <TopoDS_Vertex.hxx>
#include <gp_Ax2.hxx>

#include <Eigen/Geometry>

#include <cmath>
#include <numbers>
#include <vector>

using namespace sheerlay::core;
using Eigen::Vector3d;

// An outside judge of the woven joint: two slabs of planking as solids, cut by OpenCASCADE's booleans. Laps
// are read off the corners of what is left, so no formula of ours takes part.

namespace {

constexpr double degrees = std::numbers::pi / 180, t = 6.35, w = 17.0;
constexpr double far = 1500; // mm, beyond every joint here

gp_Pnt point(const Vector3d& p) {
    return {p.x(), p.y(), p.z()};
}
gp_Dir direction(const Vector3d& d) {
    return {d.x(), d.y(), d.z()};
}

/// A box from a corner along three directions that are square to each other and right-handed.
TopoDS_Shape
box(const Vector3d& corner, const Vector3d& x, double dx, double dy, const Vector3d& z, double dz) {
    return BRepPrimAPI_MakeBox(gp_Ax2(point(corner), direction(z), direction(x)), dx, dy, dz).Shape();
}

/// One side: `in` runs from the stem (the z axis) into the boat, `out` is square to its faces, `up` the stem.
struct Slab {
    Vector3d in, out;
    [[nodiscard]] Vector3d up() const { return in.cross(out); }
    /// A strip of it past the stem and into the boat; `along` points past the stem.
    [[nodiscard]] TopoDS_Shape strip(const Vector3d& along) const {
        const Vector3d across = out.cross(along);
        return box(-0.5 * w * across - far / 2 * along, along, far, w, out, t);
    }
    /// The whole side, endless past the stem as well.
    [[nodiscard]] TopoDS_Shape whole() const {
        return box(-far * in - far * up(), up(), 2 * far, 2 * far, out, t); // up x in = out
    }
    /// Everything outside its outer face.
    [[nodiscard]] TopoDS_Shape outside() const {
        return box(t * out - far * in - far * up(), up(), 2 * far, 2 * far, out, far);
    }
};

struct Faces {
    double inner = 0.0, outer = 0.0; ///< mm along the strip, middle of the face's end
};

/// Where the faces of a cut strip end: the mean of the two corners that lie furthest along it on each face.
Faces endOf(const TopoDS_Shape& shape, const Slab& side, const Vector3d& along) {
    // what the cut left in the boat; a loose piece past the stem falls off
    Faces faces;
    int found = 0;
    for (TopExp_Explorer solids(shape, TopAbs_SOLID); solids.More(); solids.Next()) {
        std::vector<Vector3d> corners;
        for (TopExp_Explorer e(solids.Current(), TopAbs_VERTEX); e.More(); e.Next()) {
            const gp_Pnt p = BRep_Tool::Pnt(TopoDS::Vertex(e.Current()));
            corners.emplace_back(p.X(), p.Y(), p.Z());
        }
        double least = 1e9;
        for (const Vector3d& c : corners)
            least = std::min(least, c.dot(along));
        if (least > -far / 2 + 1)
            continue;
        ++found;
        const Vector3d across = side.out.cross(along);
        for (const double height : {0.0, t}) {
            double sum = 0;
            for (const double edge : {-0.5 * w, 0.5 * w}) {
                double last = -1e9;
                for (const Vector3d& c : corners)
                    if (std::abs(c.dot(side.out) - height) < 1e-6 && std::abs(c.dot(across) - edge) < 1e-6)
                        last = std::max(last, c.dot(along));
                REQUIRE(last > -far / 2 + 1);
                sum += last;
            }
            (height == 0.0 ? faces.inner : faces.outer) = sum / 2;
        }
    }
    REQUIRE(found == 1);
    return faces;
}

} // namespace

TEST_CASE("woven: two slabs as solids leave strips as long as the laps say") {
    for (const double dihedral : {28.0, 46.0, 61.0, 78.0, 90.0})
        for (const double beta : {9.0, 25.0, 52.0, 90.0}) {
            const double half = 0.5 * dihedral * degrees, b = beta * degrees;
            // the strip's side above the centreplane y = 0, the other side below it
            const Slab ours{{std::cos(half), std::sin(half), 0}, {-std::sin(half), std::cos(half), 0}};
            const Slab other{{std::cos(half), -std::sin(half), 0}, {-std::sin(half), -std::cos(half), 0}};
            const Vector3d along = std::cos(b) * Vector3d::UnitZ() - std::sin(b) * ours.in;
            const TopoDS_Shape strip = ours.strip(along);
            const Faces passing = endOf(BRepAlgoAPI_Cut(strip, other.outside()).Shape(), ours, along);
            const Faces fitted = endOf(BRepAlgoAPI_Cut(strip, other.whole()).Shape(), ours, along);
            const TopoDS_Shape starboard =
                box({-2 * far, 0, -2 * far}, Vector3d::UnitX(), 4 * far, 2 * far, Vector3d::UnitZ(), 4 * far);
            const Faces mitred = endOf(BRepAlgoAPI_Common(strip, starboard).Shape(), ours, along);
            for (const double height : {0.0, t / 2, t}) {
                INFO("dihedral " << dihedral << ", beta " << beta << ", laid " << height << " mm out");
                // on the centreplane, so many mm above the inner face
                const double origin = mitred.inner + (mitred.outer - mitred.inner) * height / t;
                const StemCorner corner{dihedral * degrees, b, t, height};
                const WeaveLap lap = weaveLap(corner), fit = fittedLap(corner);
                CHECK_THAT(lap.inner, WithinAbs(passing.inner - origin, 1e-5));
                CHECK_THAT(lap.outer, WithinAbs(passing.outer - origin, 1e-5));
                CHECK_THAT(fit.inner, WithinAbs(fitted.inner - origin, 1e-5));
                CHECK_THAT(fit.outer, WithinAbs(fitted.outer - origin, 1e-5));
            }
        }
}
