#include "core/journal/measured_edge.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

double MeasuredEdge::at(double place) const {
    if (x.size() < 4)
        return offset.empty() ? 0.0 : offset.front();
    if (place <= x.front())
        return offset.front();
    if (place >= x.back())
        return offset.back();
    const double step = (x.back() - x.front()) / static_cast<double>(x.size() - 1);
    const auto cell = static_cast<std::size_t>((place - x.front()) / step);
    const std::size_t first = std::min(cell > 0 ? cell - 1 : 0, x.size() - 4);
    const double t = (place - x[first]) / step;
    return -offset[first] * (t - 1) * (t - 2) * (t - 3) / 6 + offset[first + 1] * t * (t - 2) * (t - 3) / 2 -
           offset[first + 2] * t * (t - 1) * (t - 3) / 2 + offset[first + 3] * t * (t - 1) * (t - 2) / 6;
}

MeasuredEdge measuredEdge(int row, const SmoothOffset& offset) {
    constexpr double step = 25.0;
    constexpr double past = 600.0; // where the slope of SmoothOffset has run out
    MeasuredEdge edge;
    edge.row = row;
    const double from = offset.from() - past;
    const double length = offset.to() + past - from;
    const int cells = std::max(3, static_cast<int>(std::ceil(length / step)));
    for (int i = 0; i <= cells; ++i) {
        edge.x.push_back(from + length * i / cells);
        edge.offset.push_back(offset.at(edge.x.back()));
    }
    return edge;
}

} // namespace sheerlay::core
