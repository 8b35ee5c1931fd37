#include "core/fitout/bulkheads.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

constexpr double exact = 0.05;                          // mm, issue 8
constexpr double angle = 0.05 * std::numbers::pi / 180; // issue 8
constexpr double pi = std::numbers::pi;

HullFaces facesWith(const LoftedHull& hull, double glass) {
    Project p = test::bareFitout();
    p.fitout->glassInside = glass;
    auto faces = facesOf(p, hull);
    REQUIRE(faces);
    return std::move(*faces);
}

Bulkhead
made(const BulkheadChoice& choice, const HullFaces& faces, const std::vector<DeckChoice>& decks = {}) {
    const BulkheadPlan plan = planBulkhead(choice, faces, decks);
    REQUIRE(plan.bulkhead);
    return *plan.bulkhead;
}

double areaOf(const std::vector<Vector2d>& ring) {
    double twice = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vector2d &a = ring[i], &b = ring[(i + 1) % ring.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(twice) / 2;
}

} // namespace

TEST_CASE("in a pipe a bulkhead is a half circle less cloth and gap, square all round") {
    const HullFaces faces = facesWith(test::quarterPipe(400, 2000), 0.5);
    const Bulkhead b = made({End::Bow, 300, 6, 1.5, 0, 0}, faces);
    CHECK(b.x == Approx(300).margin(exact));
    for (const EdgePoint& e : b.edge) {
        CHECK(e.at.norm() == Approx(400 - 0.5 - 1.5).margin(exact));
        CHECK(e.bevel == Approx(0).margin(angle));
    }
    CHECK(b.width == Approx(2 * 398).margin(exact));
    CHECK(b.height == Approx(398).margin(exact));
    CHECK(areaOf(b.outline) == Approx(pi * 398 * 398 / 2).epsilon(1e-4));
    // behind it a half pipe of 300 - 6 mm
    CHECK(b.voidVolume == Approx(pi * 399.5 * 399.5 / 2 * 294).epsilon(1e-3));
    CHECK(b.litres() == Approx(b.voidVolume * 1e-6));
}

TEST_CASE("in a cone the outline is a circle and the bevel the cone's half angle, at both ends") {
    const HullFaces faces = facesWith(test::coneBoat(250, 0.12, 2000), 0);
    const double half = std::atan(0.12);
    const Bulkhead bow = made({End::Bow, 400, 6, 0, 0, 0}, faces);
    const Bulkhead stern = made({End::Stern, 500, 6, 0, 0, 0}, faces);
    for (const EdgePoint& e : bow.edge) {
        CHECK(e.at.norm() == Approx(250 + 0.12 * 400).margin(exact));
        CHECK(e.bevel == Approx(half).margin(angle)); // she narrows toward the bow: wood comes off
    }
    for (const EdgePoint& e : stern.edge) {
        CHECK(e.at.norm() == Approx(250 + 0.12 * 1500).margin(exact));
        CHECK(e.bevel == Approx(-half).margin(angle)); // she widens aft of it
    }
    const auto frustum = [](double a, double b, double length) {
        return pi * length * (a * a + a * b + b * b) / 3 / 2;
    };
    CHECK(bow.voidVolume == Approx(frustum(250, 250 + 0.12 * 394, 394)).epsilon(1e-3));
    CHECK(stern.voidVolume == Approx(frustum(250 + 0.12 * 1506, 250 + 0.12 * 2000, 494)).epsilon(1e-3));
}

TEST_CASE("in a sphere the bulkhead closes off half a cap") {
    const HullFaces faces = facesWith(test::quarterSphere(500), 0);
    for (const End end : {End::Bow, End::Stern}) {
        const Bulkhead b = made({end, 200, 6, 0, 0, 0}, faces);
        const double radius = std::sqrt(500.0 * 500 - 300.0 * 300);
        for (const EdgePoint& e : b.edge) {
            CHECK(e.at.norm() == Approx(radius).margin(exact));
            CHECK(e.bevel == Approx(std::asin(0.6)).margin(angle));
        }
        CHECK(b.voidVolume == Approx(pi * 194 * 194 * (3 * 500 - 194) / 3 / 2).epsilon(1e-3));
        const auto told = planBulkhead({end, 200, 6, 0, 0, 0}, faces, {}).findings;
        REQUIRE(told.size() == 1); // 37 degrees
        CHECK(told[0].code == "bulkhead-bevel");
        CHECK(planBulkhead({end, 300, 6, 0, 0, 0}, faces, {}).findings.empty()); // 24 degrees
    }
}

TEST_CASE("a top below the sheer, a crown, and the deck's own") {
    const HullFaces faces = facesWith(test::quarterPipe(400, 2000), 0);
    const Bulkhead low = made({End::Bow, 300, 6, 0, 50, 20}, faces);
    const double corner = std::sqrt(400.0 * 400 - 50.0 * 50);
    CHECK(low.edge.front().at.x() == Approx(corner).margin(exact));
    CHECK(low.edge.front().at.y() == Approx(-50).margin(exact));
    CHECK(low.height == Approx(400 - 50 + 20).margin(exact));
    const double segment = 400.0 * 400 * std::asin(corner / 400) - 50 * corner; // of the circle below the top
    const double crowned = segment + 4.0 / 3 * corner * 20;
    CHECK(areaOf(low.outline) == Approx(crowned).epsilon(1e-3));
    CHECK(low.voidVolume == Approx(crowned * 294).epsilon(2e-3));

    DeckChoice deck;
    deck.end = End::Bow;
    deck.length = 450;
    deck.thickness = 7;
    deck.crown = 25;
    const Bulkhead under = made({End::Bow, 300, 6, 0, 0, 0}, faces, {deck});
    CHECK(under.edge.front().at.y() == Approx(-7).margin(exact));
    CHECK(under.crown == Approx(25).margin(exact)); // as broad there as at the deck's inner edge
    CHECK(made({End::Stern, 300, 6, 0, 0, 0}, faces, {deck}).crown == 0.0);
}

TEST_CASE("a bulkhead outside the hull is told") {
    const HullFaces faces = facesWith(test::quarterPipe(400, 2000), 0);
    const BulkheadPlan plan = planBulkhead({End::Bow, 2500, 6, 0, 0, 0}, faces, {});
    CHECK_FALSE(plan.bulkhead);
    REQUIRE(plan.findings.size() == 1);
    CHECK(plan.findings[0].code == "bulkhead-outside");
}
