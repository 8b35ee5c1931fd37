#include "ui/scene/mould_mesh.hpp"

#include "core/solids/strip_bar.hpp"

#include <Eigen/Geometry>

#include <algorithm>

namespace sheerlay::ui {
namespace {

constexpr double outlineThinning = 0.3; // mm
constexpr double pastSheer = 25.0;      // mm a mould runs straight on past the sheer
constexpr double railHeight = 140.0;    // mm
constexpr double railThickness = 38.0;  // mm
constexpr double railOverhang = 60.0;   // mm past the outermost moulds
constexpr double crossHeight = 90.0;    // mm

} // namespace

TriangleMesh mouldPlate(const std::vector<Eigen::Vector3d>& section, const FrameSizes& sizes, bool aft) {
    TriangleMesh mesh;
    if (section.size() < 2)
        return mesh;
    std::vector<Eigen::Vector2d> outline; // half breadth, z from the keel to the strongback
    const std::vector<Eigen::Vector3d> thinned = core::thinned(section, outlineThinning);
    for (auto p = thinned.rbegin(); p != thinned.rend(); ++p)
        outline.emplace_back(p->y(), p->z());
    const Eigen::Vector2d sheer = outline.back();
    const double shoulder = std::min(sheer.y() + pastSheer, sizes.strongbackTop);
    const double leg = std::min(sheer.x(), sizes.legHalfWidth);
    outline.emplace_back(sheer.x(), shoulder);
    outline.emplace_back(leg, shoulder);
    outline.emplace_back(leg, sizes.strongbackTop);

    const double face = section.front().x();
    const double back = face + (aft ? sizes.plywood : -sizes.plywood);
    const double low = std::min(face, back);
    const double high = std::max(face, back);
    for (std::size_t i = 0; i + 1 < outline.size(); ++i) {
        const Eigen::Vector2d& a = outline[i];
        const Eigen::Vector2d& b = outline[i + 1];
        for (const double x : {low, high}) {
            const Eigen::Vector3d normal{x == low ? -1.0 : 1.0, 0.0, 0.0};
            mesh.quad({Eigen::Vector3d{x, a.x(), a.y()},
                       Eigen::Vector3d{x, b.x(), b.y()},
                       Eigen::Vector3d{x, -b.x(), b.y()},
                       Eigen::Vector3d{x, -a.x(), a.y()}},
                      normal);
        }
        const Eigen::Vector2d along = b - a;
        if (along.norm() < 1e-9)
            continue;
        for (const double side : {1.0, -1.0}) {
            // keel to strongback on starboard: outward is to the right of the way along
            const Eigen::Vector3d normal = Eigen::Vector3d{0.0, side * along.y(), -along.x()}.normalized();
            mesh.quad({Eigen::Vector3d{low, side * a.x(), a.y()},
                       Eigen::Vector3d{high, side * a.x(), a.y()},
                       Eigen::Vector3d{high, side * b.x(), b.y()},
                       Eigen::Vector3d{low, side * b.x(), b.y()}},
                      normal);
        }
    }
    const double top = sizes.strongbackTop;
    mesh.quad({Eigen::Vector3d{low, leg, top},
               Eigen::Vector3d{high, leg, top},
               Eigen::Vector3d{high, -leg, top},
               Eigen::Vector3d{low, -leg, top}},
              Eigen::Vector3d::UnitZ());
    return mesh;
}

TriangleMesh strongback(const std::vector<double>& mouldX, const FrameSizes& sizes) {
    TriangleMesh mesh;
    if (mouldX.empty())
        return mesh;
    const double first = mouldX.front() - railOverhang;
    const double last = mouldX.back() + railOverhang;
    const double top = sizes.strongbackTop;
    for (const double side : {1.0, -1.0}) {
        const double outer = side * sizes.legHalfWidth;
        const double inner = side * (sizes.legHalfWidth - railThickness);
        mesh.box({first, std::min(inner, outer), top}, {last, std::max(inner, outer), top + railHeight});
    }
    const double half = sizes.legHalfWidth - railThickness;
    for (const double x : mouldX)
        mesh.box({x - railThickness / 2, -half, top}, {x + railThickness / 2, half, top + crossHeight});
    return mesh;
}

} // namespace sheerlay::ui
