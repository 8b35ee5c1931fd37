#include "core/fitout/gunwales.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 0.05; // mm, issue 8

Project withGunwales(double stock = 3000) {
    Project p = test::bareFitout();
    p.strips.thickness = 6.0;
    p.fitout->gunwales = GunwaleChoices{};
    p.fitout->gunwales->inner = {20, 18};
    p.fitout->gunwales->outer = {20, 18};
    p.fitout->gunwales->stockLength = stock;
    return p;
}

GunwalePlan planOf(const Project& project, const LoftedHull& hull) {
    const auto faces = facesOf(project, hull);
    REQUIRE(faces);
    return planGunwales(project, hull, *faces);
}

bool has(const std::vector<Finding>& findings, const std::string& code) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; });
}

} // namespace

TEST_CASE("gunwales of a circular sheer measure arcs, inside and outside, near face and far") {
    const Project project = withGunwales();
    const GunwalePlan plan = planOf(project, test::tubeBoat(5000, 400));
    const Gunwales& g = plan.gunwales;
    const double outer = 5406, ends = std::acos(5000.0 / outer);
    CHECK(g.outer.sheerLength == Approx(2 * outer * ends).margin(exact));
    CHECK(g.outer.farLength == Approx(2 * (outer + 20) * ends).margin(exact));
    CHECK(g.inner.farLength == Approx(2 * 5380 * std::acos(5000.0 / 5400)).margin(exact));
    CHECK(g.outer.cutLength == Approx(g.outer.farLength + 100).margin(1e-9));
    CHECK(g.inner.cutLength == Approx(g.inner.sheerLength + 100).margin(1e-9));
    // one bend only: strain width / 2 radius over half of the modulus of rupture
    const Wood& ash = *findWood("white-ash");
    const double allowed = 0.5 * ash.bendingStrength / (1000 * ash.alongModulus);
    CHECK(g.outer.strain == Approx(20.0 / 2 / outer / allowed).epsilon(0.01));
    CHECK(g.outer.use == WoodUse::ByHand);
    CHECK(plan.findings.empty());
}

TEST_CASE("pieces are the fewest, none longer than the stock, and make the whole with their scarfs") {
    const Project project = withGunwales(1700);
    const Gunwales g = planOf(project, test::tubeBoat(5000, 400)).gunwales;
    for (const Gunwale* one : {&g.inner, &g.outer}) {
        CHECK(one->scarf == Approx(200));
        const double least = (one->cutLength - one->scarf) / (1700 - one->scarf);
        CHECK(one->pieces.size() == static_cast<std::size_t>(std::ceil(least)));
        CHECK(one->scarfs.size() + 1 == one->pieces.size());
        double sum = 0;
        for (const GunwalePiece& p : one->pieces) {
            CHECK(p.length() <= 1700 + 1e-9);
            sum += p.length();
        }
        CHECK(sum - static_cast<double>(one->scarfs.size()) * one->scarf ==
              Approx(one->cutLength).margin(1e-6));
    }
    for (const double a : g.inner.scarfs)
        for (const double b : g.outer.scarfs)
            CHECK(std::abs(a - b) >= 300);
}

TEST_CASE("a scarf goes where the wood is strained least") {
    std::vector<double> strain(101, 0.9);
    std::fill(strain.begin() + 58, strain.begin() + 62, 0.2); // about 59 percent of the length
    const auto one = placeScarfs(strain, 4000, 2800, 200, 50, {});
    REQUIRE(one);
    REQUIRE(one->size() == 1);
    CHECK(one->front() > 0.57 * 4000);
    CHECK(one->front() < 0.63 * 4000);
    const auto beside = placeScarfs(strain, 4000, 2800, 200, 50, {one->front()});
    REQUIRE(beside);
    CHECK(std::abs(beside->front() - one->front()) >= 300);
    CHECK(placeScarfs(strain, 4000, 4100, 200, 50, {})->empty());
    CHECK_FALSE(placeScarfs(strain, 4000, 390, 200, 50, {}));
}

TEST_CASE("a hard bend asks for steam, and stock that is too short is told") {
    Project project = withGunwales();
    project.fitout->gunwales->outer.width = 80;
    const GunwalePlan hard = planOf(project, test::tubeBoat(2000, 350));
    CHECK(hard.gunwales.outer.use == WoodUse::SteamIt);
    CHECK(has(hard.findings, "gunwale-bend"));
    project.fitout->gunwales->stockLength = 1000; // under two scarfs of ten widths
    CHECK(has(planOf(project, test::tubeBoat(2000, 350)).findings, "gunwale-stock"));
}

TEST_CASE("the bevel is the side's flare, at every station") {
    Project project = withGunwales();
    const LoftedHull hull = test::helixPipe(400, 2000, 0.08);
    const Gunwales g = planOf(project, hull).gunwales;
    REQUIRE(g.bevels.size() == hull.stationX.size());
    const double slope = 406 * 0.08 / 400;
    for (const GunwaleBevel& b : g.bevels) {
        const double a = 0.08 * b.x / 400, dip = slope * std::cos(a) / std::sqrt(1 + slope * slope);
        CHECK(
            b.flare ==
            Approx(std::asin(std::sin(a) / std::sqrt(1 - dip * dip))).margin(0.05 * std::numbers::pi / 180));
        CHECK(b.alongOuter == Approx(b.x * std::sqrt(1 + slope * slope)).margin(exact));
    }
}

TEST_CASE("screws stand no further apart than wanted, and one in every block between scuppers") {
    Project project = withGunwales();
    const LoftedHull hull = test::tubeBoat(5000, 400);
    Gunwales g = planOf(project, hull).gunwales;
    CHECK(g.screwCount == 2 * static_cast<int>(g.screws.size()));
    CHECK(g.plugCount == g.screwCount);
    CHECK(g.screwSpacing <= project.fitout->gunwales->screwSpacing + 1e-9);
    CHECK(g.screws.size() == 1 + static_cast<std::size_t>(std::ceil((g.outer.sheerLength - 80) / 177.8)));

    project.fitout->gunwales->scuppers = ScupperChoice{100, 40, 450};
    g = planOf(project, hull).gunwales;
    REQUIRE(g.scuppers);
    const Scuppers& s = *g.scuppers;
    CHECK(s.solidEnds >= 450);
    CHECK(s.solidEnds < 450 + 70);
    CHECK(2 * s.solidEnds + s.count * 100 + (s.count - 1) * 40 == Approx(g.inner.sheerLength).margin(1e-6));
    for (int i = 1; i < s.count; ++i) { // a screw in the middle of every block
        const double block = (s.first + i * 140 - 20) * g.outer.sheerLength / g.inner.sheerLength;
        CHECK(std::any_of(
            g.screws.begin(), g.screws.end(), [&](double at) { return std::abs(at - block) < 1e-6; }));
    }
    project.fitout->gunwales->scuppers->solidEnds = 2900;
    CHECK(has(planOf(project, hull).findings, "scuppers-no-room"));
}

TEST_CASE("a rabbet is as wide as planking and cloth") {
    Project project = withGunwales();
    CHECK(planOf(project, test::tubeBoat(5000, 400)).gunwales.rabbet == 0.0);
    project.fitout->gunwales->edge = GunwaleChoices::Edge::Rabbet;
    CHECK(planOf(project, test::tubeBoat(5000, 400)).gunwales.rabbet == Approx(6.0));
}
