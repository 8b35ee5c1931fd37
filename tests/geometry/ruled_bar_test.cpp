#include "geometry/ruled_bar.hpp"
#include "tests/support/bent_bar.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay::geometry;
using sheerlay::test::bentBar;

TEST_CASE("few breaks keep every edge within the tolerance") {
    const RuledBar bar = bentBar(800.0, 2000.0, 16.0, 6.0);
    const double tolerance = 0.02;
    const RuledBar few = withFewBreaks(bar, tolerance);
    CHECK(few.breaks.size() < bar.breaks.size() / 3);
    CHECK(few.breaks.front().t == 0.0);
    CHECK(few.breaks.back().t == 1.0);
    double worst = 0.0;
    for (std::size_t i = 0; i + 1 < few.breaks.size(); ++i)
        for (int j = 0; j <= 40; ++j)
            for (std::size_t k = 0; k < 4; ++k) {
                const Eigen::Vector3d p = between(few.breaks[i].at[k],
                                                  few.breaks[i + 1].at[k],
                                                  few.breaks[i + 1].t - few.breaks[i].t,
                                                  j / 40.0);
                const double radius = k < 2 ? 806.0 : 800.0;
                worst = std::max(worst, std::abs(std::hypot(p.y(), p.z()) - radius));
            }
    CHECK(worst < tolerance + 0.005);
}

TEST_CASE("a sharp break stays, and so does a bar of two breaks") {
    const RuledBar few = withFewBreaks(bentBar(800.0, 2000.0, 16.0, 6.0, 7), 0.5);
    const auto sharp =
        std::count_if(few.breaks.begin(), few.breaks.end(), [](const RuledBar::Break& b) { return b.sharp; });
    CHECK(sharp == 1);
    const RuledBar two = withFewBreaks(bentBar(800.0, 30.0, 16.0, 6.0), 0.5);
    CHECK(two.breaks.size() == 2);
}
