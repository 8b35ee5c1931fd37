#include "core/project/project_writer.hpp"
#include "tests/support/project_text.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

const std::string everything = R"(
[covering]
seal = true
mix = { resin = 3.5, hardener = 1, by = "weight" }
pot-life = 25
pace = 0.2
waste = 0.2
give = 18
varnish-coats = 4
glue-spread = 200
fillet-radius = "3/8 in"
[covering.bulkheads]
cloth = "4 oz"
lap = "1 1/2 in"
coats = 2
faces = "both"
[covering.outside]
cloth = "6 oz"
roll = "60 in"
lay = "drape"
overhang = "3 in"
[covering.inside]
cloth = "136 g"
lay = "centre-overlap"
overlap = "1 1/2 in"
coats = 1
)";

} // namespace

TEST_CASE("[covering] is read with both faces") {
    const CoveringChoices c = *test::parsed(test::smallProject() + everything).covering;
    CHECK(c.seal);
    REQUIRE(c.mix);
    CHECK(*c.mix == MixParts{3.5, 1, true});
    CHECK(c.potLife == 25.0);
    CHECK(c.pace == 0.2);
    CHECK(c.waste == 0.2);
    CHECK(c.give == 18.0);
    CHECK(c.varnishCoats == 4);
    CHECK(c.glueSpread == 200.0);
    CHECK_THAT(c.fillet, WithinAbs(9.525, 1e-9));
    REQUIRE(c.bulkheads);
    CHECK_THAT(c.bulkheads->lap, WithinAbs(38.1, 1e-9));
    CHECK(c.bulkheads->coats == 2);
    CHECK(c.bulkheads->faces == BulkheadCloth::Faces::Both);
    CHECK(c.bulkheads->roll == BulkheadCloth{}.roll);
    REQUIRE(c.outside);
    // source: tests/reference/glass_epoxy.md, 6 oz/yd2 = 203.4 g/m2
    CHECK_THAT(c.outside->cloth, WithinAbs(203.4, 0.05));
    CHECK_THAT(c.outside->roll, WithinAbs(1524, 1e-9));
    CHECK(c.outside->lay == ClothLay::Drape);
    CHECK(c.outside->coats == 3);
    REQUIRE(c.inside);
    CHECK(c.inside->cloth == 136.0);
    CHECK(c.inside->lay == ClothLay::CentreOverlap);
    CHECK(c.inside->coats == 1);
}

TEST_CASE("what is left out of [covering] keeps its usual value, and nothing about the mix is assumed") {
    const CoveringChoices c =
        *test::parsed(test::smallProject() + "\n[covering.inside]\ncloth = \"4 oz\"\n").covering;
    CHECK_FALSE(c.outside);
    CHECK_FALSE(c.mix);
    CHECK_FALSE(c.potLife);
    CHECK(c.inside->coats == 2);
    CHECK(c.inside->lay == ClothLay::Fewest);
    CHECK(c.wetOut == publishedWetOut);
    CHECK(c.fillet == 12.7);
    CHECK_FALSE(c.bulkheads);
}

TEST_CASE("[covering] is written and read back the same, in both units") {
    Project project = test::parsed(test::smallProject() + everything);
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        project.units = units;
        const std::string text = writeProject(project);
        const Project again = test::parsed(text);
        REQUIRE(again.covering);
        CHECK(writeProject(again) == text);
        CHECK(again.covering->mix == project.covering->mix);
        CHECK(again.covering->bulkheads->faces == project.covering->bulkheads->faces);
        CHECK_THAT(again.covering->fillet, WithinAbs(project.covering->fillet, 1e-8));
        CHECK_THAT(again.covering->outside->cloth, WithinAbs(project.covering->outside->cloth, 1e-8));
    }
}

TEST_CASE("slips in [covering] are named") {
    CHECK(test::says(test::refusalOf("\n[covering.outside]\nroll = 1270\n"), "covering.outside.cloth"));
    CHECK(test::says(test::refusalOf("\n[covering.outside]\ncloth = \"6\"\n"), "square yard"));
    CHECK(test::says(test::refusalOf("\n[covering.outside]\ncloth = \"6 oz\"\nroll = \"1 mm\"\n"),
                     "covering.outside.roll"));
    CHECK(test::says(test::refusalOf("\n[covering.outside]\ncloth = \"6 oz\"\nlay = \"wrap\"\n"),
                     "centre-overlap"));
    CHECK(test::says(test::refusalOf("\n[covering.outside]\ncloth = \"6 oz\"\ncoats = 2.5\n"), "not whole"));
    CHECK(
        test::says(test::refusalOf("\n[covering]\nmix = { resin = 3, hardener = 1 }\n"), "covering.mix.by"));
    CHECK(test::says(test::refusalOf("\n[covering]\nmix = { resin = 3, by = \"volume\" }\n"),
                     "covering.mix.hardener"));
    CHECK(test::says(test::refusalOf("\n[covering]\nmix = { resin = 0, hardener = 1, by = \"volume\" }\n"),
                     "covering.mix.resin"));
    CHECK(test::says(test::refusalOf("\n[covering]\nseal = \"yes\"\n"), "true or false"));
    CHECK(test::says(test::refusalOf("\n[covering]\npot-life = 0\n"), "minutes"));
    CHECK(test::says(test::refusalOf("\n[covering]\nwaste = 15\n"), "covering.waste"));
    CHECK(test::says(test::refusalOf("\n[covering]\nfillet-radius = \"1 ft\"\n"), "covering.fillet-radius"));
    CHECK(test::says(test::refusalOf("\n[covering.bulkheads]\nlap = 50\n"), "covering.bulkheads.cloth"));
    CHECK(test::says(test::refusalOf("\n[covering.bulkheads]\ncloth = \"6 oz\"\nfaces = \"two\"\n"), "both"));
}
