#include "core/hull/station_names.hpp"

#include "core/words/say.hpp"

namespace sheerlay::core {

std::vector<std::string> stationNames(const Project& project, const LoftedHull& hull) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < hull.stationX.size(); ++i) {
        const bool known = i < project.hull.stations.size() && !project.hull.stations[i].printedX.empty();
        names.push_back(known ? withDecimalMark(project.hull.stations[i].printedX) : std::to_string(i + 1));
    }
    return names;
}

} // namespace sheerlay::core
