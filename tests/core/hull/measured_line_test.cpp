#include "core/hull/measured_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double radius = 400;
constexpr double quarter = 0.5 * std::numbers::pi * radius;

HullPlace at(const LoftedHull& hull, double x, double girth) {
    const auto place = placeAtGirth(hull.laid, x, girth);
    REQUIRE(place);
    return *place;
}

} // namespace

TEST_CASE("a place is the same by its girth and by its point") {
    const LoftedHull hull = test::quarterPipe(radius, 3000);
    for (const double girth : {250.0, -250.0}) {
        const HullPlace place = at(hull, 700, girth);
        CHECK_THAT(place.girth, WithinAbs(girth, 0.02));
        const double angle = girth / radius; // from straight down
        const Eigen::Vector3d exact(700, radius * std::sin(angle), -radius * std::cos(angle));
        CHECK_THAT((place.point - exact).norm(), WithinAbs(0.0, 0.02));
        CHECK(place.onPort == (girth < 0.0));
        CHECK_THAT((place.normal - exact.cwiseProduct(Eigen::Vector3d(0, 1, 1)) / radius).norm(),
                   WithinAbs(0.0, 1e-3));
        // a hand's breadth outside, as the planking's outer face is
        const auto near = placeNear(hull.laid, exact + Eigen::Vector3d(0, exact.y(), exact.z()) * 0.02);
        REQUIRE(near);
        CHECK_THAT((near->point - exact).norm(), WithinAbs(0.0, 0.01));
    }
    CHECK_FALSE(placeAtGirth(hull.laid, 3600, 10));
    CHECK_FALSE(placeNear(hull.laid, {-200, 100, 0}));
    CHECK_THAT(at(hull, 700, 9999).girth, WithinAbs(quarter, 0.02)); // the sheer, no farther
}

TEST_CASE("on a pipe a batten lies straight on the unrolled sheet, on one side and across the bottom") {
    const LoftedHull hull = test::quarterPipe(radius, 3000);
    struct Case {
        double x1, girth1, x2, girth2;
    };
    for (const Case& c : {Case{300, 500, 2500, 120},
                          Case{900, 60, 900, 560},
                          Case{400, 333, 2200, 333},
                          Case{300, 500, 2500, -120},
                          Case{2500, -600, 2450, 600}}) {
        INFO(c.x1 << ", " << c.girth1 << " to " << c.x2 << ", " << c.girth2);
        const MeasuredLine line =
            measureBetween(hull.laid, at(hull, c.x1, c.girth1), at(hull, c.x2, c.girth2));
        CHECK_THAT(line.length, WithinAbs(std::hypot(c.x2 - c.x1, c.girth2 - c.girth1), 0.02));
        CHECK_THAT(line.along, WithinAbs(std::abs(c.x2 - c.x1), 1e-6));
        CHECK_THAT(line.around, WithinAbs(std::abs(c.girth2 - c.girth1), 0.03));
        CHECK(line.onHull);
        // it runs from the one to the other, on the pipe
        CHECK_THAT(line.points.front().x(), WithinAbs(c.x1, 1e-6));
        CHECK_THAT(line.points.back().x(), WithinAbs(c.x2, 1e-6));
        CHECK(line.points.front().y() * c.girth1 > 0.0);
        CHECK(line.points.back().y() * c.girth2 > 0.0);
        REQUIRE(line.normals.size() == line.points.size());
        for (std::size_t i = 0; i < line.points.size(); ++i) {
            const Eigen::Vector3d& p = line.points[i];
            CHECK_THAT(std::hypot(p.y(), p.z()), WithinAbs(radius, 0.01));
            CHECK(line.normals[i].y() * p.y() + line.normals[i].z() * p.z() > 0.999 * radius);
        }
    }
}

TEST_CASE("on a sphere a batten takes the great circle, shorter than around and along") {
    const double R = 600;
    const LoftedHull hull = test::quarterSphere(R);
    const double x0 = 0.5 * hull.laid.length;
    const auto check = [&](const HullPlace& a, const HullPlace& b) {
        const MeasuredLine line = measureBetween(hull.laid, a, b);
        const Eigen::Vector3d middle(x0, 0, 0);
        const double angle = std::acos((a.point - middle).dot(b.point - middle) / (R * R));
        CHECK_THAT(line.length, WithinAbs(R * angle, 0.02));
        CHECK(line.length < std::hypot(line.along, line.around) + 0.3 * R);
    };
    check(at(hull, x0 - 250, 300), at(hull, x0 + 200, 500));
    check(at(hull, x0 - 250, 300), at(hull, x0 + 200, -500));
}

TEST_CASE("between two sides of a keel batten its breadth counts") {
    geometry::Trims trims = test::quarterPipe(radius, 3000).laid.trims;
    trims.siding = geometry::HalfSiding(20.0);
    const LoftedHull hull = test::exactHull(test::quarterPipe(radius, 3000).laid.surface, trims);
    const double lost = radius * std::asin(20.0 / radius); // girth that the batten takes of a side
    const HullPlace a = at(hull, 1000, quarter - lost), b = at(hull, 1000, -(quarter - lost));
    CHECK_THAT(a.bottom, WithinAbs(20.0, 1e-3));
    const MeasuredLine line = measureBetween(hull.laid, a, b);
    CHECK_THAT(line.length, WithinAbs(2 * (quarter - lost) + 40.0, 0.05));
    CHECK_THAT(line.around, WithinAbs(line.length, 0.05));
    CHECK(line.along < 1e-6);
}

TEST_CASE("a hull that was never lofted has no places, and a place has no distance to itself") {
    CHECK_FALSE(placeAtGirth({}, 100, 50));
    CHECK_FALSE(placeNear({}, {100, 50, 0}));
    const LoftedHull hull = test::quarterPipe(radius, 3000);
    const MeasuredLine none = measureBetween(hull.laid, at(hull, 700, 100), at(hull, 700, 100));
    CHECK_THAT(none.length, WithinAbs(0.0, 1e-9));
}

TEST_CASE("a batten that would run past the sheer says so") {
    const LoftedHull hull =
        test::quarterSphere(600); // places under its round sheer: the straight way is inside
    const double x0 = 0.5 * hull.laid.length;
    const MeasuredLine inside = measureBetween(hull.laid, at(hull, x0 - 300, 200), at(hull, x0 + 300, 200));
    CHECK(inside.onHull);
    const LoftedHull boat = core::loft(test::projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay")).value();
    // her sheer is hollow: from bow to stern along it the straight way leaves the planking
    const double length = boat.laid.length;
    const MeasuredLine past =
        measureBetween(boat.laid, at(boat, 0.12 * length, 9999), at(boat, 0.88 * length, 9999));
    const MeasuredLine below =
        measureBetween(boat.laid, at(boat, 0.4 * length, 200), at(boat, 0.6 * length, 220));
    CHECK(below.onHull);
    CHECK_FALSE(past.onHull);
}
