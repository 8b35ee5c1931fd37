#include "core/tables/strip_table.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/csv_reading.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <numbers>
#include <set>

using namespace sheerlay;
using namespace sheerlay::test;

TEST_CASE("the table of strips says what the plan says, in the laying order") {
    const Planked boat = planked(projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    for (const core::Units units : {core::Units::Millimetres, core::Units::Inches}) {
        const bool inches = units == core::Units::Inches;
        const std::string unit = inches ? " in" : " mm";
        const double one = inches ? core::mmPerInch : 1.0;
        const double half = inches ? 0.0051 * core::mmPerInch : 0.051; // of the last digit
        const CsvTable table = readCsv(core::stripTable(boat.plan, units));
        REQUIRE(table.rows.size() == boat.plan.strips.size() + 1);
        std::set<std::string> seen;
        for (std::size_t row = 1; row < table.rows.size(); ++row) {
            REQUIRE(table.rows[row].size() == table.rows[0].size());
            const std::string id = table.cell(row, "strip");
            seen.insert(id);
            const auto strip = std::find_if(boat.plan.strips.begin(),
                                            boat.plan.strips.end(),
                                            [&](const core::Strip& s) { return s.id == id; });
            REQUIRE(strip != boat.plan.strips.end());
            CHECK(table.number(row, "order") == strip->order);
            CHECK(table.number(row, "order") == static_cast<double>(row));
            CHECK(table.number(row, "row") == strip->row);
            CHECK_THAT(table.number(row, "length" + unit) * one, WithinAbs(strip->length, half));
            CHECK_THAT(table.number(row, "cut length" + unit) * one, WithinAbs(strip->cutLength, half));
            CHECK_THAT(table.number(row, "stern x" + unit) * one, WithinAbs(strip->ends[1].x, half));
            CHECK_THAT(table.number(row, "bow cut deg") * std::numbers::pi / 180.0,
                       WithinAbs(strip->ends[0].cut, 0.051 * std::numbers::pi / 180.0));
            CHECK((table.cell(row, "edge bend radius" + unit).empty() == !strip->edgeBend.minRadius));
        }
        CHECK(seen.size() == boat.plan.strips.size());
    }
}
