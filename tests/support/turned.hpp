#pragma once

#include "core/project/project.hpp"

#include <algorithm>

namespace sheerlay::test {

/// The same table written from the other end.
[[nodiscard]] inline core::Project turnedEndForEnd(core::Project p) {
    std::reverse(p.hull.stations.begin(), p.hull.stations.end());
    for (core::Station& s : p.hull.stations)
        s.x = -s.x;
    for (core::ProfilePoint& q : p.hull.profile)
        q.x = -q.x;
    return p;
}

} // namespace sheerlay::test
