#include "core/offsets/unfold.hpp"

#include "core/units/length.hpp"
#include "core/units/length_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

std::vector<Station> unfolded(std::vector<Station> listed, double fold) {
    constexpr double atFold = 0.5; // mm
    std::vector<Station> all = listed;
    for (Station& station : listed) {
        if (std::abs(station.x - fold) < atFold)
            continue;
        station.x = 2 * fold - station.x;
        station.printedX = inFeetInchesEighths(station.printedX) ? toFeetInchesEighths(station.x) : "";
        all.push_back(std::move(station));
    }
    std::ranges::sort(all, {}, &Station::x);
    return all;
}

} // namespace sheerlay::core
