#include "core/journal/planned_girth.hpp"
#include "core/journal/replan.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/revision.hpp"
#include "core/stock/stock_plan.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr int lastLaid = 12;

/// The tape after a row that lies 2 mm nearer the keel than planned.
RowReading roundAfter(int row, const test::Planked& boat) {
    RowReading reading;
    reading.row = row;
    for (const double x : boat.hull.stationX)
        if (const auto planned = plannedGirthLeft(boat.plan, boat.hull, row, x))
            reading.girthLeft.push_back({x - boat.hull.xShift, planned->left - 2.0, "", "", 0});
    return reading;
}

std::vector<Sheet> sheetsOf(const Project& project, const LoftedHull& hull, const Plan& plan) {
    const auto stock = planStock(project, hull, plan);
    REQUIRE(stock);
    return cutSheets(project, hull, plan, Units::Millimetres, PageSize::A4, &*stock);
}

} // namespace

TEST_CASE("after a new plan from the journal just the rows that are still to lay are printed") {
    test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    const SheetRecord first = recordOf(sheetsOf(boat.project, boat.hull, boat.plan), {});
    boat.project.journal.readings.push_back(roundAfter(lastLaid, boat));
    REQUIRE(boat.project.journal.readings.front().girthLeft.size() > 5);
    const auto anew = plankAsLaid(boat.project, boat.hull);
    REQUIRE(anew);
    REQUIRE(anew->laid);
    const std::vector<Sheet> sheets = sheetsOf(boat.project, boat.hull, anew->plan);
    const DoneSheets done = doneSheets(sheets, boat.project.journal, anew->plan);
    CHECK(std::ranges::count(done, true) == lastLaid);
    // the boards are cut anew: without what is done, sheets of laid rows would come again
    CHECK(changedIn(recordOf(sheets, first)).size() > changedIn(recordOf(sheets, first, done)).size());

    const SheetRecord second = recordOf(sheets, first, done);
    const std::vector<Sheet> printed = withRevisions(sheets, second, PageSize::A4);
    const std::vector<std::size_t> changed = changedIn(second);
    std::set<std::string> names;
    for (std::size_t i = 0; i < printed.size(); ++i) {
        const bool among = std::ranges::find(changed, i) != changed.end();
        INFO(printed[i].title);
        CHECK((test::wordsOf(printed[i]).find("revision 2") != std::string::npos) == among);
        if (among)
            names.insert(printed[i].title);
    }
    for (const Strip& strip : anew->plan.strips) {
        INFO(strip.id);
        const bool printedAnew = std::ranges::any_of(
            names, [&](const std::string& name) { return name.find(strip.id) != std::string::npos; });
        CHECK(printedAnew == (strip.row > lastLaid || strip.row < 0));
    }
}
