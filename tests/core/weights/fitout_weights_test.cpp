#include "core/project/wood.hpp"
#include "core/weights/fitout_weights.hpp"
#include "tests/support/catch.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector3d;

namespace {

/// A level, straight sheer 4 m long, 400 mm out, 300 mm up.
std::vector<SheerPoint> straightSheer() {
    std::vector<SheerPoint> line;
    for (int i = 0; i <= 40; ++i) {
        SheerPoint p;
        p.s = 100.0 * i;
        p.point = {100.0 * i, 400, 300};
        p.along = {1, 0, 0};
        p.out = {0, 1, 0};
        p.up = {0, 0, 1};
        line.push_back(p);
    }
    return line;
}

} // namespace

TEST_CASE("sticks and cross pieces weigh width times height times length, and hang where they are") {
    Project project;
    project.fitout = FitoutChoices{};
    project.fitout->wood = "white-ash";
    const double ash = findWood("white-ash")->density * 1e-9;
    Fitout fitout;
    fitout.gunwales = Gunwales{};
    fitout.gunwales->innerLine = fitout.gunwales->outerLine = straightSheer();
    fitout.gunwales->inner.size = {20, 22};
    fitout.gunwales->outer.size = {16, 22};
    Thwart thwart;
    CrossPiece& bar = thwart.bar.piece;
    bar.front = {1500, 280};
    bar.width = 60;
    bar.height = 20;
    bar.frontTop = bar.backTop = 700;
    bar.frontBottom = bar.backBottom = 690;
    fitout.thwarts.push_back(thwart);

    const std::vector<WeightItem> items = fitoutWeights(project, fitout);
    REQUIRE(items.size() == 2);
    CHECK(items[0].name == "gunwales");
    CHECK_THAT(items[0].mass, WithinRel(2 * 4000.0 * (20 * 22 + 16 * 22) * ash, 1e-12));
    CHECK((items[0].centre - Vector3d(2000, 0, 300 - 11)).norm() < 1e-9);
    CHECK_THAT(items[1].mass, WithinRel(695.0 * 60 * 20 * ash, 1e-12));
    CHECK((items[1].centre - Vector3d(1530, 0, 270)).norm() < 1e-9);
}

TEST_CASE("a flat deck is plywood of its plan's area; nothing fitted weighs nothing") {
    Project project;
    project.fitout = FitoutChoices{};
    Fitout fitout;
    Deck deck;
    deck.choice.thickness = 6;
    DeckPlace inner, tip; // a triangle 400 mm long, 300 mm wide at its inner edge
    inner.x = 400;
    inner.girth = 150;
    inner.height = tip.height = 320;
    tip.along = 400;
    deck.places = {inner, tip};
    fitout.decks.push_back(deck);
    const auto items = fitoutWeights(project, fitout);
    REQUIRE(items.size() == 1);
    CHECK(items[0].name == "decks");
    CHECK_THAT(items[0].mass, WithinRel(0.5 * 400 * 300 * 6 * 550e-9, 1e-12));
    CHECK(items[0].centre.z() == Approx(320));
    CHECK(fitoutWeights(project, Fitout{}).empty());
}

TEST_CASE("screws, bolts and glue are parts of the boat, each at its common centre") {
    std::vector<WeightItem> items;
    addWeight(items, std::vector<Fastening>{});
    addWeight(items, std::vector<GlueUse>{});
    CHECK(items.empty());
    Fastening screws, bolts;
    screws.mass = 0.1;
    screws.centre = {1000, 0, 300};
    bolts.mass = 0.3;
    bolts.centre = {2000, 0, 200};
    addWeight(items, {screws, bolts});
    GlueUse glue;
    glue.mass = 0.5;
    glue.centre = {1500, 0, 100};
    addWeight(items, {glue});
    REQUIRE(items.size() == 2);
    CHECK(items[0].mass == Approx(0.4));
    CHECK(items[0].centre.x() == Approx(1750));
    CHECK(items[0].centre.z() == Approx(225));
    CHECK(items[1].name == "glue and fillets");
    CHECK(items[1].plusMinus == Approx(0.15));
}
