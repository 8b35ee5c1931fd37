#include "core/questions/open_bottom.hpp"

#include "core/questions/section_chords.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

using Eigen::Vector2d;

std::vector<OpenBottom> openBottoms(const HullTable& table) {
    std::vector<OpenBottom> list;
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        const Station& s = table.stations[i];
        if (!s.keel || s.knuckle) // a bottom below a knuckle needs no more than its two edges
            continue;
        std::vector<Vector2d> section = sectionChords(table, i);
        const Vector2d keel = section.back();
        section.pop_back();
        if (section.size() < 2)
            continue;
        double girth = 0;
        for (std::size_t k = 1; k < section.size(); ++k)
            girth += (section[k] - section[k - 1]).norm();
        const Vector2d& low = section.back();
        const double chord = (low - keel).norm();
        const double part = chord / (girth + chord);
        const Vector2d run = low - section[section.size() - 2];
        if (part <= mostOpen || run.y() >= 0 || low.y() <= keel.y())
            continue;
        const Vector2d corner = low + run * ((keel.y() - low.y()) / run.y());
        if (corner.x() <= keel.x())
            continue;
        const Vector2d a = low - keel;
        const Vector2d b = corner - keel;
        list.push_back({i,
                        part,
                        (corner - low).norm() + (corner - keel).norm() - chord,
                        0.5 * std::abs(a.x() * b.y() - a.y() * b.x())});
    }
    return list;
}

double openVolume(const HullTable& table, const std::vector<OpenBottom>& open) {
    std::vector<double> areas(table.stations.size(), 0.0);
    for (const OpenBottom& o : open)
        areas[o.station] = o.area;
    double volume = 0;
    for (std::size_t i = 1; i < areas.size(); ++i)
        volume += (areas[i - 1] + areas[i]) * (table.stations[i].x - table.stations[i - 1].x);
    return volume; // half sections, both sides: the halves of the trapezoid rule cancel
}

} // namespace sheerlay::core
