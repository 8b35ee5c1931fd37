#include "core/planking/start_line.hpp"

#include "core/hull/trimmed_surface.hpp"
#include "core/units/both_units.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace sheerlay::core {
namespace {

using geometry::MasterNode;

constexpr double insideDomain = 2.0; // mm the line stays clear of the surface's own end

/// The surface's line of one v, at equal arc lengths: the sheer is v = 0.
std::vector<MasterNode> alongLine(const TrimmedSurface& hull, double v, double spacing) {
    const geometry::TensorSurface& s = hull.surface;
    // all the way the surface goes: rows narrow as they go down a full hull, and must still reach its ends
    double u = s.knotsU().first + insideDomain;
    const double end = s.knotsU().last() - insideDomain;
    std::vector<MasterNode> nodes;
    while (u <= end) {
        const geometry::SurfaceJet j = s.jet(u, v);
        nodes.push_back({{u, v}, {1 / j.u.norm(), 0}, geometry::edgeBendOfULine(j)});
        const double half = u + 0.5 * spacing / j.u.norm(); // midpoint rule for the next equal arc
        u += spacing / s.jet(half, v).u.norm();
    }
    return nodes;
}

/// The same line `shift` mm further down (toward the keel), as a parallel of its own.
std::vector<MasterNode> moved(const TrimmedSurface& hull, const std::vector<MasterNode>& line, double shift) {
    geometry::ParallelFan fan(hull.surface,
                              line,
                              shift > 0 ? geometry::FanSide::TowardKeel : geometry::FanSide::TowardSheer,
                              rowBox(hull));
    fan.advance(std::abs(shift));
    std::vector<MasterNode> nodes;
    for (const geometry::RowNode& n : fan.row())
        if (n.alive)
            nodes.push_back({n.state.uv, n.aft, n.edgeBend});
    return nodes;
}

} // namespace

geometry::ParameterBox rowBox(const TrimmedSurface& hull) {
    const auto& ku = hull.surface.knotsU();
    const auto& kv = hull.surface.knotsV();
    return {ku.first, ku.last(), kv.first, kv.last()};
}

Expected<std::vector<MasterNode>, std::string>
startLine(const TrimmedSurface& hull, const StartLine& start, double spacing) {
    if (start.kind == StartLine::Kind::Easiest)
        throw std::invalid_argument("startLine: the easiest line must be searched first (start_search.hpp)");
    if (start.kind == StartLine::Kind::Sheer) {
        std::vector<MasterNode> sheer = alongLine(hull, 0, spacing);
        return start.shift == 0.0 ? sheer : moved(hull, sheer, start.shift);
    }
    if (start.kind == StartLine::Kind::Knuckle) {
        if (hull.surface.knotsV().crease == 0)
            return unexpected(std::string("the start line is the knuckle, but the hull has none"));
        return alongLine(hull, hull.surface.knotsV().creaseAt(), spacing);
    }
    const double girth = start.girth;
    if (girth >= hull.halfGirthMax)
        return unexpected("the start line lies " + bothUnits(girth) +
                          " below the sheer, but the widest section is only " + bothUnits(hull.halfGirthMax) +
                          " of girth down to the keel; give a smaller girth");
    const Eigen::Vector2d uv = parametersAtGirth(hull, hull.halfGirthMaxX, girth);
    geometry::EdgeBendProfile profile;
    profile.halfLength = hull.length / 2;
    if (start.kind == StartLine::Kind::Bent) {
        profile.k0 = start.edgeBend[0] * 1e-3;
        profile.k2 = start.edgeBend[1] * 1e-3;
        profile.k4 = start.edgeBend[2] * 1e-3;
    }
    std::vector<MasterNode> nodes;
    for (const geometry::BentLineNode& n : geometry::traceBentLine(
             hull.surface, uv, Eigen::Vector3d::UnitX(), profile, rowBox(hull), spacing, hull.length))
        nodes.push_back({n.uv, n.velocity, n.edgeBend});
    return nodes;
}

} // namespace sheerlay::core
