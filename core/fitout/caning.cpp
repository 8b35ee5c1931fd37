#include "core/fitout/caning.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

Caning planCaning(const CaningChoice& choice, double width, double depth) {
    constexpr double waste = 1.1;
    const double across = width + 2 * choice.inset, along = depth + 2 * choice.inset;
    Caning c;
    const int baysAcross = std::max(1, static_cast<int>(std::lround(across / choice.spacing)));
    const int baysAlong = std::max(1, static_cast<int>(std::lround(along / choice.spacing)));
    c.front = baysAcross + 1;
    c.side = baysAlong + 1;
    c.holes = 2 * (baysAcross + baysAlong);
    c.spacingAcross = across / baysAcross;
    c.spacingAlong = along / baysAlong;
    // straight layers leave out the corner holes; a diagonal runs through every hole of the grid once each
    // way
    const double straight = 2 * (baysAcross - 1) * along + 2 * (baysAlong - 1) * across;
    const double diagonal = 2 * baysAcross * baysAlong * std::hypot(c.spacingAcross, c.spacingAlong);
    // beneath, each line goes on to the next hole
    const double beneath = 2 * (baysAcross - 1) * c.spacingAcross + 2 * (baysAlong - 1) * c.spacingAlong +
                           (baysAcross + baysAlong) * (c.spacingAcross + c.spacingAlong);
    c.cane = waste * (straight + diagonal + beneath);
    return c;
}

} // namespace sheerlay::core
