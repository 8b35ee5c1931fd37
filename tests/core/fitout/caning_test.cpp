#include "core/fitout/caning.hpp"
#include "tests/support/catch.hpp"

#include <cmath>

using namespace sheerlay::core;

TEST_CASE("holes stand round the opening, corners counted once") {
    const Caning c = planCaning({10, 4, 0}, 100, 50);
    CHECK(c.front == 11);
    CHECK(c.side == 6);
    CHECK(c.holes == 2 * 11 + 2 * 6 - 4);
    CHECK(c.spacingAcross == Approx(10));
    const Caning odd = planCaning({12.7, 4.8, 12.7}, 380, 160);
    CHECK(odd.spacingAcross * (odd.front - 1) == Approx(380 + 25.4));
    CHECK(odd.spacingAlong * (odd.side - 1) == Approx(160 + 25.4));
    CHECK(std::abs(odd.spacingAcross - 12.7) < 0.5);
}

TEST_CASE("the cane is what a seat caned line by line takes") {
    // every line of the six layers drawn one by one over a frame of 10 by 5 bays of 10 mm
    constexpr int across = 10, along = 5;
    constexpr double bay = 10;
    double drawn = 0;
    for (int layer = 0; layer < 2; ++layer) {
        for (int i = 1; i < across; ++i)
            drawn += along * bay + bay; // over the seat, then to the next hole beneath
        for (int j = 1; j < along; ++j)
            drawn += across * bay + bay;
    }
    for (const int direction : {1, -1})
        for (int start = -along; start <= across; ++start) { // a diagonal crosses the front line at `start`
            int cells = 0;
            for (int j = 0; j < along; ++j) {
                const int i = direction > 0 ? start + j : across - 1 - start - j;
                cells += i >= 0 && i < across ? 1 : 0;
            }
            if (cells > 0)
                drawn += cells * bay * std::sqrt(2.0) + bay;
        }
    const Caning c = planCaning({bay, 4, 0}, across * bay, along * bay);
    CHECK(c.cane == Approx(1.1 * drawn).epsilon(0.02)); // how it turns at corners is left open
}
