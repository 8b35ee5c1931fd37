#include "core/hull/section_tape.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("a tape around a quarter pipe tells its arc, both ways") {
    const double radius = 400;
    const double quarter = 0.5 * std::numbers::pi * radius;
    const LoftedHull hull = test::quarterPipe(radius, 3000);
    const SectionTape tape(hull.laid, 1200);
    REQUIRE_FALSE(tape.misses());
    CHECK_THAT(tape.whole(), WithinAbs(quarter, 0.01));
    CHECK_THAT(tape.endBreadth(), WithinAbs(0.0, 1e-6));
    for (const double left : {0.0, 70.0, 311.0, quarter}) {
        const double angle = (quarter - left) / radius;
        const Eigen::Vector3d there(1200, radius * std::cos(angle), -radius * std::sin(angle));
        CHECK_THAT(tape.leftFrom(there), WithinAbs(left, 0.01));
        CHECK_THAT((tape.at(left) - there).norm(), WithinAbs(0.0, 0.02));
    }
    CHECK((tape.at(-50) - tape.at(0)).norm() < 1e-9); // no farther than its ends
    CHECK((tape.at(9999) - tape.at(tape.whole())).norm() < 1e-9);
    CHECK_THAT(tape.directionAt(tape.at(quarter)).z(), WithinAbs(-1.0, 1e-3)); // plumb at the sheer
}

TEST_CASE("beyond the hull there is nothing to measure") {
    const LoftedHull hull = test::quarterPipe(400, 3000);
    const SectionTape tape(hull.laid, 3500);
    CHECK(tape.misses());
    CHECK(tape.whole() == 0.0);
    CHECK(tape.leftFrom({3500, 400, 0}) == 0.0);
}
