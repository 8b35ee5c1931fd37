#include "core/hull/line_deviation.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

std::vector<LineDeviation> lineDeviations(const std::vector<LineEntry>& line) {
    std::vector<LineDeviation> list;
    const auto n = line.size();
    for (std::size_t i = 1; i + 1 < n; ++i) {
        std::vector<std::size_t> near;
        for (std::size_t k = i >= 2 ? i - 2 : 0; k <= std::min(i + 2, n - 1); ++k)
            if (k != i)
                near.push_back(k);
        if (near.size() < 3)
            continue;
        double fair = 0;
        double squares = 1;
        for (const std::size_t a : near) {
            double l = 1;
            for (const std::size_t b : near)
                if (b != a)
                    l *= (line[i].at - line[b].at) / (line[a].at - line[b].at);
            fair += l * line[a].value;
            squares += l * l;
        }
        list.push_back({i, fair, (line[i].value - fair) / std::sqrt(squares)});
    }
    return list;
}

std::optional<double> lineThreshold(std::vector<double> sizes) {
    if (sizes.size() < 6)
        return std::nullopt;
    for (double& s : sizes)
        s = std::abs(s);
    const auto middle = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
    std::nth_element(sizes.begin(), middle, sizes.end());
    return 5 * std::max(1.4826 * *middle, 1e-6);
}

} // namespace sheerlay::core
