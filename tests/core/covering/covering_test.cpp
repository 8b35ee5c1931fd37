#include "core/covering/covering.hpp"
#include "core/units/weight.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double degree = std::numbers::pi / 180;

/// A face of so many square feet on which cloth lies flat.
CoveredFace flatFace(double squareFeet) {
    CoveredFace face;
    face.area = squareFeet * squareMPerSquareFoot * 1e6;
    face.halfGirth = 530;
    face.length = 4900;
    face.keelLength = 4600;
    return face;
}

CoveringChoices outsideOnly(double ounces, double rollInches) {
    CoveringChoices c;
    c.outside = ClothFace{};
    c.outside->cloth = ounces * gsmPerOunce;
    c.outside->roll = rollInches * 25.4;
    return c;
}

} // namespace

TEST_CASE("resin: the published formula to rounding") {
    // source: Epoxyworks, B. Niederer, "Estimating epoxy amounts" (tests/reference/glass_epoxy.md):
    // gallons = ft2 (0.00085 W + 0.0075), W in oz/yd2, wet-out and three rolled coats, 15 percent waste in it
    for (const double W : {4.0, 6.0, 10.0}) {
        const CoveringPlan plan = coverFaces(outsideOnly(W, 60), flatFace(100), {});
        REQUIRE(plan.faces.size() == 1);
        CHECK(plan.faces[0].lay == ClothLay::Drape);
        CHECK_THAT(plan.litres / litresPerGallon, WithinRel(100 * (0.00085 * W + 0.0075), 1e-9));
    }
    // the same source's figures to the square foot: 6 oz 0.0126, 4 oz 0.0109 gallons
    CHECK_THAT(coverFaces(outsideOnly(6, 60), flatFace(1), {}).litres / litresPerGallon,
               WithinAbs(0.0126, 5e-5));
    CHECK_THAT(coverFaces(outsideOnly(4, 60), flatFace(1), {}).litres / litresPerGallon,
               WithinAbs(0.0109, 5e-5));
}

TEST_CASE("coats are told one by one, and each figure can be the builder's own") {
    CoveringChoices c = outsideOnly(6, 60);
    c.seal = true;
    c.outside->coats = 2;
    const CoveringPlan plan = coverFaces(c, flatFace(100), {});
    const FaceCovering& f = plan.faces[0];
    REQUIRE(f.coats.size() == 4);
    CHECK(f.coats[0].name == "seal");
    CHECK(f.coats[1].name == "wet-out");
    const double area = 100 * squareMPerSquareFoot;
    CHECK_THAT(f.coats[0].litres, WithinRel(0.1 * area, 1e-9));
    // source: same page: wet-out with waste 0.208, a rolled coat 0.102 L/m2
    CHECK_THAT(f.coats[1].litres / area, WithinAbs(0.208, 5e-4));
    CHECK_THAT(f.coats[2].litres / area, WithinAbs(0.102, 5e-4));
    c.fillCoat *= 2;
    c.waste = 0.3;
    const CoveringPlan thick = coverFaces(c, flatFace(100), {});
    CHECK_THAT(thick.faces[0].coats[2].litres, WithinRel(2 * f.coats[2].litres * 1.3 / 1.15, 1e-9));
    CHECK_THAT(thick.faces[0].coats[1].litres, WithinRel(f.coats[1].litres * 1.3 / 1.15, 1e-9));
}

TEST_CASE("what stays on the boat: the published weights by the square metre") {
    // source: same page, net, two rolled coats, nothing sanded: 6 oz 0.61, 4 oz 0.48 kg/m2, each to the last
    // digit
    for (const auto& [ounces, kilograms] : {std::pair{6.0, 0.61}, std::pair{4.0, 0.48}}) {
        CoveringChoices c = outsideOnly(ounces, 60);
        c.outside->coats = 2;
        c.sanded = 0;
        const CoveringPlan plan = coverFaces(c, flatFace(1 / squareMPerSquareFoot), {});
        CHECK_THAT(plan.faces[0].glassMass + plan.faces[0].resinMass, WithinAbs(kilograms, 0.006));
    }
    // varnish: 500 ft2/gal a coat, three coats leave about 0.1 kg/m2
    const FaceCovering f = coverFaces(outsideOnly(6, 60), flatFace(500), {}).faces[0];
    CHECK_THAT(f.varnish / litresPerGallon, WithinAbs(3, 0.01));
    CHECK_THAT(f.varnishMass / (500 * squareMPerSquareFoot), WithinAbs(0.105, 1e-9));
}

