#include "core/planking/strip_ends.hpp"

#include "core/planking/mesh_reading.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;
using geometry::Trim;

constexpr double trimAllowance = 10.0; // mm left to saw off past each end

double angleBetween(const Vector3d& a, const Vector3d& b) {
    const double angle = std::atan2(a.cross(b).norm(), a.dot(b));
    return std::min(angle, std::numbers::pi - angle);
}

struct Landing {
    Vector3d line;  ///< direction of the line the strip ends on
    Vector3d plane; ///< unit normal of the end face's plane, zero for a square end
};

Landing landing(const TrimmedSurface& hull, Trim trim, const geometry::SurfaceJet& j) {
    // along the trim's zero line: square to its gradient in the parameters
    const Eigen::Vector2d g = hull.trims.gradient(trim, j);
    const Vector3d line = j.u * g.y() - j.v * g.x();
    switch (trim) {
    case Trim::Sheer:
        return {line, Vector3d::Zero()};
    case Trim::BowPlane:
        return {line, Vector3d(1, 0, -hull.trims.bow->slope).normalized()};
    case Trim::SternPlane:
        return {line, Vector3d(1, 0, -hull.trims.stern->slope).normalized()};
    default:
        return {line, Vector3d::UnitY()};
    }
}

EndsOn endsOn(const TrimmedSurface& hull, Trim trim, double dihedral) {
    switch (trim) {
    case Trim::Sheer:
        return hull.trims.upper ? EndsOn::Strip : EndsOn::Sheer;
    case Trim::BowPlane:
    case Trim::SternPlane:
        return EndsOn::Transom;
    default:
        return dihedral <= std::numbers::pi / 2 ? EndsOn::Stem : EndsOn::Keel;
    }
}

} // namespace

WeaveLap weaveLap(double dihedral, double beta, double thickness, double laidHeight) {
    const double cot = 1 / std::tan(dihedral / 2);
    const double across = std::max(std::sin(beta), 1e-3);
    return {(thickness / std::sin(dihedral) - laidHeight * cot) / across,
            (thickness - laidHeight) * cot / across};
}

void endStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, const LayingContext& context) {
    if (piece.middle.empty())
        return;
    const TrimmedSurface& hull = *context.part;
    strip.cutLength = strip.length;
    for (const End which : {End::Bow, End::Stern}) {
        const bool bow = which == End::Bow;
        const RowPoint& at = bow ? piece.middle.front() : piece.middle.back();
        const Trim trim = bow ? piece.bowTrim : piece.sternTrim;
        const geometry::SurfaceJet j = hull.surface.jet(at.uv.x(), at.uv.y());
        const geometry::Frame frame = geometry::frameAlong(
            j, readMesh(piece.farEdgeCut() ? mesh.parent : mesh.middle, at.column).tangent);
        StripEnd& end = strip.ends[bow ? 0 : 1];
        end.end = which;
        end.x = at.p.x();
        end.z = at.p.z();
        end.dihedral = std::numbers::pi - 2 * std::asin(std::min(1.0, std::abs(frame.normal.y())));
        end.on = endsOn(hull, trim, end.dihedral);
        const Landing land = landing(hull, trim, j);
        end.cut = angleBetween(frame.tangent, land.line);
        end.bevel = std::asin(std::min(1.0, std::abs(frame.normal.dot(land.plane))));
        const EndStyle style = bow ? context.project->planking.bowEnds : context.project->planking.sternEnds;
        if (end.on == EndsOn::Stem && style == EndStyle::Weave) {
            const WeaveLap lap =
                weaveLap(end.dihedral, end.cut, context.project->strips.thickness, context.hull->laidHeight);
            end.lapInner = lap.inner;
            end.lapOuter = lap.outer;
            end.lap = std::max(lap.inner, lap.outer);
            // cut flush with the other side's outer face
            end.bevel = std::abs(std::numbers::pi / 2 - end.dihedral);
        }
        const bool pointed = (bow ? piece.middleWidth.front() : piece.middleWidth.back()) == 0.0;
        // left square past the line: half a width's run at this angle beyond the middle
        const double run = pointed ? 0.0 : 0.5 * mesh.widthAt(at.column) / std::tan(std::max(end.cut, 0.01));
        strip.cutLength += run + end.lap + trimAllowance;
    }
}

} // namespace sheerlay::core
