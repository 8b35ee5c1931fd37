#pragma once

#include "geometry/cubic_line.hpp"

#include <Eigen/Core>

#include <array>
#include <vector>

namespace sheerlay::geometry {

/// A bent bar of four-cornered section: four long edges on common breaks, cubic between them, with straight
/// rulings from each to the next. Edges 0, 1, 2, 3 go round the section.
struct RuledBar {
    static constexpr std::size_t edges = 4;
    struct Break {
        double t = 0.0;     ///< 0 to 1, strictly increasing
        bool sharp = false; ///< an edge turns a corner here
        std::array<CubicLine::Place, edges> at;
    };
    std::vector<Break> breaks; ///< at least two; empty: no bar
};

/// The bar with as few of its breaks as keep every edge within `tolerance` mm at the breaks left out. Both
/// ends and the sharp ones stay.
[[nodiscard]] RuledBar withFewBreaks(const RuledBar& bar, double tolerance);

} // namespace sheerlay::geometry
