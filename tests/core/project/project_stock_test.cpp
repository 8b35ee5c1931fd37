#include "core/project/nominal_lumber.hpp"
#include "core/project/project_writer.hpp"
#include "core/project/saw_blades.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/project_text.hpp"

#include <fstream>
#include <string>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

constexpr double exactly = 1e-9; // mm; single roundings of exact fractions

const std::string stockText = R"(
[stock]
kerf = "3/32 in"
planing = 0.4
jointing = "1/16 in"
surfacing = "1/8 in"
end-trim = "2 in"
spare = 0.15
scarf-slope = 10
longest-piece = "14 ft"
shortest-piece = "18 in"
joint-worth = "3 in"
sides = "stagger"
[[stock.lot]]
name = "front stack"
wood = "northern-white-cedar"
thickness = "7/8 in"
width = "5 3/4 in"
length = "12' 4 in"
count = 6
price = 38.5
defects = [["2-0-0", "2-3-4"], [2000, 2105.5]]
[[stock.lot]]
nominal = "5/4x8"
width = "7 1/2 in"
length = "16 ft"
[[stock.wood-rule]]
wood = "black-walnut"
rows = [4, 20]
every = 4
[[stock.wood-rule]]
wood = "white-ash"
girth = ["3 in", 152.4]
)";

std::string bare() {
    const std::string text = smallProject();
    return text.substr(0, text.find("[stock]"));
}

/// "wrong stock.lot[1].count 12": what one spoilt line is told as.
std::string toldFor(const std::string& from, const std::string& to) {
    const auto read = parseProject(bare() + replaced(stockText, from, to), "trial.sheerlay");
    const auto& messages = read ? read->warnings : read.error();
    REQUIRE_FALSE(messages.empty());
    CHECK_FALSE(messages[0].found.empty());
    CHECK(messages[0].line > 40);
    return (read ? "odd " : "wrong ") + messages[0].key;
}

} // namespace

TEST_CASE("stock is read as it was written") {
    const Project project = parsed(bare() + stockText);
    REQUIRE(project.stock);
    const Stock& stock = *project.stock;
    CHECK_THAT(stock.kerf, WithinAbs(25.4 * 3 / 32, exactly));
    CHECK(stock.planing == 0.4);
    CHECK_THAT(stock.jointing, WithinAbs(25.4 / 16, exactly));
    CHECK_THAT(stock.surfacing, WithinAbs(25.4 / 8, exactly));
    CHECK_THAT(stock.endTrim, WithinAbs(50.8, exactly));
    CHECK(stock.spare == 0.15);
    CHECK(stock.scarfSlope == 10.0);
    CHECK_THAT(stock.longestPiece.value_or(0), WithinAbs(14 * 304.8, exactly));
    CHECK_THAT(stock.shortestPiece, WithinAbs(457.2, exactly));
    CHECK_THAT(stock.jointWorth, WithinAbs(76.2, exactly));
    CHECK(stock.sides == JointSides::Stagger);
    REQUIRE(stock.lots.size() == 2);
    CHECK(stock.lots[0].name == "front stack");
    CHECK(stock.lots[0].wood == "northern-white-cedar");
    CHECK_THAT(stock.lots[0].length, WithinAbs(148 * 25.4, exactly));
    CHECK(stock.lots[0].count == 6);
    CHECK(stock.lots[0].price == 38.5);
    CHECK_THAT(stock.lots[0].chargedThickness, WithinAbs(25.4, exactly)); // thinner counts as 1 in
    REQUIRE(stock.lots[0].defects.size() == 2);
    CHECK_THAT(stock.lots[0].defects[0][0], WithinAbs(24 * 25.4, exactly));
    CHECK_THAT(stock.lots[0].defects[0][1], WithinAbs(27.5 * 25.4, exactly));
    CHECK(stock.lots[0].defects[1] == std::array{2000.0, 2105.5});
    CHECK(stock.lots[1].defects.empty());
    CHECK(stock.lots[1].name == "B");
    CHECK(stock.lots[1].wood == project.strips.wood);
    CHECK_THAT(stock.lots[1].thickness, WithinAbs(25.4, exactly));   // of a 5/4, dry
    CHECK_THAT(stock.lots[1].width, WithinAbs(7.5 * 25.4, exactly)); // the actual width goes over 7 1/4
    CHECK_THAT(stock.lots[1].chargedThickness, WithinAbs(1.25 * 25.4, exactly));
    CHECK_FALSE(stock.lots[1].count);
    REQUIRE(stock.woodRules.size() == 2);
    REQUIRE(stock.woodRules[1].girth);
    CHECK_THAT((*stock.woodRules[1].girth)[0], WithinAbs(76.2, exactly));
    CHECK_THAT((*stock.woodRules[1].girth)[1], WithinAbs(152.4, exactly));
    CHECK_FALSE(stock.woodRules[0].girth);
    CHECK(stock.woodRules[0].firstRow == 4);
    CHECK(stock.woodRules[0].lastRow == 20);
    CHECK(stock.woodRules[0].every == 4);
    CHECK_FALSE(parsed(bare()).stock);
}

