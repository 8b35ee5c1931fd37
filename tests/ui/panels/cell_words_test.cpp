#include "tests/support/project_text.hpp"
#include "ui/panels/cell_words.hpp"

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

struct Told {
    core::Project project = parsed(smallProject());
    std::vector<core::GridLine> lines = core::gridLines(project.hull);

    [[nodiscard]] std::string of(core::GridCell cell, const CellSaid& said) const {
        return cellWords(project, lines, cell, said, core::Units::Millimetres).toStdString();
    }
};

} // namespace

TEST_CASE("a cell is told in whole sentences") {
    const Told told;
    CHECK(told.of({1, 1}, {}) == "Station 3-0-0, sheer height: the table has 1-0-0.");
    CHECK(told.of({6, 1}, {}) == "Station 3-0-0, keel half-breadth: nothing is given.");
    CellSaid said;
    said.loft = core::CellLoft{280.0, 5.75, 5.5};
    CHECK(told.of({4, 1}, said) ==
          "Station 3-0-0, half-breadth at the waterline 0-8-0: the table has 0-11-2, the loft 0-11-0: the "
          "table is 5.8 mm farther out.");
    said.loft = core::CellLoft{310.0, -5.2, 5.0};
    CHECK(says(told.of({1, 1}, said), "the table is 5.2 mm lower."));
}

TEST_CASE("doubts, corrections and entries that can't stand are told") {
    Told told;
    CellSaid said;
    said.doubt = core::DoubtfulCell{};
    said.doubt->fair = 11 * 25.4;
    said.doubt->spread = 1.5;
    said.doubt->likely = 279.4;
    said.doubt->slip = "a digit lost";
    said.doubt->setAside = true;
    const std::string text = told.of({4, 1}, said);
    CHECK(says(text, "wants about 0-11-0, give or take 1.5 mm."));
    CHECK(says(text, "Likeliest: a digit lost, 0-11-0 meant."));
    CHECK(says(text, "without this number"));

    told.project.hull.stations[1].sheer.replacedHeight = "1-6-0";
    CHECK(says(told.of({1, 1}, {}), "Printed was 1-6-0; this number stands in its place."));

    CellSaid refused;
    refused.refused = core::RefusedEntry{{{1, 1}, "high"}, "the text \"high\"", "a length"};
    CHECK(told.of({1, 1}, refused) ==
          "Station 3-0-0, sheer height: \"high\" can't stand here. Found: the text \"high\"; what would do: "
          "a length. Until then 1-0-0 stands.");
}

TEST_CASE("lines are labelled at the head of their rows") {
    const Told told;
    CHECK(lineLabel(told.lines[0]).toStdString() == "Station at");
    CHECK(lineLabel(told.lines[4]).toStdString() == "Half-breadth · waterline 0-8-0");
    CHECK(lineLabel({core::GridLine::Kind::Buttock, 76.2, "0-3-0", 1}).toStdString() ==
          "Height · buttock 0-3-0 (2)");
}
