#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "ui/scene/tape.hpp"
#include "ui/scene/words.hpp"

#include <QString>

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

constexpr double radius = 400;

core::HullPlace at(const core::LoftedHull& hull, double x, double girth) {
    const auto place = core::placeAtGirth(hull.laid, x, girth);
    REQUIRE(place);
    return *place;
}

} // namespace

TEST_CASE("a tape has a first end, then a second, then begins anew") {
    const core::LoftedHull hull = test::quarterPipe(radius, 3000);
    Tape tape;
    CHECK(tapeOnBoat(tape, 5).empty());
    const QString none = tapeText(tape, core::Units::Inches);
    tape = withEnd(tape, at(hull, 500, 300), hull.laid);
    CHECK_FALSE(tape.line);
    CHECK(tapeText(tape, core::Units::Inches) != none);
    CHECK(tapeOnBoat(tape, 5).size() == 1); // a ring
    tape = withEnd(tape, at(hull, 1700, -200), hull.laid);
    REQUIRE(tape.line);
    // on a pipe the map is the unrolled sheet: 1200 along, 500 around, 1300 the straight way
    CHECK_THAT(tape.line->length, WithinAbs(1300.0, 0.05));
    for (const core::Units units : {core::Units::Millimetres, core::Units::Inches}) {
        const QString says = tapeText(tape, units);
        CHECK(says.startsWith(lengthText(1300.0, units)));
        for (const double part : {1300.0, 1200.0, 500.0})
            for (const core::Units either : {core::Units::Millimetres, core::Units::Inches})
                CHECK(says.contains(lengthText(part, either)));
    }
    CHECK_FALSE(withEnd(tape, at(hull, 100, 100), hull.laid).line);
}

TEST_CASE("on the boat the tape lies outside the planking, on the map it is the straight line it is") {
    const core::LoftedHull hull = test::quarterPipe(radius, 3000);
    const GirthMap map([&](double x) { return core::sectionAt(hull.laid, x, 60); }, 0.0, 3000.0);
    const core::HullPlace from = at(hull, 500, 300), to = at(hull, 1700, -200);
    const Tape tape = withEnd(withEnd({}, from, hull.laid), to, hull.laid);
    const auto lines = tapeOnBoat(tape, 7.0);
    REQUIRE(lines.size() == 3); // the line and a ring about each end
    for (const Eigen::Vector3d& p : lines[0])
        CHECK_THAT(std::hypot(p.y(), p.z()), WithinAbs(radius + 7.0, 0.02));
    const Eigen::Vector2d a(500, 300), b(1700, -200), way = (b - a).normalized();
    for (const Eigen::Vector2d& p : tapeOnMap(tape, map)) {
        const Eigen::Vector2d off = p - a;
        CHECK_THAT(off.x() * way.y() - off.y() * way.x(), WithinAbs(0.0, 0.2));
    }
}
