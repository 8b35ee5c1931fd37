#include "core/tables/stock_table.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/csv_reading.hpp"
#include "tests/support/planked.hpp"

#include <map>

using namespace sheerlay;
using namespace sheerlay::test;

TEST_CASE("the stock's tables: pieces fill their milled strips, scarfs lie in their bays, boards add up") {
    const Planked boat = planked(projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    const auto stock = core::planStock(boat.project, boat.hull, boat.plan);
    REQUIRE(stock);
    const std::vector<double>& stations = boat.hull.stationX;
    for (const core::Units units : {core::Units::Millimetres, core::Units::Inches}) {
        const bool inches = units == core::Units::Inches;
        const std::string unit = inches ? " in" : " mm";
        const double one = inches ? core::mmPerInch : 1.0, half = inches ? 0.0051 * one : 0.051;

        const CsvTable pieces = readCsv(core::pieceTable(*stock, units));
        std::map<std::string, double> cut, left;
        std::map<std::string, int> count;
        for (std::size_t row = 1; row < pieces.rows.size(); ++row) {
            REQUIRE(pieces.rows[row].size() == pieces.rows[0].size());
            const std::string stick = pieces.cell(row, "milled strip");
            cut[stick] += pieces.number(row, "length to cut" + unit) * one + boat.project.stock->kerf;
            if (!pieces.cell(row, "left over" + unit).empty())
                left[stick] = pieces.number(row, "left over" + unit) * one;
            ++count[pieces.cell(row, "strip")];
        }
        const double length = stock->lots.front().milling.stripLength;
        for (const auto& [stick, used] : cut) {
            INFO(stick);
            REQUIRE(left.contains(stick));
            // each cut takes whole quarters of an inch where the kerf is less
            CHECK(used + left[stick] <= length + boat.project.stock->kerf + 4 * half);
        }
        for (const core::StockStrip& strip : stock->strips)
            CHECK(count[strip.strip] == static_cast<int>(strip.pieces.size()));

        const CsvTable scarfs = readCsv(core::scarfTable(boat.plan, *stock, units));
        std::size_t joints = 0;
        for (const core::StockStrip& strip : stock->strips)
            joints += strip.joints.size();
        CHECK(scarfs.rows.size() == joints + 1);
        for (std::size_t row = 1; row < scarfs.rows.size(); ++row) {
            const auto bay = static_cast<std::size_t>(scarfs.number(row, "mould bay"));
            const double x = scarfs.number(row, "x" + unit) * one, wide = stations[bay] - stations[bay - 1];
            CHECK(x >= stations[bay - 1] + wide / 3 - half);
            CHECK(x <= stations[bay] - wide / 3 + half);
            CHECK_THAT(scarfs.number(row, "scarf length" + unit) * one,
                       WithinAbs(8 * boat.project.strips.thickness, half));
        }

        const CsvTable boards = readCsv(core::boardTable(*stock, units));
        REQUIRE(boards.rows.size() == 2);
        CHECK(boards.number(1, "boards") * boards.number(1, "strips each") ==
              boards.number(1, "strips cut") + boards.number(1, "strips spare"));
        CHECK(boards.number(1, "strips cut") == static_cast<double>(cut.size()));
    }
}
