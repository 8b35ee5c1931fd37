#include "core/sheets/page_frame.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;
using test::wordsOf;

namespace {

const test::Planked& boat() {
    static const test::Planked made =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    return made;
}

const StockPlan& stockPlan() {
    static const StockPlan made = *planStock(boat().project, boat().hull, boat().plan);
    return made;
}

std::string wordsOf(const std::vector<Sheet>& sheets) {
    std::string words;
    for (const Sheet& sheet : sheets)
        words += test::wordsOf(sheet);
    return words;
}

bool has(const std::string& words, const std::string& wanted) {
    return words.find(wanted) != std::string::npos;
}

} // namespace

TEST_CASE("the stock's pages keep their margins and let no words cover others, on any paper") {
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3, PageSize::Tabloid})
        for (const Units units : {Units::Millimetres, Units::Inches})
            for (const Sheet& sheet :
                 stockSheets(boat().project, boat().hull, boat().plan, stockPlan(), units, size)) {
                INFO(sheet.title);
                CHECK(test::outside(sheet, 8.0) == "");
                CHECK(test::overlapping(sheet) == "");
            }
}

TEST_CASE("what to buy fits one page, with many lots too, and its sums are those of its lines") {
    StockPlan stock = stockPlan();
    LotUse use = stock.lots.front();
    use.cost = 31.5;
    use.lot.price = 31.5 / use.boards;
    use.boardFeet = 20.0;
    stock.lots.assign(24, use);
    for (std::size_t i = 0; i < stock.lots.size(); ++i)
        stock.lots[i].lot.name = std::string("L") + std::to_string(i);
    const Sheet sheet = boardSheet(boat().project, stock, Units::Inches, PageSize::Letter);
    CHECK(test::outside(sheet, 8.0) == "");
    CHECK(test::overlapping(sheet) == "");
    const std::string words = wordsOf(sheet);
    for (const LotUse& lot : stock.lots)
        CHECK(has(words, " " + lot.lot.name + " "));
    CHECK(has(words, "756.00")); // 24 x 31.50
    CHECK(has(words, " 480 "));  // 24 x 20
    CHECK(has(words, std::to_string(24 * use.boards) + " all"));
    CHECK(has(words, "Bare planking weighs about"));
}

TEST_CASE("every piece is on the milling sheet, on the scarf sheet and on a label of its own") {
    const StockPlan& stock = stockPlan();
    const std::string milling =
        wordsOf(millingSheets(boat().project, stock, Units::Millimetres, PageSize::A4));
    const std::string scarfs = wordsOf(
        scarfSheets(boat().project, boat().hull, boat().plan, stock, Units::Millimetres, PageSize::A4));
    const std::vector<Sheet> labels = labelSheets(boat().project, stock, Units::Millimetres, PageSize::A4);
    std::size_t pieces = 0, labelled = 0;
    for (const StockStrip& strip : stock.strips)
        for (const StockPiece& piece : strip.pieces) {
            ++pieces;
            const std::string name =
                strip.strip + (strip.pieces.size() > 1 ? " (" + std::to_string(piece.number) + ")" : "");
            INFO(name);
            CHECK(has(milling, name + " " + pieceText(piece.toCut, Units::Millimetres)));
            CHECK(has(milling, piece.stick + " "));
            CHECK(has(scarfs, piece.stick + " " + pieceText(piece.toCut, Units::Millimetres)));
            for (const Sheet& sheet : labels) {
                const std::string words = wordsOf(sheet);
                labelled += has(words,
                                strip.strip + " " +
                                    (strip.pieces.size() > 1 ? std::to_string(piece.number) + " of " +
                                                                   std::to_string(strip.pieces.size())
                                                             : std::string("whole")) +
                                    " " + pieceText(piece.toCut, Units::Millimetres) + " from " + piece.stick)
                                ? 1
                                : 0;
            }
        }
    CHECK(pieces > boat().plan.strips.size());
    CHECK(labelled == pieces);
}

TEST_CASE("the cuts told for a milled strip go into its length with a kerf beside each") {
    const double kerf = boat().project.stock->kerf;
    for (const Units units : {Units::Millimetres, Units::Inches})
        for (const Stick& stick : stockPlan().sticks) {
            double told = 0.0;
            for (const Stick::Part& part : stick.parts) {
                const auto read = parseLength(pieceText(part.toCut, units), units);
                REQUIRE(read);
                CHECK(read->millimetres >= part.toCut - 1e-6);
                told += read->millimetres + kerf;
            }
            INFO(stick.name);
            // millimetres are told rounded up; the last one may come out of what is trimmed off the end
            CHECK(told - kerf <=
                  stockPlan().lots[stick.lot].milling.stripLength + (units == Units::Inches ? 1e-6 : 1.0));
        }
}

TEST_CASE("ten strips with bead and cove measure ten covers and a bead") {
    StripStock strip;
    strip.width = 0.75 * mmPerInch;
    strip.coverWidth = 0.625 * mmPerInch;
    const auto rows = coverWidthTest(strip, Units::Inches);
    REQUIRE(rows.size() == 7);
    CHECK(rows[3][0] == Approx(6.375 * mmPerInch));
    CHECK(rows[3][1] == Approx(0.625 * mmPerInch));
    CHECK(rows[4][0] == Approx(6.4375 * mmPerInch));              // a sixteenth more over ten
    CHECK(rows[4][1] == Approx((6.4375 - 0.75) / 9 * mmPerInch)); // the first covers its whole width
    // square-edged strips have no bead to test
    Project square = boat().project;
    square.strips.coverWidth = square.strips.width;
    CHECK_FALSE(
        has(wordsOf(millingSheets(square, stockPlan(), Units::Inches, PageSize::Letter)), "Ten strips"));
}
