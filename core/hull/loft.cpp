#include "core/hull/cell_checker.hpp"
#include "core/hull/hull.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/loft_report.hpp"
#include "core/hull/quick_loft.hpp"
#include "core/hull/surface_fit.hpp"
#include "core/hull/suspect_cells.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "geometry/offset_surface.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <functional>

namespace sheerlay::core {
namespace {

geometry::TensorSurface shifted(const geometry::TensorSurface& s, double dx) {
    geometry::UniformKnots ku = s.knotsU();
    ku.first += dx;
    std::vector<Eigen::Vector3d> poles;
    for (int i = 0; i < ku.poles(); ++i)
        for (int j = 0; j < s.knotsV().poles(); ++j)
            poles.push_back(s.pole(i, j) + Eigen::Vector3d(dx, 0, 0));
    return {ku, s.knotsV(), std::move(poles)};
}

/// The transom's plane goes through the sheer's height at one x and the keel's at the other; both are read
/// off the loft.
Expected<geometry::TransomPlane, std::string>
transomPlane(const geometry::TensorSurface& s, const geometry::Trims& trims, const Transom& t) {
    const double zSheer = s.point(t.xAtSheer, 0).z();
    double low = 0;
    double high = -1;
    for (double v = 5; v < s.knotsV().last(); v += 5) {
        const Eigen::Vector3d p = s.point(t.xAtKeel, v);
        if (p.y() <= trims.siding.at(p.x())) {
            high = v;
            break;
        }
        low = v;
    }
    const std::string name = t.end == End::Bow ? "bow" : "stern";
    if (high < 0)
        return unexpected("the " + name +
                          " transom's keel point lies where the planking does not reach the centreplane");
    for (int i = 0; i < 50; ++i) {
        const double m = 0.5 * (low + high);
        const Eigen::Vector3d p = s.point(t.xAtKeel, m);
        (p.y() > trims.siding.at(p.x()) ? low : high) = m;
    }
    const double zKeel = s.point(t.xAtKeel, low).z();
    if (zSheer - zKeel < 1.0)
        return unexpected("the " + name + " transom has no height between keel and sheer");
    return geometry::TransomPlane{t.xAtSheer, (t.xAtSheer - t.xAtKeel) / (zSheer - zKeel), zSheer};
}

/// The bow's foremost point: the table's own where the loft agrees with it, so that stations keep round
/// figures.
double foremost(const LoftData& data, const TrimmedSurface& hull) {
    double lofted = 1e300;
    for (const auto* line : {&hull.sheer, &hull.profile})
        for (const Eigen::Vector3d& p : *line)
            lofted = std::min(lofted, p.x());
    return std::abs(data.x0 - lofted) <= 2.0 ? data.x0 : lofted;
}

/// The doubts of an earlier loft that the table still gives rise to.
std::vector<SuspectCell>
stillDoubted(const HullTable& table, const LoftedHull& before, const LoftData& data) {
    std::vector<SuspectCell> suspects;
    for (const DoubtfulCell& d : before.doubtful)
        for (std::size_t i = 0; i < data.points.size(); ++i) {
            const LoftPoint& p = data.points[i];
            if (p.cell == nullptr || p.cell->kind != d.kind)
                continue;
            const Station& s = table.stations[static_cast<std::size_t>(p.station)];
            const bool listed =
                d.kind != PointKind::Sheer && d.kind != PointKind::Keel && d.kind != PointKind::Knuckle;
            if (listed && (d.point >= s.points.size() || p.cell != &s.points[d.point]))
                continue;
            const double value = p.cell->diagonal ? p.cell->diagonal->distance
                                 : d.height       ? p.cell->height
                                                  : p.cell->halfBreadth;
            constexpr double same = 1e-6; // mm
            if (value == d.printed && std::abs(s.x + before.xShift - before.stationX[d.station]) < same)
                suspects.push_back({i, d.height, d.printed, d.fair, d.spread, 0.0, d.setAside});
        }
    return suspects;
}

using Suspects = std::function<std::vector<SuspectCell>(LoftData&)>;

Expected<LoftedHull, LoftError> loftWith(const Project& project, const Suspects& suspectsIn) {
    const auto begin = std::chrono::steady_clock::now();
    auto prepared = prepareLoft(project.hull);
    if (!prepared)
        return unexpected(LoftError{prepared.error()});
    LoftData& data = *prepared;
    const std::vector<SuspectCell> suspects = suspectsIn(data);
    auto fitted = fitSurface(data, {.residual = project.hull.fairing, .lambda = std::nullopt});
    if (!fitted)
        return unexpected(LoftError{fitted.error()});

    geometry::Trims trims = data.trims;
    for (const Transom& t : project.hull.transoms) {
        auto plane = transomPlane(fitted->surface, trims, t);
        if (!plane)
            return unexpected(LoftError{plane.error()});
        (t.end == End::Bow ? trims.bow : trims.stern) = *plane;
    }
    auto drawn = trimSurface(fitted->surface, trims);
    if (!drawn)
        return unexpected(LoftError{drawn.error()});

    LoftedHull hull;
    hull.xShift = -foremost(data, *drawn);
    geometry::Trims moved = trims;
    moved.siding = trims.siding.shifted(hull.xShift);
    for (auto* plane : {&moved.bow, &moved.stern})
        if (*plane)
            (*plane)->at += hull.xShift;

    const double thickness = project.strips.thickness;
    const double drawnHeight = project.hull.drawnTo == DrawnTo::Outside ? thickness : 0.0; // above the moulds
    hull.laidHeight = project.planking.layOn == LayOn::Moulds         ? 0.0
                      : project.planking.layOn == LayOn::MidThickness ? thickness / 2
                                                                      : thickness;
    const geometry::TensorSurface base = shifted(fitted->surface, hull.xShift);
    const auto atHeight = [&](double height) {
        const double d = height - drawnHeight;
        return trimSurface(d == 0.0 ? base : geometry::offsetSurface(base, d), moved);
    };
    for (auto& [target, height] : {std::pair{&hull.drawn, drawnHeight},
                                   std::pair{&hull.moulds, 0.0},
                                   std::pair{&hull.laid, hull.laidHeight}}) {
        if (target != &hull.drawn && height == drawnHeight) {
            *target = hull.drawn;
            continue;
        }
        if (target == &hull.laid && height == 0.0) {
            *target = hull.moulds;
            continue;
        }
        auto trimmed = atHeight(height);
        if (!trimmed)
            return unexpected(LoftError{trimmed.error()});
        *target = std::move(*trimmed);
    }
    for (const Station& s : project.hull.stations)
        hull.stationX.push_back(std::abs(s.x + hull.xShift) < 1e-9 ? 0.0 : s.x + hull.xShift);
    hull.roundingSigma = data.sigma;
    hull.fairing = fitted->lambda;
    reportLoft(project.hull, data, *fitted, suspects, hull);
    hull.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    return hull;
}

} // namespace

Expected<LoftedHull, LoftError> loft(const Project& project) {
    return loftWith(project, [&](LoftData& data) { return findSuspectCells(project.hull, data); });
}

Expected<LoftedHull, LoftError> quickLoft(const Project& project, const LoftedHull& before) {
    return loftWith(project, [&](LoftData& data) {
        const std::vector<SuspectCell> suspects = stillDoubted(project.hull, before, data);
        std::vector<CellRef> out;
        for (const SuspectCell& s : suspects)
            out.push_back({s.point, s.height});
        CellChecker checker(project.hull, data); // only for the girths the search starts the fit with
        checker.setOut(std::move(out));
        checker.startGirths();
        setAside(suspects, data);
        return suspects;
    });
}

} // namespace sheerlay::core
