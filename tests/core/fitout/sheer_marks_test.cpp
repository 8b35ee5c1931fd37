#include "core/fitout/sheer_marks.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 0.05; // mm

} // namespace

TEST_CASE("sheer marks on a helix: height, breadth and run are the formula's, at every mould") {
    constexpr double radius = 400, rise = 0.08, rate = rise / radius;
    const LoftedHull hull = test::helixPipe(radius, 2000, rise);
    Project project;
    project.strips.thickness = 6;
    project.moulds.spacing = 250.0;
    Plan plan;
    const auto marks = sheerMarks(project, hull, plan);
    REQUIRE(marks.size() == 7);
    for (const SheerMark& m : marks) {
        const double a = rate * m.x;
        CHECK(m.halfBreadth == Approx((radius + 6) * std::cos(a)).margin(exact));
        CHECK(m.height == Approx(-(radius + 6) * std::sin(a)).margin(exact));
        CHECK(m.alongOutside == Approx(m.x * std::sqrt(1 + std::pow((radius + 6) * rate, 2))).margin(exact));
        // the strongback stands clear of the sheer's highest point, which is the bow's
        CHECK(m.aboveStrongback == Approx(project.moulds.strongback.clear - m.height).margin(0.5));
        CHECK_FALSE(m.fromStart); // the planking starts along the sheer
    }
}

TEST_CASE("where the planking starts below the sheer the marks are measured up from it") {
    const LoftedHull hull = test::quarterPipe(400, 2000);
    Project project;
    project.moulds.spacing = 250.0;
    Plan plan;
    plan.start.kind = StartLine::Kind::Geodesic;
    Strip first;
    first.side = Side::Starboard;
    first.row = 1;
    for (double x = 0; x <= 2000; x += 20) // a straight start, 60 mm of girth below the sheer
        first.upperEdge.emplace_back(x, 400 * std::cos(0.15), -400 * std::sin(0.15));
    plan.strips = {first};
    const auto marks = sheerMarks(project, hull, plan);
    REQUIRE(marks.size() == 7);
    for (const SheerMark& m : marks)
        CHECK(m.fromStart.value() == Approx(60).margin(exact));
}
