#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "core/units/weight.hpp"
#include "tests/support/project_text.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 1e-9; // one rounding of a conversion

const std::string everything = R"(
[afloat]
water = "salt"
freeboard = "5 in"
boat-weight = "52 lb"
[[afloat.load]]
name = "stern paddler"
weight = "170 lb"
x = "10-6-0"
height = "11 in"
[[afloat.load]]
weight = "20 kg"
x = 1500
off-centre = -100
height = 150
[[afloat.part]]
name = "gunwales"
weight = "6 lb 8 oz"
x = 2400
height = 320
)";

} // namespace

TEST_CASE("a file that asks nothing of her afloat gets nothing") {
    CHECK_FALSE(test::parsed(test::smallProject()).afloat);
}

TEST_CASE("[afloat] is read with its loads and parts") {
    const Project project = test::parsed(test::smallProject() + everything);
    REQUIRE(project.afloat);
    const AfloatChoices& a = *project.afloat;
    CHECK(a.density == 1025);
    CHECK_THAT(a.freeboard, WithinAbs(127, exact));
    REQUIRE(a.boatMass);
    CHECK_THAT(*a.boatMass, WithinAbs(52 * 0.45359237, exact));
    REQUIRE(a.loads.size() == 2);
    CHECK(a.loads[0].name == "stern paddler");
    CHECK_THAT(a.loads[0].mass, WithinAbs(170 * 0.45359237, exact));
    CHECK_THAT(a.loads[0].x, WithinAbs(10.5 * 304.8, exact));
    CHECK_THAT(a.loads[0].height, WithinAbs(279.4, exact));
    CHECK(a.loads[0].y == 0.0);
    CHECK(a.loads[1].name == "load 2");
    CHECK(a.loads[1].mass == 20.0);
    CHECK(a.loads[1].y == -100.0);
    REQUIRE(a.parts.size() == 1);
    CHECK_THAT(a.parts[0].mass, WithinAbs(6.5 * 0.45359237, exact));
}

TEST_CASE("what is left out of [afloat] keeps its usual value") {
    const AfloatChoices a = *test::parsed(test::smallProject() + "\n[afloat]\n").afloat;
    CHECK(a == AfloatChoices{});
    CHECK(test::parsed(test::smallProject() + "\n[afloat]\nwater = 1010\n").afloat->density == 1010);
}

TEST_CASE("[afloat] is written and read back the same, in both units") {
    Project project = test::parsed(test::smallProject() + everything);
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        project.units = units;
        const std::string text = writeProject(project);
        const Project again = test::parsed(text);
        REQUIRE(again.afloat);
        CHECK(writeProject(again) == text);
        CHECK_THAT(again.afloat->loads[0].mass, WithinAbs(project.afloat->loads[0].mass, 1e-7));
        CHECK_THAT(again.afloat->loads[0].x, WithinAbs(project.afloat->loads[0].x, 1e-6));
        CHECK(again.afloat->density == 1025);
    }
}

TEST_CASE("slips in [afloat] are named") {
    CHECK(test::says(test::refusalOf("\n[afloat]\nwater = \"brackish\"\n"), "afloat.water"));
    CHECK(test::says(test::refusalOf("\n[afloat]\nwater = 700\n"), "950 to 1250"));
    CHECK(test::says(test::refusalOf("\n[afloat]\nfreeboard = \"20 ft\"\n"), "afloat.freeboard"));
    CHECK(test::says(test::refusalOf("\n[afloat]\nboat-weight = \"heavy\"\n"), "\"170 lb\""));
    CHECK(test::says(test::refusalOf("\n[afloat]\nboat-weight = 0\n"), "out of range"));
    CHECK(test::says(test::refusalOf("\n[[afloat.load]]\nx = 3\nheight = 3\n"), "afloat.load[1].weight"));
    CHECK(test::says(test::refusalOf("\n[[afloat.load]]\nweight = 3\nheight = 3\n"), "afloat.load[1].x"));
    CHECK(test::says(test::refusalOf("\n[[afloat.part]]\nweight = true\nx = 1\nheight = 3\n"),
                     "afloat.part[1].weight"));
}

TEST_CASE("an unknown key of [afloat] is told and left out") {
    const auto read = parseProject(test::smallProject() + "\n[afloat]\ncrew = 2\n", "trial.sheerlay");
    REQUIRE(read.has_value());
    REQUIRE(read->warnings.size() == 1);
    CHECK(test::says(toText(read->warnings.front()), "afloat.crew"));
}

TEST_CASE("an edit of the planking leaves [afloat] and [covering] letter for letter") {
    const std::string tables =
        "\n[covering] # with a word behind\nseal = true\n[covering.outside]\ncloth = \"6 oz\"\n" + everything;
    const std::string text = test::smallProject() + tables;
    Project project = test::parsed(text);
    project.planking.taper = Taper::Anywhere;
    const std::string edited = updateProjectText(text, project);
    CHECK(edited != text);
    CHECK(edited.find(tables) != std::string::npos);
    CHECK(writeProject(test::parsed(edited)) == writeProject(project));
    project.afloat->loads[0].mass = 60; // no control changes this yet; written anew, nothing else lost
    const Project again = test::parsed(updateProjectText(text, project));
    CHECK(again.afloat->loads[0].mass == 60.0);
    CHECK(again.covering->seal);
    CHECK_THAT(again.covering->outside->cloth,
               WithinAbs(project.covering->outside->cloth, 1e-8)); // twelve digits
}
