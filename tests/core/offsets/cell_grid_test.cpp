#include "core/offsets/cell_grid.hpp"
#include "tests/support/cut_table.hpp"

using namespace sheerlay::core;
using sheerlay::test::cut;

namespace {

std::string refused(const std::string& text) {
    const auto grid = splitCells(text, "trial.csv");
    REQUIRE_FALSE(grid.has_value());
    return toText(grid.error());
}

} // namespace

TEST_CASE("the same table is cut alike with tabs, semicolons, commas and blanks between its cells") {
    const std::string table = "Station|0|1|2\nSheer height|12 1/2|11|10.5\nWL 4|0|3/4|7\n";
    const std::vector<std::pair<std::string, Separator>> marks{{"\t", Separator::Tab},
                                                               {";", Separator::Semicolon},
                                                               {",", Separator::Comma},
                                                               {"   ", Separator::Spaces}};
    for (const auto& [mark, separator] : marks) {
        std::string text;
        for (const char c : table)
            text += c == '|' ? mark : std::string(1, c);
        const CellGrid grid = cut(text);
        CHECK(grid.separator == separator);
        REQUIRE(grid.rows.size() == 3);
        CHECK(grid.columns == 4);
        CHECK(grid.at(1, 0) == "Sheer height");
        CHECK(grid.at(1, 1) == "12 1/2");
        CHECK(grid.at(2, 3) == "7");
        CHECK(grid.at(2, 4).empty());
        CHECK(grid.rows[2].line == 3);
    }
}

TEST_CASE("decimal commas do not cut a table that has blanks between its cells") {
    const CellGrid grid = cut("Station   0   1   2\nSheer   12,5   13,0   14,5\nKeel   1,5   0,0   1,5\n");
    CHECK(grid.separator == Separator::Spaces);
    CHECK(grid.at(1, 2) == "13,0");
}

TEST_CASE("quotes hold separators, line ends and quotes; a lone quote is a ditto mark") {
    const CellGrid grid = cut("\"Offsets, in \"\"eighths\"\"\",x,y\n\"two\nlines\",1,2\n\",3,4\n");
    CHECK(grid.at(0, 0) == "Offsets, in \"eighths\"");
    CHECK(grid.at(1, 0) == "two lines");
    CHECK(grid.rows[2].line == 4); // counted in the file
    CHECK(grid.at(2, 0) == "\"");
    CHECK(cut("a,15 3/4\",b\nc,d,e\n").at(0, 1) == "15 3/4\"");
}

TEST_CASE("comments, empty rows, byte order marks and Latin-1 are no hindrance") {
    const CellGrid grid = cut("\xEF\xBB\xBF# mine\r\nst;0;1\r\n;;\r\nh\xF6he;1\xBD;2\r\n");
    REQUIRE(grid.rows.size() == 2);
    CHECK(grid.at(0, 0) == "st");
    CHECK(grid.at(1, 0) == "höhe");
    CHECK(grid.at(1, 1) == "1½");
    CHECK(grid.rows[1].line == 4);
}

TEST_CASE("what is no table is refused with what would do") {
    CHECK(refused("PK\x03\x04 and more").find("CSV") != std::string::npos);
    CHECK(refused(std::string("a,b,c\n\0,1,2", 11)).find("no text") != std::string::npos);
    CHECK(refused("Dear builder, here is a letter.\nIt has no table.\n").find("no table") !=
          std::string::npos);
    CHECK(refused("").find("no table") != std::string::npos);
    CHECK(refused("a,b,c\n\"d,e,f\n1,2,3\n").find("trial.csv:2: ") != std::string::npos);
    std::string wide = "a";
    for (int i = 0; i < 600; ++i)
        wide += ",1";
    CHECK(refused(wide).find("columns") != std::string::npos);
}
