#include "core/fitout/decks.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 0.05;                          // mm, issue 8
constexpr double angle = 0.05 * std::numbers::pi / 180; // issue 8

HullFaces facesOfBare(const LoftedHull& hull) {
    auto faces = facesOf(test::bareFitout(), hull);
    REQUIRE(faces);
    return std::move(*faces);
}

DeckChoice deckOf(End end, double length, double crown = 0.0) {
    DeckChoice d;
    d.end = end;
    d.length = length;
    d.crown = crown;
    return d;
}

GunwaleChoices gunwale(double width) {
    GunwaleChoices g;
    g.inner.width = width;
    return g;
}

} // namespace

TEST_CASE("a flat deck on a level circular sheer is the arcs themselves, inside the gunwales") {
    constexpr double ring = 5000, outer = 5400;
    const HullFaces faces = facesOfBare(test::tubeBoat(ring, 400));
    const double half = std::sqrt(outer * outer - ring * ring); // half of her length
    for (const double width : {0.0, 20.0}) {
        const auto plan =
            planDeck(deckOf(End::Bow, 450), faces, width > 0 ? std::optional(gunwale(width)) : std::nullopt);
        REQUIRE(plan.deck);
        const Deck& d = *plan.deck;
        CHECK(d.innerX == Approx(-half + 450).margin(exact));
        const double radius = outer - width;
        for (const DeckPlace& p : d.places) {
            CHECK(p.halfBreadth == Approx(std::sqrt(radius * radius - p.x * p.x) - ring).margin(exact));
            CHECK(p.along == Approx(d.innerX - p.x).margin(exact));
            CHECK(p.girth == p.halfBreadth);
            CHECK(p.bevel == Approx(0).margin(angle));
        }
        CHECK(d.places.back().x == Approx(-std::sqrt(radius * radius - ring * ring)).margin(exact));
        CHECK(d.misfit == Approx(0).margin(1e-6));
        CHECK(plan.findings.empty());
    }
}

TEST_CASE("on a helical sheer the plate's true length and its edge bevel follow the slope") {
    constexpr double radius = 400, rise = 0.15, rate = rise / radius;
    const HullFaces faces = facesOfBare(test::helixPipe(radius, 2000, rise));
    DeckChoice choice = deckOf(End::Stern, 500);
    choice.between = DeckChoice::Between::Planking;
    const auto plan = planDeck(choice, faces, gunwale(20)); // the gunwale stops at it
    REQUIRE(plan.deck);
    double along = 0.0;
    for (std::size_t i = 0; i < plan.deck->places.size(); ++i) {
        const DeckPlace& p = plan.deck->places[i];
        const double a = rate * p.x, slope = radius * rate * std::cos(a);
        CHECK(p.halfBreadth == Approx(radius * std::cos(a)).margin(exact));
        CHECK(p.height == Approx(-radius * std::sin(a)).margin(exact));
        CHECK(p.bevel == Approx(std::asin(std::sin(a) / std::sqrt(1 + slope * slope))).margin(angle));
        if (i > 0) { // the sheer's profile by its own formula, in hundred steps
            const double from = plan.deck->places[i - 1].x;
            for (int k = 0; k < 100; ++k) {
                const double x = from + (p.x - from) * (k + 0.5) / 100;
                along += std::abs(p.x - from) / 100 *
                         std::sqrt(1 + std::pow(radius * rate * std::cos(rate * x), 2));
            }
        }
        CHECK(p.along == Approx(along).margin(exact));
    }
    CHECK(plan.deck->places.back().x == Approx(2000).margin(exact));
    CHECK(plan.deck->misfit == Approx(0).margin(1e-6)); // level lines across: it lies flat
}

TEST_CASE("a crown is an arc across, and its plate as wide as the arc is long") {
    const HullFaces faces = facesOfBare(test::quarterPipe(400, 2000));
    const auto plan = planDeck(deckOf(End::Bow, 450, 30), faces, std::nullopt);
    REQUIRE(plan.deck);
    const double radius = (400.0 * 400 + 30 * 30) / 60;
    CHECK(plan.deck->radius == Approx(radius).margin(exact));
    for (const DeckPlace& p : plan.deck->places) {
        CHECK(p.rise == Approx(30).margin(exact));
        CHECK(p.girth == Approx(radius * std::asin(400 / radius)).margin(exact));
        CHECK(p.bevel ==
              Approx(-std::asin(400 / radius)).margin(angle)); // the plate leans, the side is plumb
    }
    CHECK(plan.deck->area == Approx(2 * plan.deck->places[0].girth * 450).epsilon(1e-4));
    CHECK(plan.deck->misfit == Approx(0).margin(0.01)); // a cylinder lies flat

    // one that narrows is sprung to a cone-like shape that does not quite
    const HullFaces pointed = facesOfBare(test::tubeBoat(5000, 400));
    const auto narrow = planDeck(deckOf(End::Bow, 800, 40), pointed, std::nullopt);
    REQUIRE(narrow.deck);
    CHECK(narrow.deck->places.back().rise == Approx(0).margin(1e-6));
    CHECK(std::abs(narrow.deck->misfit) < 5);
    CHECK(narrow.deck->misfit != 0.0);

    // sprung hard, by more than a millimetre, which is told
    const auto round = planDeck(deckOf(End::Bow, 800, 150), pointed, std::nullopt);
    REQUIRE(round.deck);
    CHECK(std::abs(round.deck->misfit) > 1);
    REQUIRE(round.findings.size() == 1);
    CHECK(round.findings[0].code == "deck-not-flat");
}

TEST_CASE("a deck with no room between the gunwales is told") {
    const HullFaces faces = facesOfBare(test::tubeBoat(5000, 400));
    const auto plan = planDeck(deckOf(End::Bow, 60), faces, gunwale(40));
    CHECK_FALSE(plan.deck);
    REQUIRE(plan.findings.size() == 1);
    CHECK(plan.findings[0].code == "deck-outside");
}
