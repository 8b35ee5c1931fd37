#include "core/planking/strip_ends.hpp"

#include "core/planking/laying_order.hpp"
#include "core/planking/mesh_reading.hpp"
#include "core/planking/row_columns.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;
using geometry::Trim;

constexpr double leastSiding = 0.5; // mm, half of what can be called a stem piece
constexpr double leastSine = 1e-3;  // sides or strips all but parallel
constexpr double leastCut = 0.01;   // rad

double angleBetween(const Vector3d& a, const Vector3d& b) {
    const double angle = std::atan2(a.cross(b).norm(), a.dot(b));
    return std::min(angle, std::numbers::pi - angle);
}

/// The line a strip ends on and the plane its end face is cut to.
struct Landing {
    Vector3d line;
    Vector3d plane; ///< unit normal; zero for a square end
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
    default: // the centreplane, or the side of a keel and stem that may grow thinner toward their ends
        return {line, Vector3d(-hull.trims.siding.slopeAt(j.p.x()), 1, 0).normalized()};
    }
}

/// mm along the strip from its middle line's end until the face `height` above the laid surface meets the
/// plane.
/// @param outward  unit, along the strip past its end
double
runToPlane(const geometry::Frame& frame, const Vector3d& outward, const Vector3d& plane, double height) {
    constexpr double flattest = 0.02; // a strip all but parallel to the plane is pared to it, not run out
    const double toward = outward.dot(plane), rise = frame.normal.dot(plane);
    return height * (toward > 0 ? -rise : rise) / std::max(std::abs(toward), flattest);
}

EndsOn endsOn(const TrimmedSurface& hull, Trim trim, double dihedral) {
    switch (trim) {
    case Trim::None:
        return EndsOn::Nib;
    case Trim::Sheer:
        return hull.trims.upper ? EndsOn::Strip : EndsOn::Sheer;
    case Trim::BowPlane:
    case Trim::SternPlane:
        return EndsOn::Transom;
    default:
        return dihedral <= std::numbers::pi / 2 ? EndsOn::Stem : EndsOn::Keel;
    }
}

/// What the stock must reach past the middle line's end, both faces considered.
double longestRun(const StripEnd& end) {
    return std::max({0.0, end.runInner, end.runOuter});
}

/// Whether nothing stands between the sides below it, which keeps each from being run over.
bool closesOnCentreline(const Strip& strip) {
    return std::all_of(strip.lowerEdge.begin(), strip.lowerEdge.end(), [](const Vector3d& p) {
        return std::abs(p.y()) < tooThin;
    });
}

} // namespace

WeaveLap weaveLap(const StemCorner& c) {
    const double cot = 1 / std::tan(c.dihedral / 2);
    const double across = std::max(std::sin(c.beta), leastSine);
    return {(c.thickness / std::max(std::sin(c.dihedral), leastSine) - c.laidHeight * cot) / across,
            (c.thickness - c.laidHeight) * cot / across};
}

WeaveLap fittedLap(const StemCorner& c) {
    const double cot = 1 / std::tan(c.dihedral / 2);
    const double across = std::max(std::sin(c.beta), leastSine);
    return {-c.laidHeight * cot / across,
            (c.thickness * std::cos(c.dihedral) / std::max(std::sin(c.dihedral), leastSine) -
             c.laidHeight * cot) /
                across};
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
        const geometry::Frame frame =
            geometry::frameAlong(j, readMesh(piece.goodLine(mesh), at.column).tangent);
        StripEnd& end = strip.ends[bow ? 0 : 1];
        end.end = which;
        end.x = at.p.x();
        end.z = at.p.z();
        end.dihedral = std::numbers::pi - 2 * std::asin(std::min(1.0, std::abs(frame.normal.y())));
        end.on = endsOn(hull, trim, end.dihedral);
        if (end.on == EndsOn::Nib) { // square, in the surface
            end.cut = std::numbers::pi / 2;
            strip.cutLength += trimAllowance;
            continue;
        }
        const Landing land = landing(hull, trim, j);
        end.cut = angleBetween(frame.tangent, land.line);
        end.bevel = std::asin(std::min(1.0, std::abs(frame.normal.dot(land.plane))));
        const double thickness = context.project->strips.thickness, height = context.hull->laidHeight;
        const Vector3d outward = bow ? Vector3d(-frame.tangent) : frame.tangent;
        end.runInner = runToPlane(frame, outward, land.plane, -height);
        end.runOuter = runToPlane(frame, outward, land.plane, thickness - height);
        const EndStyle style = bow ? context.project->planking.bowEnds : context.project->planking.sternEnds;
        const double siding = hull.trims.siding.at(end.x);
        if (end.on == EndsOn::Stem && style == EndStyle::Weave && strip.side != Side::Centre) {
            const WeaveLap lap = weaveLap({end.dihedral, end.cut, thickness, height});
            end.weave = Weave::Passes;
            end.lapInner = lap.inner;
            end.lapOuter = lap.outer;
            end.lap = std::max(lap.inner, lap.outer);
            // where something stands between the sides the strip has to cross half of it first
            const double toCentre =
                siding / std::max(std::sin(end.dihedral / 2) * std::sin(end.cut), leastSine);
            end.runInner = toCentre + lap.inner;
            end.runOuter = toCentre + lap.outer;
            // flush with a face of the other side
            end.bevel = std::abs(std::numbers::pi / 2 - end.dihedral);
        } else if (end.on == EndsOn::Stem && style == EndStyle::Stem && siding > leastSiding)
            end.landing = thickness / std::max(std::cos(end.bevel), leastSine);
        const bool pointed = (bow ? piece.middleWidth.front() : piece.middleWidth.back()) == 0.0;
        // left square past the line: half a width's run at this angle beyond the middle
        const double run =
            pointed ? 0.0 : 0.5 * mesh.widthAt(at.column) / std::tan(std::max(end.cut, leastCut));
        strip.cutLength += run + longestRun(end) + trimAllowance;
    }
}

void weaveEnds(Plan& plan, const Project& project, const LoftedHull& hull) {
    for (Strip& strip : plan.strips)
        for (StripEnd& end : strip.ends) {
            if (end.weave != Weave::Passes ||
                strip.side == firstSide(plan, project.planking.closing, strip.row))
                continue;
            const double toCentre = end.runInner - end.lapInner;
            const WeaveLap lap =
                fittedLap({end.dihedral, end.cut, project.strips.thickness, hull.laidHeight});
            strip.cutLength -= longestRun(end);
            end.weave = Weave::Fitted;
            end.runInner = toCentre + lap.inner;
            end.runOuter = toCentre + lap.outer;
            strip.cutLength += longestRun(end);
        }
}

void leaveRunningOver(Plan& plan, ClosingMethod closing) {
    const auto from = runOverFrom(plan, closing);
    if (!from)
        return;
    for (Strip& strip : plan.strips) {
        for (StripEnd& end : strip.ends)
            if (end.on == EndsOn::Keel && strip.row >= *from && strip.side != Side::Centre) {
                const bool pointed = strip.kind == StripKind::Shutter;
                const double past =
                    trimAllowance +
                    (pointed ? 0.0 : plan.coverWidth / (2 * std::tan(std::max(end.cut, leastCut))));
                end.crossing = KeelCrossing{past, strip.side == Side::Port, false};
            }
        if (strip.kind == StripKind::Shutter && strip.side == Side::Port && strip.row >= *from &&
            closesOnCentreline(strip)) {
            strip.kind = StripKind::Tapered;
            strip.planedBack = true;
        }
    }
}

} // namespace sheerlay::core
