#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "ui/scene/scarf_marks.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::ui;

TEST_CASE("a scarf is a stroke across its strip, as long along it as the scarf, at the place told") {
    const test::Spheroid hull;
    const auto plain = test::fakeBoat(hull);
    core::Plan plan = plain->plan;
    for (core::Strip& strip : plan.strips) { // the made-up strips have no samples
        double s = 0.0;
        for (std::size_t i = 0; i < strip.middle.size(); ++i) {
            s += i > 0 ? (strip.middle[i] - strip.middle[i - 1]).norm() : 0.0;
            core::StripSample sample;
            sample.s = s;
            strip.samples.push_back(sample);
        }
    }
    core::StockPlan stock;
    stock.scarf = 51.0;
    // amidships, where a strip runs along the boat: half of its length from its bow end
    const auto halfway = [](const core::Strip& strip) { return 0.5 * strip.samples.back().s; };
    const core::Strip& starboard = plan.strips[6];
    const core::Strip& port = plan.strips[7];
    REQUIRE(starboard.row == port.row);
    for (const core::Strip* strip : {&starboard, &port})
        stock.strips.push_back({strip->id, "cedar", {{halfway(*strip), hull.halfLength, 4}}, {}});
    const auto marks = scarfMarks(plan, stock, plain->scene.map);
    REQUIRE(marks.size() == 2);
    const double half = 0.5 * 3.14159265358979 * hull.radius;
    for (const ScarfMark& mark : marks) {
        const core::Strip& strip = plan.strips[mark.strip];
        const double sign = strip.side == core::Side::Port ? -1.0 : 1.0;
        CHECK_THAT(mark.upper.y(), WithinAbs(sign * (half - (strip.row - 1) * hull.cover), 1.0));
        CHECK_THAT(mark.lower.y(), WithinAbs(sign * (half - strip.row * hull.cover), 1.0));
        CHECK_THAT(mark.lower.x() - mark.upper.x(), WithinAbs(stock.scarf, 1.0));
        CHECK_THAT(0.5 * (mark.lower.x() + mark.upper.x()), WithinAbs(hull.halfLength, 1.0));
        CHECK_THAT(mark.along, WithinAbs(halfway(strip), 1e-9));
    }
    CHECK(scarfMarks(plan, {}, plain->scene.map).empty());
}
