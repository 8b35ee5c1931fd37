#include "core/fitout/gunwales.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlay::core {

namespace {

constexpr double grid = 10.0; // mm
constexpr double dear = 1e3;  // of strain, for a scarf beside another: only where nothing else goes

} // namespace

std::optional<std::vector<double>> placeScarfs(const std::vector<double>& strain,
                                               double length,
                                               double stock,
                                               double scarf,
                                               double overEnds,
                                               const std::vector<double>& keepOff,
                                               int lean) {
    const double whole = length + 2 * overEnds;
    if (whole <= stock)
        return std::vector<double>{};
    if (stock <= 2 * scarf)
        return std::nullopt; // a piece would be all scarf
    const int pieces = static_cast<int>(std::ceil((whole - scarf) / (stock - scarf) - 1e-9));
    const auto places = static_cast<std::size_t>(length / grid);
    const auto cost = [&](std::size_t place) {
        const double s = static_cast<double>(place) * grid;
        const auto at =
            static_cast<std::size_t>(std::lround(s / length * static_cast<double>(strain.size() - 1)));
        const bool beside = std::any_of(
            keepOff.begin(), keepOff.end(), [&](double o) { return std::abs(o - s) < scarfsApart; });
        const double worst = strain[at] * strain[at];
        return worst + (beside ? dear : 0.0) + 10.0 * lean * s / length;
    };
    // reach[k][i]: least cost of k + 1 scarfs, the last at place i
    const std::size_t count = static_cast<std::size_t>(pieces) - 1;
    const double endPiece = stock - overEnds - scarf / 2; // from the end to its scarf's middle
    constexpr double never = std::numeric_limits<double>::infinity();
    std::vector<std::vector<double>> reach(count, std::vector<double>(places + 1, never));
    std::vector<std::vector<std::size_t>> from(count, std::vector<std::size_t>(places + 1, 0));
    for (std::size_t k = 0; k < count; ++k)
        for (std::size_t i = 1; i <= places; ++i) {
            const double s = static_cast<double>(i) * grid;
            if (k == 0) {
                if (s <= endPiece && s >= scarf)
                    reach[0][i] = cost(i);
                continue;
            }
            const double own = cost(i);
            for (std::size_t j = 1; j < i; ++j) {
                const double between = static_cast<double>(i - j) * grid;
                if (between + scarf > stock || between < 2 * scarf || reach[k - 1][j] + own >= reach[k][i])
                    continue;
                reach[k][i] = reach[k - 1][j] + own;
                from[k][i] = j;
            }
        }
    std::size_t best = 0;
    for (std::size_t i = 1; i <= places; ++i) {
        const double left = length - static_cast<double>(i) * grid;
        if (left <= endPiece && left >= scarf && (best == 0 || reach[count - 1][i] < reach[count - 1][best]))
            best = i;
    }
    if (best == 0 || reach[count - 1][best] == never)
        return std::nullopt;
    std::vector<double> scarfs(count);
    for (std::size_t k = count; k-- > 0;) {
        scarfs[k] = static_cast<double>(best) * grid;
        best = from[k][best];
    }
    return scarfs;
}

} // namespace sheerlay::core
