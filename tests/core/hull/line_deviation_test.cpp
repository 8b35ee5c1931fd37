#include "core/hull/line_deviation.hpp"
#include "tests/support/catch.hpp"

#include <cmath>

using namespace sheerlay::core;

TEST_CASE("a cubic's entries agree with their neighbours, and one off is told by what it is off") {
    std::vector<LineEntry> line;
    for (const double at : {0.0, 1.0, 2.5, 3.0, 4.0, 6.0, 7.0})
        line.push_back({at, at * at * at - 4 * at});
    // two neighbours on each side carry a cubic; nearer the ends there are three, which carry a parabola
    for (const LineDeviation& d : lineDeviations(line))
        if (d.entry >= 2 && d.entry + 2 < line.size())
            CHECK_THAT(d.size, WithinAbs(0, 1e-9));
    line[3].value += 5;
    for (const LineDeviation& d : lineDeviations(line))
        if (d.entry == 3) {
            CHECK_THAT(d.fair, WithinAbs(27 - 12, 1e-9));
            CHECK(d.size > 0);
            CHECK(d.size < 5); // in units of the scatter of five rounded numbers
        }
    CHECK(lineDeviations({{0, 0}, {1, 1}, {2, 2}}).empty());
}

TEST_CASE("the threshold is five robust spreads, and none is told of too few") {
    CHECK_FALSE(lineThreshold({1, 2, 3, 4, 5}).has_value());
    CHECK_THAT(lineThreshold({-1, 1, -1, 1, 1, 100}).value(), WithinAbs(5 * 1.4826, 1e-12));
}
