#include "core/stock/milling.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay::core;

namespace {

std::vector<std::vector<double>> rowsOf(const std::string& name) {
    std::ifstream file(std::string(SHEERLAY_REFERENCE) + "/" + name);
    REQUIRE(file.good());
    std::vector<std::vector<double>> rows;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || (line.front() < '0' || line.front() > '9'))
            continue;
        std::istringstream cells(line);
        rows.emplace_back();
        for (std::string cell; std::getline(cells, cell, ',');)
            rows.back().push_back(std::stod(cell));
    }
    return rows;
}

} // namespace

TEST_CASE("strips side by side as the worked example has them") {
    const auto rows = rowsOf("shop_strips_per_board.csv");
    REQUIRE(rows.size() == 1);
    for (const auto& row : rows)
        CHECK(stripsSideBySide(row[0] * mmPerInch, row[1] * mmPerInch, row[2] * mmPerInch) ==
              static_cast<int>(row[3]));
}

TEST_CASE("strips and the cuts between them fill the board and one more would not fit") {
    for (double width = 20.0; width < 300.0; width += 7.3)
        for (const double ripped : {4.0, 6.35, 6.86, 9.5})
            for (const double kerf : {0.0, 0.6, 2.4, 3.2}) {
                const int n = stripsSideBySide(width, ripped, kerf);
                CHECK(n * ripped + (n - 1) * kerf <= width + 1e-5);
                CHECK((n + 1) * ripped + n * kerf > width);
            }
    CHECK(stripsSideBySide(5.0, 6.35, 3.2) == 0);
    CHECK(stripsSideBySide(6.35, 6.35, 3.2) == 1);
}

TEST_CASE("board feet by definition") {
    const double inch = mmPerInch, foot = mmPerFoot;
    CHECK_THAT(boardFeet(inch, 12 * inch, foot), WithinAbs(1.0, 1e-12)); // 144 cubic inches
    CHECK_THAT(boardFeet(2 * inch, 6 * inch, 8 * foot), WithinAbs(8.0, 1e-12));
    // 1 board foot = 0.002360 m3, shop.md
    CHECK_THAT(1e9 / (inch * 12 * inch * foot) * 0.002360, WithinAbs(1.0, 2e-4));
    // length rounded down to a whole foot, thickness 1 in at least
    CHECK_THAT(talliedBoardFeet(0.75 * inch, 5.5 * inch, 12.9 * foot), WithinAbs(5.5, 1e-12));
    CHECK_THAT(talliedBoardFeet(1.25 * inch, 6 * inch, 8 * foot), WithinAbs(5.0, 1e-12));
}

TEST_CASE("a lot is milled to the strip, or told why not") {
    StripStock strip;
    strip.thickness = 0.25 * mmPerInch;
    strip.width = 0.75 * mmPerInch;
    Stock stock;
    stock.planing = 0.02 * mmPerInch;
    stock.kerf = 0.125 * mmPerInch;
    stock.jointing = 0.125 * mmPerInch;
    stock.endTrim = 3 * mmPerInch;
    BoardLot lot{"A",
                 "western-redcedar",
                 0.75 * mmPerInch,
                 5.625 * mmPerInch,
                 12 * mmPerFoot,
                 mmPerInch,
                 {},
                 {},
                 {},
                 0};
    const Milling m = mill(lot, stock, strip);
    CHECK(m.problem.empty());
    CHECK(m.strips() == 14); // 5 1/2 in once jointed: the worked example again
    CHECK_THAT(m.stripLength, WithinAbs(138 * mmPerInch, 1e-9));
    CHECK(m.pairs() == 7);
    REQUIRE(m.clear.size() == 1);
    CHECK_THAT(m.clear[0][1] - m.clear[0][0], WithinAbs(m.stripLength, 1e-9));
    // a knot in the trimmed end, one 4 ft from it, and two that leave no use between them
    lot.defects = {{40, 60}, {1200, 1300}, {2000, 2100}, {2150, 2300}};
    const double end = 12 * mmPerFoot - 3 * mmPerInch;
    CHECK(mill(lot, stock, strip).clear ==
          std::vector<std::array<double, 2>>{{3 * mmPerInch, 1200}, {1300, 2000}, {2300, end}});
    lot.defects = {{0, 12 * mmPerFoot}};
    CHECK(mill(lot, stock, strip).problem.find("no clear length") != std::string::npos);
    lot.defects.clear();
    lot.thickness = 1.625 * mmPerInch; // two widths and the cut between them
    CHECK(mill(lot, stock, strip).strips() == 28);
    lot.thickness = 0.7 * mmPerInch;
    CHECK(mill(lot, stock, strip).problem.find("thicker boards") != std::string::npos);
    lot.thickness = 0.75 * mmPerInch;
    lot.width = 0.3 * mmPerInch;
    CHECK(mill(lot, stock, strip).problem.find("wider boards") != std::string::npos);
    lot.width = 5.625 * mmPerInch;
    lot.length = 6 * mmPerInch;
    CHECK(mill(lot, stock, strip).problem.find("longer boards") != std::string::npos);
}
