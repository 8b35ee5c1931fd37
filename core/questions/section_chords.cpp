#include "core/questions/section_chords.hpp"

#include <algorithm>

namespace sheerlay::core {

std::vector<Eigen::Vector2d> sectionChords(const HullTable& table, std::size_t station) {
    using Eigen::Vector2d;
    const Station& s = table.stations[station];
    std::vector<Vector2d> section{{s.sheer.halfBreadth, s.sheer.height}};
    for (const TablePoint& p : s.points)
        section.emplace_back(p.halfBreadth, p.height);
    if (s.knuckle)
        section.emplace_back(s.knuckle->halfBreadth, s.knuckle->height);
    std::stable_sort(section.begin() + 1, section.end(), [](const Vector2d& a, const Vector2d& b) {
        return a.y() != b.y() ? a.y() > b.y() : a.x() > b.x();
    });
    if (s.keel)
        section.emplace_back(s.keel->printedHalfBreadth.empty() ? table.halfSiding : s.keel->halfBreadth,
                             s.keel->height);
    return section;
}

} // namespace sheerlay::core
