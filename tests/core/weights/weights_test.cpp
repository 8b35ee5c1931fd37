#include "core/hull/outside_surface.hpp"
#include "core/project/wood.hpp"
#include "core/weights/weights.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector3d;

namespace {

const test::Planked& canoe() { // 16 ft
    static const test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    return boat;
}

CoveringChoices sixOunces() {
    CoveringChoices c;
    c.outside = c.inside = ClothFace{};
    c.outside->cloth = c.inside->cloth = 203.4;
    c.inside->coats = 2;
    return c;
}

} // namespace

TEST_CASE("planking weighs its area times thickness and density, and balances where the surface does") {
    const auto& [project, hull, plan] = canoe();
    const WeightItem item = plankingWeight(project, plan);
    const Wood& wood = *findWood(project.strips.wood);
    const double surface = 2 * hull.laid.halfArea * project.strips.thickness * wood.density * 1e-9;
    CHECK_THAT(item.mass, WithinRel(surface, 0.01)); // pointed ends are told by samples
    const CoveredFace face = measureFace(hull.laid);
    CHECK((item.centre - face.centre).norm() < 5);
    CHECK(std::abs(item.centre.y()) < 1);
    CHECK_THAT(item.plusMinus, WithinRel(0.1 * item.mass, 1e-12));
}

TEST_CASE("a row in a denser wood weighs more in proportion") {
    test::Planked boat = canoe();
    const double plain = plankingWeight(boat.project, boat.plan).mass;
    boat.project.stock = Stock{};
    boat.project.stock->woodRules.push_back({"white-ash", -100, 100, 1, {}, 0});
    const double ratio = findWood("white-ash")->density / findWood(boat.project.strips.wood)->density;
    CHECK_THAT(plankingWeight(boat.project, boat.plan).mass, WithinRel(plain * ratio, 1e-9));
}

TEST_CASE("a 16 ft hull weighs what such hulls weigh") {
    // common practice, no source: bare planking 8 to 12 kg, finished 17 to 26 kg
    auto [project, hull, plan] = canoe();
    const double bare = plankingWeight(project, plan).mass;
    CHECK(bare > 8);
    CHECK(bare < 12);
    project.covering = sixOunces();
    const auto covering = planCovering(project, hull, outsideSurface(project, hull).value());
    // gunwales, seats, yoke, decks of ash and cedar: about 5 kg, common practice, no source
    const std::vector<WeightItem> fittings{{"gunwales, seats, yoke and decks", 5.0, 0.5, {2438, 0, 300}}};
    const WeightSheet sheet = weighBoat(project, hull, plan, covering, fittings);
    INFO("bare " << bare << ", finished " << sheet.mass << " +- " << sheet.plusMinus);
    CHECK(sheet.mass > 17);
    CHECK(sheet.mass < 26);
    CHECK(sheet.items.size() == 8);
}

TEST_CASE("sums, centre and spread") {
    const WeightSheet sheet = sumWeights({{"a", 10, 3, {0, 0, 100}}, {"b", 30, 4, {400, 20, 300}}});
    CHECK(sheet.mass == 40);
    CHECK((sheet.centre - Vector3d(300, 15, 250)).norm() < 1e-12);
    CHECK(sheet.plusMinus == 5);
    CHECK_FALSE(sheet.weighed);
    REQUIRE(sheet.findings.size() == 1); // over NIOSH's 23 kg (publication 94-110)
    CHECK(sheet.findings[0].code == "two-to-carry");
    CHECK(sumWeights({{"a", 22, 0, {0, 0, 0}}}).findings.empty());
    const WeightSheet weighed = sumWeights({{"a", 10, 3, {0, 0, 100}}, {"b", 30, 4, {400, 20, 300}}}, 22);
    CHECK(weighed.mass == 22);
    CHECK(weighed.weighed);
    CHECK((weighed.centre - sheet.centre).norm() < 1e-12);
    CHECK(sumWeights({}).mass == 0);
}

TEST_CASE("parts of the file stand where the table says") {
    auto [project, hull, plan] = canoe();
    project.afloat = AfloatChoices{};
    project.afloat->parts.push_back({"gunwales", 4, 100, 0, 320, 0});
    const WeightSheet sheet = weighBoat(project, hull, plan, std::nullopt);
    REQUIRE(sheet.items.size() == 2);
    REQUIRE(sheet.findings.size() == 1); // a light boat, but her cloth is not in it
    CHECK(sheet.findings[0].code == "weighed-without-cloth");
    CoveringPlan cloth; // over bulkheads alone: the hull is bare still
    cloth.faces.resize(1);
    cloth.faces[0].bulkheads = true;
    CHECK(weighBoat(project, hull, plan, cloth).findings.size() == 1);
    cloth.faces[0].bulkheads = false;
    CHECK(weighBoat(project, hull, plan, cloth).findings.empty());
    project.afloat->boatMass = 20; // weighed as she is, cloth and all
    CHECK(weighBoat(project, hull, plan, std::nullopt).findings.empty());
    CHECK_THAT(sheet.items[1].centre.x(), WithinAbs(100 + hull.xShift, 1e-9));
    CHECK(sheet.items[1].centre.z() == 320);
    CHECK_THAT(sheet.mass, WithinAbs(sheet.items[0].mass + 4, 1e-9));
}