TEST_CASE("one drape where the roll allows it, else a piece to a side, else more") {
    // source: same page: width needed = 2 half girths + 2 overhangs
    const double overhang = 101.6, overlap = 50.8;
    const FaceCovering drape = coverFaces(outsideOnly(6, 60), flatFace(60), {}).faces[0];
    CHECK(drape.lay == ClothLay::Drape);
    REQUIRE(drape.pieces.size() == 1);
    CHECK(drape.pieces[0].count == 1);
    CHECK_THAT(drape.pieces[0].width, WithinAbs(2 * 530 + 2 * overhang, 1e-9));
    CHECK_THAT(drape.pieces[0].length, WithinAbs(4900 + 2 * overhang, 1e-9));
    CHECK(drape.overlaps == 0.0);

    const FaceCovering halves = coverFaces(outsideOnly(6, 38), flatFace(60), {}).faces[0];
    CHECK(halves.lay == ClothLay::CentreOverlap);
    CHECK(halves.pieces[0].count == 2);
    CHECK_THAT(halves.pieces[0].width, WithinAbs(530 + overhang + overlap / 2, 1e-9));
    CHECK_THAT(halves.overlaps, WithinAbs(overlap * 4600, 1e-6));
    CHECK_THAT(halves.fromRoll, WithinAbs(1.05 * 2 * (4900 + 2 * overhang), 1e-6));
    CHECK_THAT(halves.covered(), WithinRel(flatFace(60).area + overlap * 4600, 1e-12));

    CoveringChoices wide = outsideOnly(6, 60); // both halves lie side by side on a roll so wide
    wide.outside->lay = ClothLay::CentreOverlap;
    CHECK_THAT(coverFaces(wide, flatFace(60), {}).faces[0].fromRoll,
               WithinAbs(1.05 * (4900 + 2 * overhang), 1e-6));

    const FaceCovering bands = coverFaces(outsideOnly(6, 20), flatFace(60), {}).faces[0];
    CHECK(bands.pieces[0].count == 4);
    CHECK(bands.pieces[0].width <= 20 * 25.4);
    // two bands a side, one overlap between them, reach from the overhang to past the keel
    CHECK_THAT(2 * bands.pieces[0].width - overlap, WithinAbs(530 + overhang + overlap / 2, 1e-9));
}

TEST_CASE("a drape that the roll can't give is told and laid in two") {
    CoveringChoices c = outsideOnly(6, 38);
    c.outside->lay = ClothLay::Drape;
    const CoveringPlan plan = coverFaces(c, flatFace(60), {});
    CHECK(plan.faces[0].lay == ClothLay::CentreOverlap);
    REQUIRE_FALSE(plan.findings.empty());
    CHECK(plan.findings[0].code == "cloth-too-narrow");
}

TEST_CASE("a covering without a face is told") {
    const CoveringPlan plan = coverFaces({}, {}, {});
    CHECK(plan.faces.empty());
    REQUIRE(plan.findings.size() == 1);
    CHECK(plan.findings[0].code == "no-face-told");
}

TEST_CASE("batches hold no more than the pot life lets a pair of hands spread") {
    CoveringChoices c = outsideOnly(6, 60);
    c.potLife = 20;
    c.pace = 0.1; // 2 m2 in a pot life
    const FaceCovering f = coverFaces(c, flatFace(5 / squareMPerSquareFoot), {}).faces[0];
    for (const ResinCoat& coat : f.coats) {
        REQUIRE(coat.batches);
        CHECK(*coat.batches == 3); // 5 m2 at 2 m2 a batch
        CHECK_THAT(coat.batch * *coat.batches, WithinRel(coat.litres, 1e-12));
    }
    CHECK_FALSE(coverFaces(outsideOnly(6, 60), flatFace(50), {}).faces[0].coats[0].batches);
}

TEST_CASE("parts of the mix are as told, by volume or by weight, and never assumed") {
    CoveringChoices c = outsideOnly(6, 60);
    const CoveringPlan untold = coverFaces(c, flatFace(60), {});
    CHECK_FALSE(untold.litresOf(1));
    CHECK_FALSE(untold.kilogramsOf(1, 1.12));
    CHECK(std::any_of(untold.findings.begin(), untold.findings.end(), [](const Finding& f) {
        return f.code == "mix-not-told";
    }));
    c.mix = MixParts{3, 1, false};
    const auto litres = coverFaces(c, flatFace(60), {}).litresOf(2);
    REQUIRE(litres);
    CHECK_THAT(litres->resin, WithinAbs(1.5, 1e-12));
    CHECK_THAT(litres->hardener, WithinAbs(0.5, 1e-12));
    c.mix = MixParts{3.5, 1, true};
    const auto kilograms = coverFaces(c, flatFace(60), {}).kilogramsOf(2, 1.12);
    REQUIRE(kilograms);
    CHECK_THAT(kilograms->resin, WithinAbs(2.24 * 3.5 / 4.5, 1e-12));
    CHECK_THAT(kilograms->hardener, WithinAbs(2.24 / 4.5, 1e-12));
}

