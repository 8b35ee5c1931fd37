#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/project_text.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("prices are of a metre and a litre, in a file in inches of a foot, a yard and a gallon") {
    const std::string tables = "\n[prices]\nstick = 3\ncloth-outside = 12.5\nresin = 30\nscrew = 0.2\n";
    const Prices metric = test::parsed(test::smallProject() + tables).prices;
    CHECK(metric.stick == 3.0);
    CHECK(metric.clothOutside == 12.5);
    CHECK(metric.resin == 30.0);
    CHECK(metric.screw == 0.2);
    CHECK_FALSE(metric.bolt);
    Project inches = test::parsed(test::smallProject());
    inches.units = Units::Inches;
    const Prices imperial = test::parsed(writeProject(inches) + tables).prices;
    CHECK(*imperial.stick == Approx(3 / 0.3048));
    CHECK(*imperial.clothOutside == Approx(12.5 / 0.9144));
    CHECK(*imperial.resin == Approx(30 / 3.785411784));
    CHECK(*imperial.screw == 0.2);
    CHECK(test::parsed(test::smallProject()).prices == Prices{});
}

TEST_CASE("a price that is none is refused with what would do, a key that is none is named") {
    CHECK(test::says(test::refusalOf("\n[prices]\nresin = -3\n"), "prices.resin"));
    CHECK(test::says(test::refusalOf("\n[prices]\nbolt = \"dear\"\n"), "the price of one bolt"));
    const auto read = parseProject(test::smallProject() + "\n[prices]\ngold = 5\n", "trial.sheerlay");
    REQUIRE(read);
    REQUIRE(read->warnings.size() == 1);
    CHECK(test::says(toText(read->warnings[0]), "prices.gold"));
}

TEST_CASE(
    "[prices] is written and read back the same, in both units; the window's changes go into the file") {
    Project project = test::parsed(test::smallProject());
    double next = 1.25;
    for (const PriceKey& key : priceKeys())
        project.prices.*key.member = next *= 1.37;
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        project.units = units;
        const Project again = test::parsed(writeProject(project));
        for (const PriceKey& key : priceKeys()) {
            INFO(key.key);
            CHECK(*(again.prices.*key.member) == Approx(*(project.prices.*key.member)).epsilon(1e-11));
        }
    }
    Project without = project;
    without.prices = {};
    CHECK(writeProject(without).find("[prices]") == std::string::npos);
}