TEST_CASE("stock survives writing") {
    const Project project = parsed(bare() + stockText);
    Project again = parsed(writeProject(project));
    REQUIRE(again.stock);
    for (std::size_t i = 0; i < 2; ++i)
        again.stock->lots[i].line = project.stock->lots[i].line;
    for (std::size_t i = 0; i < 2; ++i)
        again.stock->woodRules[i].line = project.stock->woodRules[i].line;
    CHECK(*again.stock == *project.stock);
}

TEST_CASE("what is wrong with the stock is told by line and key") {
    CHECK(toldFor("spare = 0.15", "spare = 15") == "wrong stock.spare");
    CHECK(toldFor("scarf-slope = 10", "scarf-slope = 0") == "wrong stock.scarf-slope");
    CHECK(toldFor("longest-piece = \"14 ft\"", "longest-piece = \"1 ft\"") == "wrong stock.longest-piece");
    CHECK(toldFor("\"stagger\"", "\"askew\"") == "wrong stock.sides");
    CHECK(toldFor("\"northern-white-cedar\"", "\"moonwood\"") == "wrong stock.lot[1].wood");
    CHECK(toldFor("count = 6", "count = 2.5") == "wrong stock.lot[1].count");
    CHECK(toldFor("count = 6", "count = 0") == "wrong stock.lot[1].count");
    CHECK(toldFor("price = 38.5", "price = -1") == "wrong stock.lot[1].price");
    CHECK(toldFor("width = \"5 3/4 in\"", "# no width") == "wrong stock.lot[1].width");
    CHECK(toldFor("\"5/4x8\"", "\"7x9\"") == "wrong stock.lot[2].nominal");
    CHECK(toldFor("name = \"front stack\"", "name = \"B\"") == "wrong stock.lot[2].name");
    CHECK(toldFor("rows = [4, 20]", "rows = [20, 4]") == "wrong stock.wood-rule[1].rows");
    CHECK(toldFor("rows = [4, 20]", "rows = [0, 4]") == "wrong stock.wood-rule[1].rows");
    CHECK(toldFor("every = 4", "every = 0") == "wrong stock.wood-rule[1].every");
    const std::string knots = "[[\"2-0-0\", \"2-3-4\"], [2000, 2105.5]]";
    CHECK(toldFor(knots, "[[2105.5, 2000]]") == "wrong stock.lot[1].defects[1]");
    CHECK(toldFor(knots, "[[2000, 2100], [2050, 2200]]") == "wrong stock.lot[1].defects[2]");
    CHECK(toldFor(knots, "[[3700, 3800]]") == "wrong stock.lot[1].defects[1]"); // 12' 4 in are 3759 mm
    CHECK(toldFor(knots, "[300, 420]") == "wrong stock.lot[1].defects[1]");
    CHECK(toldFor(knots, "300") == "wrong stock.lot[1].defects");
    CHECK(toldFor("girth = [\"3 in\", 152.4]", "girth = [200, 100]") == "wrong stock.wood-rule[2].girth");
    CHECK(toldFor("girth = [\"3 in\", 152.4]", "girth = 100") == "wrong stock.wood-rule[2].girth");
    CHECK(toldFor("girth = [\"3 in\", 152.4]", "girth = [1, 9]\nrows = [1, 2]") ==
          "wrong stock.wood-rule[2].girth");
    CHECK(toldFor("girth = [\"3 in\", 152.4]", "# which rows?") == "wrong stock.wood-rule[2].rows");
    CHECK(toldFor("kerf =", "curve =") == "odd stock.curve");
    CHECK(parsed(bare() + replaced(stockText, "\"stagger\"", "\"book-matched\"")).stock->sides ==
          JointSides::BookMatched);
}

TEST_CASE("softwood sizes as PS 20 has them") {
    std::ifstream file(std::string(SHEERLAY_REFERENCE) + "/softwood_sizes.csv");
    REQUIRE(file.good());
    int seen = 0;
    for (std::string line; std::getline(file, line);) {
        const bool thick = line.starts_with("thickness,");
        if (!thick && !line.starts_with("width,"))
            continue;
        const std::size_t first = line.find(',') + 1, second = line.find(',', first);
        const std::string name = line.substr(first, second - first);
        const double dry = std::stod(line.substr(second + 1)) * mmPerInch;
        const auto size = nominalLumber(thick ? name + "x6" : "1 X " + name);
        INFO(line);
        REQUIRE(size);
        CHECK_THAT(thick ? size->thickness : size->width, WithinAbs(dry, exactly));
        ++seen;
    }
    CHECK(seen == 12);
    CHECK_FALSE(nominalLumber("1"));
    CHECK_FALSE(nominalLumber("1x7"));
    CHECK_FALSE(nominalLumber("3x4x5"));
}

TEST_CASE("common sizes and blades are found by what they measure, and nothing else is") {
    for (std::size_t i = 0; i < commonLumber.size(); ++i) {
        const auto size = nominalLumber(commonLumber[i]);
        REQUIRE(size);
        CHECK(commonLumberOf(size->thickness, size->width) == i);
        CHECK_FALSE(commonLumberOf(size->thickness + 0.3, size->width));
    }
    CHECK(kerfOf(SawBlade::FullKerf) == 3.175); // 1/8 in
    CHECK(bladeOf(2.38) == SawBlade::ThinKerf); // 3/32 in to 0.05 mm
    CHECK(bladeOf(0.79) == SawBlade::BandSaw);  // 1/32 in
    CHECK_FALSE(bladeOf(2.8));
}
