#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/revision.hpp"
#include "core/words/language.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

std::vector<Sheet> sheetsOf(const test::FakeBoat& boat) {
    return cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4);
}

bool marked(const Sheet& sheet, const std::string& words) {
    return test::wordsOf(sheet).find(words) != std::string::npos;
}

} // namespace

TEST_CASE("after a new plan only what changed is printed, with a mark, and the mark stays") {
    test::FakeBoat boat = test::makeFakeBoat();
    const SheetRecord first = recordOf(sheetsOf(boat), {});
    CHECK(first.revision == 1);
    CHECK(changedIn(first).empty()); // the first time all of them are printed
    const SheetRecord again = recordOf(sheetsOf(boat), recordFrom(toText(first)));
    CHECK(again.revision == 1);
    CHECK(toText(again) == toText(first));

    for (Strip& strip : boat.plan.strips)
        if (strip.row == 7) {
            strip.cutLength += 40.0;
            strip.length += 40.0;
        }
    const std::vector<Sheet> sheets = sheetsOf(boat);
    const SheetRecord second = recordOf(sheets, recordFrom(toText(first)));
    CHECK(second.revision == 2);
    const std::vector<std::size_t> changed = changedIn(second);
    const std::vector<Sheet> printed = withRevisions(sheets, second, PageSize::A4);
    bool row7 = false;
    for (std::size_t i = 0; i < printed.size(); ++i) {
        const bool among = std::find(changed.begin(), changed.end(), i) != changed.end();
        INFO(printed[i].title);
        CHECK(marked(printed[i], "revision 2") == among);
        CHECK(test::overlapping(printed[i]) == "");
        CHECK(test::outside(printed[i], 8.0) == "");
        row7 = row7 || (among && printed[i].title == "S07 P07");
        // strips that stayed as they were keep their sheets; the cover with its lengths is another one
        if (printed[i].title == "S05 P05" || printed[i].title == "S09 P09")
            CHECK_FALSE(among);
    }
    CHECK(row7);
    CHECK(changed.size() < sheets.size() / 2);

    const SheetRecord third = recordOf(sheets, recordFrom(toText(second)));
    CHECK(third.revision == 2);
    CHECK(changedIn(third) == changed);

    boat.plan.strips.pop_back(); // a sheet gone is a revision too
    const std::vector<Sheet> fewer = sheetsOf(boat);
    const SheetRecord fourth = recordOf(fewer, third);
    CHECK(fourth.revision == 3);
    for (const Sheet& sheet : withRevisions(fewer, fourth, PageSize::A4))
        if (sheet.title == "S07 P07")
            CHECK(marked(sheet, "revision 2"));
    CHECK_THROWS_AS(withRevisions(fewer, third, PageSize::A4), std::invalid_argument);
}

TEST_CASE("sheets of nothing but laid strips stay as they were recorded") {
    test::FakeBoat boat = test::makeFakeBoat();
    const std::vector<Sheet> sheets = sheetsOf(boat);
    const SheetRecord first = recordOf(sheets, {});
    Journal journal;
    journal.readings.emplace_back().row = 3;
    journal.laid.push_back({"S05", "", "", 0});
    journal.laid.push_back({"P05", "", "", 0});
    journal.laid.push_back({"S06", "", "", 0}); // its image is still to lay
    const DoneSheets done = doneSheets(sheets, journal, boat.plan);
    REQUIRE(done.size() == sheets.size());
    std::vector<std::string> kept;
    for (std::size_t i = 0; i < sheets.size(); ++i)
        if (done[i])
            kept.push_back(sheets[i].title);
    CHECK(kept == std::vector<std::string>{"S01 P01", "S02 P02", "S03 P03", "S05 P05"});

    std::vector<Sheet> anew = sheets;
    for (Sheet& sheet : anew)
        sheet.items.emplace_back(makeText({30.0, 30.0}, "another board"));
    const SheetRecord second = recordOf(anew, first, done);
    const std::vector<std::size_t> changed = changedIn(second);
    for (std::size_t i = 0; i < anew.size(); ++i)
        CHECK((std::ranges::find(changed, i) == changed.end()) == done[i]);
    // what is laid and was never printed is printed
    CHECK(changedIn(recordOf(anew, recordOf({sheets.front()}, {}), done)).size() == anew.size());
    CHECK_THROWS_AS(recordOf(anew, first, {true}), std::invalid_argument);
}

TEST_CASE("a lost record is told, in the paper's language too") {
    const Finding lost = recordLost("record.txt");
    CHECK(lost.code == "print-record-lost");
    CHECK(lost.level == Level::Caution);
    CHECK(lost.text.find("record.txt") != std::string::npos);
    const Speaking german(Language::German);
    CHECK(recordLost("record.txt").text.find("Ausgabe") != std::string::npos);
}

TEST_CASE("a text that is no record reads as none") {
    for (const char* text : {"",
                             "anything\n",
                             "sheerlay-sheets 1 revision 0\n",
                             "sheerlay-sheets 1 revision x\n",
                             "sheerlay-sheets 1 revision 2\nonlyoneword\n",
                             "sheerlay-sheets 1 revision 2\n0123 3 S01\n"})
        CHECK(recordFrom(text).revision == 0);
}

TEST_CASE("of sheets that rows share only those with a changed row are printed anew") {
    test::FakeBoat boat = test::makeFakeBoat();
    boat.project.paper.severalRows = true;
    const auto shared = [&] {
        return cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A3);
    };
    const SheetRecord first = recordOf(shared(), {});
    for (Strip& strip : boat.plan.strips)
        if (strip.row == 7)
            strip.cutLength += 40.0;
    const std::vector<Sheet> sheets = shared();
    const SheetRecord second = recordOf(sheets, first);
    const std::vector<Sheet> printed = withRevisions(sheets, second, PageSize::A3);
    std::size_t rows = 0;
    for (const std::size_t i : changedIn(second)) {
        CHECK(marked(printed[i], "revision 2"));
        CHECK(test::overlapping(printed[i]) == "");
        if (printed[i].title.find("S07 P07") != std::string::npos)
            rows = test::timesIn(printed[i].title, ", ") + 1;
    }
    CHECK(rows > 1); // the changed row's sheet holds others, too
    CHECK(changedIn(second).size() < sheets.size() / 2);
}