TEST_CASE("cloth is slit where the weave would have to slide farther than it can") {
    CoveringChoices c = outsideOnly(6, 200);
    // a pipe needs no slit, whatever the length
    CHECK(coverFaces(c, measureFace(test::quarterPipe(400, 3000).laid), {}).faces[0].slits.empty());
    // half a ball of radius r: pi h / 2 r, over 20 degrees beyond h = 2/9 r; at the end 90 degrees
    const double r = 600;
    const auto slits = coverFaces(c, measureFace(test::quarterSphere(r).laid), {}).faces[0].slits;
    REQUIRE(slits.size() == 2);
    for (const ClothSlit& s : slits) {
        CHECK_FALSE(s.alongStem);
        CHECK_THAT(s.angle, WithinAbs(70 * degree, 1.5 * degree));
        const double from = s.end == End::Bow ? r - s.fromX : s.fromX - r;
        CHECK_THAT(from, WithinAbs(2.0 / 9 * r, 2.0 * r / 80)); // to a section's spacing
    }
}

TEST_CASE("a drape is slit along curved stems, halves are not") {
    const LoftedHull hull = loft(test::projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay")).value();
    const CoveredFace face = measureFace(hull.laid);
    CoveringChoices c = outsideOnly(6, 80);
    const FaceCovering drape = coverFaces(c, face, {}).faces[0];
    REQUIRE(drape.lay == ClothLay::Drape);
    REQUIRE(drape.slits.size() == 2);
    CHECK(drape.slits[0].alongStem);
    CHECK(drape.slits[0].end == End::Bow);
    CHECK(drape.slits[0].fromX < 1000);
    c.outside->lay = ClothLay::CentreOverlap;
    for (const ClothSlit& s : coverFaces(c, face, {}).faces[0].slits)
        CHECK_FALSE(s.alongStem);
}

TEST_CASE("bulkheads take cloth of their own, turned out onto the hull, and coats by what it covers") {
    Bulkhead b; // half a circle of 200
    constexpr double r = 200, pi = std::numbers::pi;
    b.x = 300;
    b.width = 2 * r;
    b.height = r;
    b.edgeLength = pi * r;
    for (int i = 0; i <= 720; ++i)
        b.outline.emplace_back(r * std::cos(pi * i / 720), -r * std::sin(pi * i / 720));
    b.edge.resize(2);
    b.edge[1].at = {0, -r};
    Bulkhead other = b;
    other.choice.end = End::Stern;
    other.x = 4700;
    CoveringChoices c;
    c.bulkheads.emplace().cloth = 136;
    c.bulkheads->lap = 50;
    c.mix = MixParts{3, 1, false};
    c.potLife = 20;
    CoveringPlan plan = coverFaces(c, {}, {});
    CHECK(plan.findings.empty()); // no face of the hull is asked for, yet something is
    coverBulkheads(plan, c, {b, other});
    REQUIRE(plan.faces.size() == 1);
    const FaceCovering& f = plan.faces[0];
    CHECK(f.bulkheads);
    CHECK_THAT(f.face.area, WithinRel(2 * pi * r * r / 2, 1e-4));
    CHECK_THAT(f.overlaps, WithinRel(2 * 50 * pi * r, 1e-9));
    REQUIRE(f.pieces.size() == 2);
    CHECK(f.pieces[0].what == "bow bulkhead");
    CHECK(f.pieces[0].width == 500);
    CHECK(f.pieces[0].length == 250);
    CHECK_THAT(f.fromRoll, WithinAbs(250 * 1.05, 1e-9)); // both side by side on 1270
    CHECK(f.coats.size() == 2);                          // wet-out and one rolled
    CHECK_THAT(f.glassMass, WithinRel(f.covered() / 1e6 * 0.136, 1e-9));
    CHECK_THAT(f.face.centre.x(), WithinAbs(2500, 1e-6));
    CHECK_THAT(plan.litres, WithinRel(f.litres, 1e-12));
    CHECK_THAT(plan.mass, WithinRel(f.glassMass + f.resinMass + f.varnishMass, 1e-12));

    c.bulkheads->faces = BulkheadCloth::Faces::Both;
    CoveringPlan both = coverFaces(c, {}, {});
    coverBulkheads(both, c, {b, other});
    CHECK_THAT(both.litres, WithinRel(2 * plan.litres, 1e-9));
    CHECK_THAT(both.varnish, WithinRel(plan.varnish, 1e-9)); // the void's side is left bare

    c.bulkheads->roll = 240; // narrower than 250 by 500
    CoveringPlan narrow = coverFaces(c, {}, {});
    coverBulkheads(narrow, c, {b});
    CHECK(std::ranges::any_of(narrow.findings,
                              [](const Finding& one) { return one.code == "cloth-too-narrow"; }));
    CoveringPlan none = coverFaces(c, {}, {});
    coverBulkheads(none, c, {});
    REQUIRE(none.findings.size() == 1);
    CHECK(none.findings[0].code == "no-bulkhead-to-cover");
    CHECK(none.faces.empty());
}
