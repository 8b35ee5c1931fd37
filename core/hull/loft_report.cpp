#include "core/hull/loft_report.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

std::string mm(double value, int decimals = 0) {
    char text[40];
    std::snprintf(text, sizeof text, "%.*f mm", decimals, value);
    return text;
}

void residualsPerStation(const HullTable& table,
                         const LoftData& data,
                         const SurfaceFit& fit,
                         LoftedHull& hull) {
    std::vector<StationResidual> list(table.stations.size() + 1);
    std::vector<double> squares(list.size(), 0.0);
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        list[i].station = table.stations[i].printedX;
        list[i].x = hull.stationX[i];
    }
    list.back().station = "profile";
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        if (p.kind == LoftPoint::Kind::Helper)
            continue;
        StationResidual& r = p.station < 0 ? list.back() : list[static_cast<std::size_t>(p.station)];
        double& sum = squares[p.station < 0 ? list.size() - 1 : static_cast<std::size_t>(p.station)];
        const PointResidual& e = fit.residuals[i];
        const double size =
            p.kind == LoftPoint::Kind::Sheer ? std::hypot(e.y, e.z) * (e.normal < 0 ? -1 : 1) : e.normal;
        sum += size * size;
        ++r.points;
        if (std::abs(size) > std::abs(r.max))
            r.max = size;
        hull.residualMax = std::max(hull.residualMax, std::abs(size));
    }
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i].points > 0) {
            list[i].rms = std::sqrt(squares[i] / list[i].points);
            hull.residuals.push_back(list[i]);
        }
    hull.residualRms = fit.rms;
}

/// A table needs a half station near a stem: the last gap decides how well the ends are known.
void lastGaps(const HullTable& table, const LoftData& data, LoftedHull& hull) {
    for (const End end : {End::Bow, End::Stern}) {
        if (std::any_of(
                table.transoms.begin(), table.transoms.end(), [&](const Transom& t) { return t.end == end; }))
            continue;
        const bool bow = end == End::Bow;
        const Station* outer = nullptr;
        for (const Station& s : table.stations) {
            const bool full =
                s.sheer.halfBreadth > std::max(2 * table.roundedTo, table.halfSiding + table.roundedTo);
            if (full && (!outer || !bow))
                outer = &s;
        }
        if (!outer)
            continue;
        const double tip = bow ? hull.drawn.sheer.front().x() : hull.drawn.sheer.back().x();
        const double gap = std::abs(outer->x + hull.xShift - tip);
        if (gap > 0.55 * data.stationGap)
            hull.findings.push_back({Level::Caution,
                                     "last-gap-wide",
                                     std::nullopt,
                                     bow ? tip + gap / 2 : tip - gap / 2,
                                     "Between the " + std::string(bow ? "foremost" : "aftmost") +
                                         " station and the stem the table says nothing over " + mm(gap) +
                                         "; the last foot may be off by about 6 mm and its edge bend is not "
                                         "to be trusted. A half station "
                                         "there would settle it."});
    }
}

} // namespace

void reportLoft(const HullTable& table, const LoftData& data, const SurfaceFit& fit, LoftedHull& hull) {
    residualsPerStation(table, data, fit, hull);
    lastGaps(table, data, hull);
    std::stable_sort(hull.findings.begin(), hull.findings.end(), [](const Finding& a, const Finding& b) {
        return a.level > b.level;
    });
}

} // namespace sheerlay::core
