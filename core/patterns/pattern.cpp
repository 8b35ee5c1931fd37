#include "core/patterns/pattern.hpp"

#include <algorithm>

namespace sheerlay::core {

Box extentOf(const Pattern& pattern) {
    Box box{1e9, -1e9, -1e9, 1e9};
    for (const PatternLine& line : pattern.lines)
        for (const Eigen::Vector2d& p : line.points) {
            box.left = std::min(box.left, p.x());
            box.right = std::max(box.right, p.x());
            box.bottom = std::min(box.bottom, p.y());
            box.top = std::max(box.top, p.y());
        }
    return box;
}

} // namespace sheerlay::core
