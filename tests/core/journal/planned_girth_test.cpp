#include "core/journal/planned_girth.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double strip = 17.0; // mm

Project plain(double cover, LayOn layOn = LayOn::Moulds) {
    Project p;
    p.strips.coverWidth = cover;
    p.planking.layOn = layOn;
    return p;
}

} // namespace

TEST_CASE("on a pipe the girth left is the quarter turn less the strips") {
    const double quarter = 35.8 * strip;
    const LoftedHull hull = quarterPipe(quarter * 2 / std::numbers::pi, 3000);
    const Plan plan = plank(plain(strip), hull).value();
    for (const int row : {0, 1, 12, 35})
        for (const double x : {300.0, 1500.0, 2700.0}) {
            INFO("row " << row << " at " << x);
            const auto planned = plannedGirthLeft(plan, hull, row, x);
            REQUIRE(planned);
            CHECK_THAT(planned->left, WithinAbs(quarter - row * strip, 0.01));
            CHECK_THAT(planned->square, WithinAbs(1.0, 1e-6)); // straight strips across plumb moulds
        }
    CHECK(plannedGirthLeft(plan, hull, 36, 1500)->left < 0.01); // the last plank lies on the centreline
    CHECK_FALSE(plannedGirthLeft(plan, hull, 37, 1500));
    CHECK_FALSE(plannedGirthLeft(plan, hull, 5, -500));
    CHECK_FALSE(plannedGirthLeft(plan, hull, 5, 3500));

    const auto last = plannedLastPlank(plan, hull);
    REQUIRE(last);
    CHECK(last->lastRow == 35);
    CHECK(last->sides == 1);
    CHECK_THAT(last->width, WithinAbs(0.8 * strip, 0.01));
    const auto reach = reachOf(plan, 10);
    REQUIRE(reach);
    CHECK_THAT(reach->from, WithinAbs(0, 0.01));
    CHECK_THAT(reach->to, WithinAbs(3000, 0.01));
}

TEST_CASE("one plank over both sides is twice what one side lacks") {
    const double quarter = 20.3 * strip;
    const LoftedHull hull = quarterPipe(quarter * 2 / std::numbers::pi, 3000);
    const auto last = plannedLastPlank(plank(plain(strip), hull).value(), hull);
    REQUIRE(last);
    CHECK(last->sides == 2);
    CHECK(last->lastRow == 20);
    CHECK_THAT(last->width, WithinAbs(0.6 * strip, 0.02));
}

TEST_CASE("the tape lies on the mould, not where the strips are measured") {
    // strips measured on a pipe 5 mm outside the moulds' pipe: girths on the mould are shorter in proportion;
    // 0.02 mm are left to the two splines that stand for pipes
    const double outer = 400, inner = 395;
    LoftedHull hull = quarterPipe(outer, 3000);
    hull.moulds = quarterPipe(inner, 3000).laid;
    const Plan plan = plank(plain(strip), hull).value();
    const double quarter = outer * std::numbers::pi / 2;
    for (const int row : {0, 10, 30})
        CHECK_THAT(plannedGirthLeft(plan, hull, row, 1200)->left,
                   WithinAbs((quarter - row * strip) * inner / outer, 0.02));
}

TEST_CASE("on a great circle of a sphere the edge slopes across the moulds") {
    // Strips parallel to the sheer of a quarter sphere, the plane z = 0: after a girth of a the edge is the
    // small circle of latitude a / R. At x the mould is a circle of radius sqrt(R^2 - (x - R)^2).
    const double R = 800;
    const LoftedHull hull = quarterSphere(R);
    const Plan plan = plank(plain(20.0), hull).value();
    const double latitude = 10 * 20.0 / R;
    for (const double x : {500.0, 800.0, 1100.0}) {
        INFO("x " << x);
        const double mould = std::sqrt(R * R - (x - R) * (x - R));
        const auto planned = plannedGirthLeft(plan, hull, 10, x);
        REQUIRE(planned);
        const double drop = std::asin(R * std::sin(latitude) / mould); // along the mould, below the sheer
        CHECK_THAT(planned->left, WithinAbs(mould * (std::numbers::pi / 2 - drop), 0.1));
        // the edge runs along (cos t, -sin t, 0), x - R = r sin t, the mould along (0, -sin drop, -cos drop)
        const double r = R * std::cos(latitude), sinT = (x - R) / r;
        const double dot = sinT * std::sin(drop);
        CHECK_THAT(planned->square, WithinAbs(std::sqrt(1 - dot * dot), 1e-3));
    }
}

TEST_CASE("canoe: girths along the mould are longer than the strips laid there") {
    // design study of the journal, start at the sheer, cover width 17.2 on the moulds; x from amidships
    Project project = projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay");
    project.strips.coverWidth = 17.2;
    const Planked boat = planked(project);
    const double amidships = 2438.4;
    const auto laid = [&](int row, double x) {
        return plannedGirthLeft(boat.plan, boat.hull, 0, x)->left -
               plannedGirthLeft(boat.plan, boat.hull, row, x)->left;
    };
    CHECK_THAT(laid(25, amidships + 1524), WithinAbs(434.2, 0.3));
    CHECK_THAT(laid(10, amidships + 2286), WithinAbs(172.0 + 3.2, 0.3));
    CHECK_THAT(laid(25, amidships), WithinAbs(430.0, 0.3));
    for (double x = 300; x < 4600; x += 300)
        for (const int row : {5, 15, 25})
            if (const auto planned = plannedGirthLeft(boat.plan, boat.hull, row, x)) {
                CHECK(planned->square > 0.97);
                CHECK(planned->square <= 1.0);
            }
}
