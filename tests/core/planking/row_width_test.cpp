#include "core/planking/row_width.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <stdexcept>

using namespace sheerlay::core;

TEST_CASE("a row's width runs smoothly through what it is given and stays beyond the ends") {
    CHECK(RowWidth().full());
    std::vector<double> u, w;
    for (double x = 0; x <= 3000; x += 25) {
        u.push_back(x);
        w.push_back(14 + 3 * std::sin(x / 400));
    }
    const RowWidth width(u, w);
    REQUIRE_FALSE(width.full());
    for (std::size_t i = 0; i < u.size(); ++i)
        CHECK_THAT(width.at(u[i]), WithinAbs(w[i], 1e-12));
    CHECK_THAT(width.at(-50), WithinAbs(w.front(), 1e-12));
    CHECK_THAT(width.at(5000), WithinAbs(w.back(), 1e-12));
    // away from the ends value and second difference are those of the sine, so no kink reaches the edge bend
    for (double x = 300; x < 2700; x += 7.3) {
        CHECK_THAT(width.at(x), WithinAbs(14 + 3 * std::sin(x / 400), 1e-5));
        const double h = 10;
        const double second = (width.at(x + h) - 2 * width.at(x) + width.at(x - h)) / (h * h);
        CHECK_THAT(second, WithinAbs(-3 * std::sin(x / 400) / (400 * 400), 2e-8));
    }
}

TEST_CASE("widths that make no line are refused") {
    CHECK_THROWS_AS(RowWidth({1}, {17}), std::invalid_argument);
    CHECK_THROWS_AS(RowWidth({1, 1}, {17, 17}), std::invalid_argument);
    CHECK_THROWS_AS(RowWidth({1, 2}, {17}), std::invalid_argument);
}
