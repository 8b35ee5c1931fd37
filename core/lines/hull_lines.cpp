#include "core/lines/hull_lines.hpp"

#include "core/hull/trimmed_surface.hpp"
#include "core/units/length.hpp"
#include "geometry/plane_line.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::CutPlane;

constexpr double girthStep = 25.0;                  // mm along a line of equal girth
constexpr double degree = std::numbers::pi / 180.0; // rad
constexpr double flattest = 20.0, steepest = 60.0;  // degrees, of a diagonal that crosses the bilge well

/// Multiples of the first step that needs no more than `most` of them, strictly between two values.
std::vector<double> roundLevels(double low, double high, const std::vector<double>& steps, int most) {
    for (const double step : steps) {
        std::vector<double> list;
        for (double level = step * (std::floor(low / step + 1e-9) + 1); level < high - 1e-6; level += step)
            list.push_back(level);
        if (static_cast<int>(list.size()) <= most || step == steps.back())
            return list;
    }
    return {};
}

void addPlane(const TrimmedSurface& hull,
              const CutPlane& plane,
              LineFamily family,
              std::size_t index,
              std::vector<HullLine>& lines) {
    for (const geometry::PlaneLine& found :
         geometry::planeLines(hull.surface, hull.trims, hull.outline, plane)) {
        HullLine line{family, index, {}};
        for (const geometry::PlaneLinePoint& p : found)
            line.points.push_back({p.p, p.curvature});
        if (family == LineFamily::Station && line.points.front().p.z() < line.points.back().p.z())
            std::reverse(line.points.begin(), line.points.end());
        lines.push_back(std::move(line));
    }
}

/// The sheer as seen along an axis: from above its height, from the side its half-breadth does not matter.
HullLine sheerLine(const TrimmedSurface& hull, LineFamily family) {
    HullLine line{family, 0, {}};
    const int up = family == LineFamily::SheerPlan ? 1 : 2;
    for (const Vector2d& uv : hull.outline.sheer) {
        const geometry::SurfaceJet j = hull.surface.jet(uv.x(), uv.y());
        const double speed = std::hypot(j.u.x(), j.u[up]);
        line.points.push_back({j.p, -(j.u.x() * j.uu[up] - j.u[up] * j.uu.x()) / std::pow(speed, 3)});
    }
    return line;
}

HullLine keelLine(const TrimmedSurface& hull) {
    HullLine line{LineFamily::Keel, 0, {}};
    for (const Vector2d& uv : hull.outline.profile) {
        const Vector3d p = hull.surface.point(uv.x(), uv.y());
        const auto at = geometry::planeLinePoint(hull.surface, {Vector3d::UnitY(), p.y()}, uv);
        line.points.push_back({at.p, at.curvature});
    }
    return line;
}

/// Curvature of the surface along the line through the neighbours' places.
HullLine girthLine(const TrimmedSurface& hull, double girth, std::size_t index) {
    HullLine line{LineFamily::EqualGirth, index, {}};
    std::vector<Vector2d> places;
    const double first = hull.sheer.front().x();
    const double last = hull.sheer.back().x();
    for (double x = first + girthStep; x < last; x += girthStep)
        if (halfGirthAt(hull, x) > girth)
            places.push_back(parametersAtGirth(hull, x, girth));
    for (std::size_t i = 1; i + 1 < places.size(); ++i) {
        const Vector2d d = places[i + 1] - places[i - 1];
        const geometry::SurfaceJet j = hull.surface.jet(places[i].x(), places[i].y());
        const Vector3d bend = d.x() * d.x() * j.uu + 2 * d.x() * d.y() * j.uv + d.y() * d.y() * j.vv;
        line.points.push_back({j.p, -bend.dot(j.normal()) / (d.x() * j.u + d.y() * j.v).squaredNorm()});
    }
    return line;
}

} // namespace

double DiagonalPlane::outward(const Vector3d& p) const {
    return p.y() * std::cos(angle) + (height - p.z()) * std::sin(angle);
}

LineChoices usualLines(const TrimmedSurface& hull, Units units) {
    const bool inches = units == Units::Inches;
    const double unit = inches ? mmPerInch : 25.0;
    double lowest = std::numeric_limits<double>::max();
    double lowSheer = lowest;
    double broadest = 0;
    for (const Vector3d& p : hull.profile)
        lowest = std::min(lowest, p.z());
    for (const Vector3d& p : hull.sheer)
        lowSheer = std::min(lowSheer, p.z());
    const auto widest = sectionWithNormals(hull, hull.halfGirthMaxX, 200);
    for (const SectionPoint& s : widest)
        broadest = std::max(broadest, s.point.y());
    LineChoices c;
    const std::vector<double> heights = inches ? std::vector{1.0, 2.0, 3.0, 4.0, 6.0, 12.0}
                                               : std::vector{1.0, 2.0, 4.0, 6.0, 8.0, 12.0, 20.0};
    std::vector<double> steps;
    for (const double h : heights)
        steps.push_back(h * unit);
    c.waterlines = roundLevels(lowest + 2.0, lowSheer - 2.0, steps, 7);
    c.buttocks = roundLevels(0.0, 0.95 * broadest, steps, 5);
    for (const double part : {0.3, 0.5, 0.7}) {
        if (widest.empty())
            break;
        const SectionPoint& s =
            widest[static_cast<std::size_t>(part * static_cast<double>(widest.size() - 1))];
        const auto heightAt = [&](double angle) {
            return unit * std::round((s.point.z() + s.point.y() * std::tan(angle * degree)) / unit);
        };
        double angle = std::atan2(-s.normal.z(), s.normal.y()) / degree; // square to the section
        angle = 5 * std::round(std::clamp(angle, flattest, steepest) / 5);
        while (angle > flattest && heightAt(angle) > lowSheer) // from above her it would be hard to draw
            angle -= 5;
        if (const DiagonalPlane d{heightAt(angle), degree * angle};
            std::find(c.diagonals.begin(), c.diagonals.end(), d) == c.diagonals.end())
            c.diagonals.push_back(d);
    }
    for (const double part : {0.25, 0.5, 0.75})
        c.girths.push_back(unit * std::round(part * hull.halfGirthMax / unit));
    return c;
}

std::vector<HullLine> hullLines(const TrimmedSurface& hull, const LineChoices& choices) {
    std::vector<HullLine> lines{
        sheerLine(hull, LineFamily::SheerPlan), sheerLine(hull, LineFamily::SheerProfile), keelLine(hull)};
    const auto addAll = [&](const std::vector<double>& offsets, const Vector3d& normal, LineFamily family) {
        for (std::size_t i = 0; i < offsets.size(); ++i)
            addPlane(hull, {normal, offsets[i]}, family, i, lines);
    };
    addAll(choices.stations, Vector3d::UnitX(), LineFamily::Station);
    addAll(choices.waterlines, Vector3d::UnitZ(), LineFamily::Waterline);
    addAll(choices.buttocks, Vector3d::UnitY(), LineFamily::Buttock);
    for (std::size_t i = 0; i < choices.diagonals.size(); ++i) {
        const DiagonalPlane& d = choices.diagonals[i];
        addPlane(hull,
                 {Vector3d(0, std::sin(d.angle), std::cos(d.angle)), d.height * std::cos(d.angle)},
                 LineFamily::Diagonal,
                 i,
                 lines);
    }
    for (std::size_t i = 0; i < choices.girths.size(); ++i)
        if (HullLine line = girthLine(hull, choices.girths[i], i); line.points.size() > 1)
            lines.push_back(std::move(line));
    return lines;
}

} // namespace sheerlay::core
