#include "core/fitout/sheer_marks.hpp"

#include "core/fitout/hull_faces.hpp"
#include "core/fitout/sheer_line.hpp"
#include "core/hull/outside_surface.hpp"
#include "core/hull/station_names.hpp"
#include "core/moulds/mould_set.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

/// Where the start of the planking crosses x on the laid surface.
std::optional<Eigen::Vector3d> startAt(const Plan& plan, double x) {
    for (const Strip& strip : plan.strips) {
        if (strip.row != 1 || strip.side != Side::Starboard)
            continue;
        for (std::size_t i = 1; i < strip.upperEdge.size(); ++i) {
            const Eigen::Vector3d &a = strip.upperEdge[i - 1], &b = strip.upperEdge[i];
            if ((a.x() - x) * (b.x() - x) <= 0.0 && a.x() != b.x())
                return a + (x - a.x()) / (b.x() - a.x()) * (b - a);
        }
    }
    return std::nullopt;
}

} // namespace

std::vector<SheerMark> sheerMarks(const Project& project, const LoftedHull& hull, const Plan& plan) {
    const auto outside = outsideSurface(project, hull); // the marks go on the planking before any cloth
    if (!outside)
        return {};
    struct Place {
        std::string name;
        double x = 0.0, foot = 0.0;
    };
    std::vector<Place> places;
    if (const auto set = mouldsOf(project, hull); set) {
        for (const Mould& m : set->moulds)
            places.push_back({m.name, m.x, m.foot});
    } else {
        const auto names = stationNames(project, hull);
        for (std::size_t i = 0; i < names.size(); ++i)
            places.push_back({names[i], hull.stationX[i], 0.0});
    }
    const std::vector<SheerPoint> line = sheerLine(*outside, GunwaleChoices::Stand::Side);
    std::vector<SheerMark> marks;
    for (const Place& place : places) {
        const auto sheer = sheerAt(*outside, place.x);
        if (!sheer)
            continue;
        SheerMark mark;
        mark.mould = place.name;
        mark.x = place.x;
        mark.halfBreadth = sheer->point.y();
        mark.height = sheer->point.z();
        mark.aboveStrongback = place.foot > 0.0 ? place.foot - mark.height : 0.0;
        mark.alongOutside = sheerPointAt(line, place.x).s;
        const auto start = startAt(plan, place.x);
        if (start && plan.start.kind != StartLine::Kind::Sheer)
            mark.fromStart = girthDownTo(hull.laid, place.x, start->z());
        marks.push_back(std::move(mark));
    }
    return marks;
}

} // namespace sheerlay::core
