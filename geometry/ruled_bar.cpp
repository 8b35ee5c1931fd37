#include "geometry/ruled_bar.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::geometry {

RuledBar withFewBreaks(const RuledBar& bar, double tolerance) {
    const auto& all = bar.breaks;
    if (all.size() < 3)
        return bar;
    std::vector<bool> keep(all.size(), false);
    std::vector<std::pair<std::size_t, std::size_t>> open;
    std::size_t last = 0;
    for (std::size_t i = 1; i < all.size(); ++i)
        if (all[i].sharp || i + 1 == all.size()) {
            keep[last] = keep[i] = true;
            open.emplace_back(last, i);
            last = i;
        }
    while (!open.empty()) {
        const auto [from, to] = open.back();
        open.pop_back();
        const double h = all[to].t - all[from].t;
        double worst = 0.0;
        for (std::size_t i = from + 1; i < to; ++i)
            for (std::size_t k = 0; k < RuledBar::edges; ++k) {
                const Eigen::Vector3d p =
                    between(all[from].at[k], all[to].at[k], h, (all[i].t - all[from].t) / h);
                worst = std::max(worst, (p - all[i].at[k].p).norm());
            }
        if (worst <= tolerance)
            continue;
        const std::size_t middle = from + (to - from) / 2;
        keep[middle] = true;
        open.emplace_back(from, middle);
        open.emplace_back(middle, to);
    }
    RuledBar few;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (keep[i])
            few.breaks.push_back(all[i]);
    return few;
}

} // namespace sheerlay::geometry
