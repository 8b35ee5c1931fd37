#include "core/table_edit/paste_cells.hpp"
#include "tests/support/project_text.hpp"

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

PastedRows pasted(std::string_view text) {
    const auto rows = pastedRows(text);
    REQUIRE(rows.has_value());
    return *rows;
}

std::string refused(std::string_view text) {
    const auto rows = pastedRows(text);
    REQUIRE_FALSE(rows.has_value());
    return toText(rows.error());
}

} // namespace

TEST_CASE("pasted text is cut at tabs, semicolons or commas, blank rows and cells kept") {
    CHECK(pasted("a\tb\n\n\td\r\n") == PastedRows{{"a", "b"}, {""}, {"", "d"}});
    CHECK(pasted("1;2,5;\n") == PastedRows{{"1", "2,5", ""}});
    CHECK(pasted("0-1-0, 0-2-0") == PastedRows{{"0-1-0", "0-2-0"}});
    CHECK(pasted("100,200,300\n1,2,3") == PastedRows{{"100", "200", "300"}, {"1", "2", "3"}});
    CHECK(pasted("\"3' 2 1/2\"\"\"\t15 in") == PastedRows{{"3' 2 1/2\"", "15 in"}});
    CHECK(pasted("0-3-4") == PastedRows{{"0-3-4"}});
    CHECK(pasted("0-3-4\n0-3-5") == PastedRows{{"0-3-4"}, {"0-3-5"}});
    CHECK(pasted("").empty());
}

TEST_CASE("what may mean two things, or is no text, is refused") {
    CHECK(says(refused("100,200"), "commas that may be decimal"));
    CHECK(says(refused("\"open\t1"), "a quote that is never closed"));
    CHECK(says(refused(std::string_view("a\0b", 3)), "no text"));
}

TEST_CASE("pasted cells lie from the corner on; what has no room is counted") {
    const LaidRows laid = layRows({{"a", "b"}, {}, {"c"}}, {{1, 2}, {1, 2}}, 4, 3);
    CHECK(laid.entries == std::vector<CellEntry>{{{1, 2}, "a"}, {{3, 2}, "c"}});
    CHECK(laid.leftOff == 1);
    // one cell goes everywhere
    CHECK(layRows({{"x"}}, {{0, 0}, {1, 1}}, 4, 3).entries.size() == 4);
}

TEST_CASE("a block is copied as it can be pasted, filled and cleared") {
    const Project project = parsed(smallProject());
    const std::vector<GridLine> lines = gridLines(project.hull);
    const GridBlock waterlines{{4, 0}, {5, 2}};
    const std::string text = copiedText(project, lines, waterlines);
    CHECK(text == "0-2-0\t0-11-2\t0-2-4\n0-0-6\t0-10-0\t0-1-0");
    const LaidRows back = layRows(pasted(text), waterlines, lines.size(), 3);
    CHECK(setCells(project, lines, back.entries).project == project);

    CHECK(fillEntries(project, lines, waterlines, FillWay::Down) ==
          std::vector<CellEntry>{{{5, 0}, "0-2-0"}, {{5, 1}, "0-11-2"}, {{5, 2}, "0-2-4"}});
    CHECK(fillEntries(project, lines, {{4, 1}, {4, 2}}, FillWay::Along) ==
          std::vector<CellEntry>{{{4, 2}, "0-11-2"}});
    CHECK(fillEntries(project, lines, {{0, 0}, {1, 2}}, FillWay::Down).empty()); // no place into heights
    CHECK(fillEntries(project, lines, {{0, 0}, {0, 2}}, FillWay::Along).empty());

    CHECK(blankEntries(project, lines, {{5, 0}, {6, 0}}) == std::vector<CellEntry>{{{5, 0}, ""}});
}
