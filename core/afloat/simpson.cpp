#include "core/afloat/simpson.hpp"

#include <cmath>
#include <stdexcept>

namespace sheerlay::core {

std::vector<double> simpsonMultipliers(const std::vector<double>& places) {
    if (places.size() < 3 || places.size() % 2 == 0)
        throw std::invalid_argument("Simpson's rule needs an odd count of places, three or more");
    std::vector<double> multipliers(places.size(), 0.0);
    for (std::size_t i = 0; i + 2 < places.size(); i += 2) {
        const double first = places[i + 1] - places[i], second = places[i + 2] - places[i + 1];
        if (!(first > 0.0) || std::abs(second - first) > 1e-9 * first)
            throw std::invalid_argument("Simpson's rule needs pairs of equal intervals");
        multipliers[i] += first / 3;
        multipliers[i + 1] += 4 * first / 3;
        multipliers[i + 2] += first / 3;
    }
    return multipliers;
}

} // namespace sheerlay::core
