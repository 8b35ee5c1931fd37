#include "core/sheets/page_frame.hpp"
#include "core/sheets/piece_sheet.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/width_table.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("a piece in half a page says what its whole sheet says, and stays in its half") {
    const test::FakeBoat boat = test::makeFakeBoat();
    const SheetContext of{boat.project, boat.hull, boat.plan, Units::Millimetres};
    const Page page = pageOf(PageSize::A3);
    const Box room = roomOf(page);
    const double half = (room.bottom - room.top) / 2 - 4.0;
    std::size_t small = 0;
    for (const Piece& piece : piecesOf(boat.plan)) {
        INFO(piece.name());
        const auto items = smallPiece(of, page, piece, half);
        if (!items)
            continue;
        ++small;
        Sheet sheet = blankSheet(page, piece.name());
        sheet.items = *items;
        CHECK(test::overlapping(sheet) == "");
        for (const Item& item : sheet.items)
            CHECK(extentOf(item).bottom <= room.top + half + 0.5);
        std::string whole;
        for (const Sheet& one : pieceSheets(of, page, piece))
            whole += test::wordsOf(one);
        for (const char* told :
             {"bow end", "stern end", "Bow end", "Stern end", "Edge bend", "milled", "laid"})
            CHECK(test::timesIn(test::wordsOf(sheet), told) >=
                  std::min<std::size_t>(1, test::timesIn(whole, told)));
    }
    CHECK(small > 10);
    CHECK_FALSE(smallPiece(of, page, piecesOf(boat.plan).front(), 60.0)
                    .has_value()); // nothing is left out to make it fit
}

TEST_CASE("the shorter side of a woven row is told its own length") {
    Strip longer, shorter;
    longer.id = "S21";
    shorter.id = "P21";
    longer.length = shorter.length = 4000.0;
    longer.cutLength = 4120.0;
    shorter.cutLength = 4095.0;
    CHECK(
        cutSentence({&longer, &shorter}, Units::Millimetres) ==
        "to cut, 10 mm at each end to trim; about 4000 mm of it stays on the boat. P21 needs only 4095 mm.");
    CHECK(cutSentence({&shorter, &longer}, Units::Millimetres).find("P21 needs only") != std::string::npos);
    shorter.cutLength = 4118.0;
    CHECK(cutSentence({&longer, &shorter}, Units::Millimetres).find("needs") == std::string::npos);
    CHECK(cutSentence({&longer, nullptr}, Units::Millimetres).find("needs") == std::string::npos);
}

TEST_CASE("a table of widths tells both ends and every station between, once") {
    const test::FakeBoat boat = test::makeFakeBoat();
    const Strip& strip = boat.plan.strips.front();
    const std::vector<StationMark> marks = stationMarks(strip, boat.hull.stationX);
    std::vector<std::string> names;
    for (std::size_t i = 0; i < boat.hull.stationX.size(); ++i)
        names.push_back("station" + std::to_string(i));
    std::vector<Sheet> sheets{blankSheet(pageOf(PageSize::A4), "widths")};
    Flow flow(sheets, {{10.0, 10.0, 100.0, 280.0}}, [&] {
        sheets.push_back(blankSheet(pageOf(PageSize::A4), "widths"));
        return std::vector<Box>{{10.0, 10.0, 100.0, 280.0}};
    });
    addWidthTable(flow, {boat.project, strip, names, marks, Units::Millimetres}, {.height = 270.0});
    std::string words;
    for (const Sheet& sheet : sheets)
        words += test::wordsOf(sheet);
    CHECK(test::timesIn(words, "bow end") == 1);
    CHECK(test::timesIn(words, "stern end") == 1);
    CHECK_FALSE(marks.empty());
    for (const StationMark& mark : marks)
        CHECK(test::timesIn(words, names[mark.station] + " ") == 1);
}
