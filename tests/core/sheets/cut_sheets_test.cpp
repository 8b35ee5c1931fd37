#include "core/sheets/cover.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/words.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/sheet_reading.hpp"

#include <map>

using namespace sheerlay;
using namespace sheerlay::core;
using test::lineOf;
using test::textsOf;
using test::wordsOf;

namespace {

// Largest text of a sheet that is a strip's: its name.
Text largest(const Sheet& sheet) {
    Text best;
    best.size = 0.0;
    for (const Text& text : textsOf(sheet))
        if (text.size > best.size)
            best = text;
    return best;
}

std::string markNumber(int i) {
    return std::string("Mark number ").append(std::to_string(i)).append(":");
}

bool nameIncludes(const Sheet& sheet, const std::string& id) {
    const std::string name = lineOf(largest(sheet)); // "S07 P07" or "C21"
    return name == id || name.starts_with(id + ' ') || name.ends_with(' ' + id);
}

bool has(const std::string& words, const std::string& wanted) {
    return words.find(wanted) != std::string::npos;
}

} // namespace

TEST_CASE("every strip of a plan has a sheet with its name, its length rounded up, and boxes to tick") {
    const test::FakeBoat boat = test::makeFakeBoat();
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const std::vector<Sheet> sheets = cutSheets(boat.project, boat.hull, boat.plan, units, PageSize::A4);
        std::map<std::string, const Sheet*> byStrip;
        for (const Sheet& sheet : sheets)
            for (const Strip& strip : boat.plan.strips)
                if (nameIncludes(sheet, strip.id))
                    byStrip.try_emplace(strip.id, &sheet);
        for (const Strip& strip : boat.plan.strips) {
            REQUIRE(byStrip.contains(strip.id));
            const Sheet& sheet = *byStrip[strip.id];
            bool length = false;
            int ticked = 0;
            for (const Text& text : textsOf(sheet)) {
                const std::string line = lineOf(text);
                ticked += line == "milled" || line == "dry fitted" || line == "laid" ? 1 : 0;
                if (text.size < sizeForCapitals(typeSize::length) - 1e-9 || line == lineOf(largest(sheet)))
                    continue;
                length = true;
                const auto read = parseLength(line, units);
                REQUIRE(read);
                CHECK(read->millimetres >= strip.cutLength - 1e-6);
                CHECK(read->millimetres < strip.cutLength + 6.4);
            }
            CHECK(length);
            CHECK(ticked == (strip.side == Side::Centre ? 3 : 6));
        }
    }
}

TEST_CASE("nothing leaves the page or covers another text, whatever the paper and units") {
    const test::FakeBoat boat = test::makeFakeBoat();
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3, PageSize::Tabloid})
        for (const Units units : {Units::Millimetres, Units::Inches}) {
            const Page page = pageOf(size);
            for (const Sheet& sheet : cutSheets(boat.project, boat.hull, boat.plan, units, size)) {
                INFO(sheet.title << " on " << page.width << " mm");
                CHECK(sheet.width == page.width);
                CHECK(sheet.height == page.height);
                CHECK(test::outside(sheet, 8.0) == "");
                CHECK(test::overlapping(sheet) == "");
            }
        }
}

TEST_CASE("a strip's name is at least 20 mm tall, that of a filler too") {
    const test::FakeBoat boat = test::makeFakeBoat(); // its fillers are called S-01.1 P-01.1
    for (const PageSize size : {PageSize::A4, PageSize::Letter})
        for (const Sheet& sheet : cutSheets(boat.project, boat.hull, boat.plan, Units::Inches, size))
            for (const Strip& strip : boat.plan.strips)
                if (nameIncludes(sheet, strip.id)) {
                    INFO(strip.id);
                    CHECK(largest(sheet).size >= sizeForCapitals(20.0) * pageOf(size).scale);
                }
}

TEST_CASE("station marks of a strip's table grow along the strip and match its x") {
    const test::FakeBoat boat = test::makeFakeBoat();
    const std::vector<Sheet> sheets =
        cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4);
    const Strip& strip = boat.plan.strips.front();
    const auto sheet = std::find_if(
        sheets.begin(), sheets.end(), [&](const Sheet& s) { return lineOf(largest(s)) == "S01 P01"; });
    REQUIRE(sheet != sheets.end());
    std::map<double, std::map<double, std::string>> rows; // by height, then by place
    for (const Text& text : textsOf(*sheet))
        if (text.size == typeSize::table)
            rows[text.at.y()][inkBox(text).left] = lineOf(text);
    double before = -1.0;
    int stations = 0;
    for (const auto& [y, cells] : rows) {
        if (cells.size() != 3)
            continue;
        const double along = std::stod(std::next(cells.begin())->second);
        CHECK(along > before);
        before = along;
        for (std::size_t i = 0; i < boat.hull.stationX.size(); ++i)
            if (cells.begin()->second == boat.project.hull.stations[i].printedX) {
                ++stations;
                CHECK(std::abs(along - (boat.hull.stationX[i] - strip.samples.front().x)) <= 2.5 + 1e-6);
            }
    }
    CHECK(stations == 15); // the first and last of 17 lie beyond its ends
    CHECK(before == Approx(strip.length).margin(2.5));
}

TEST_CASE("a sheet tells its strip's findings, neighbours, order and ends") {
    const test::FakeBoat boat = test::makeFakeBoat();
    const std::vector<Sheet> sheets =
        cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4);
    std::string words;
    for (const Sheet& sheet : sheets)
        if (has(wordsOf(sheet), "S19 P19"))
            words += wordsOf(sheet);
    CHECK(has(words, "Caution: S19 needs two people"));
    CHECK(has(words, "toward the sheer S18 and P18, toward the keel S20 and P20."));
    CHECK(has(words, "laid as 37 and 38, starboard first"));
    CHECK(has(words, "Edge bend: hard"));
    CHECK(has(words, "toward the keel"));
    CHECK(has(words, "Row 19"));
    std::string first = wordsOf(sheets.front());
    CHECK(has(first, "Reed Warbler"));
    CHECK(has(first, "The loft lies 1.2 mm outside"));
    CHECK(has(first, "closing plank C21"));
    CHECK(first.find("Caution:") < first.find("Note:"));
}

TEST_CASE("the cover says once how far the table's rounding moves the figures, where that is known") {
    test::FakeBoat boat = test::makeFakeBoat();
    const auto told = [&] {
        std::vector<std::string> list;
        for (const Sheet& sheet :
             cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4))
            if (const std::string words = wordsOf(sheet); has(words, "+/-"))
                list.push_back(words);
        return list;
    };
    CHECK(told().empty());
    PlanUncertainty u;
    u.edgeBend = 0.03e-3;
    u.lengthTypical = 1.5;
    u.length = 4;
    u.halfGirth = 0.5;
    boat.plan.uncertainty = u;
    REQUIRE(told().size() == 1);
    CHECK(
        has(told().front(), "Rounding of the table moves edge bend by +/- 0.06 per metre (30 mm over 2 m)"));
    CHECK(has(told().front(),
              "strip lengths by +/- 3 mm (the most pointed by +/- 8 mm) and half girth by +/- 1 mm."));
}

TEST_CASE("a row whose sides differ gets a sheet for each side") {
    test::FakeBoat boat = test::makeFakeBoat(3);
    for (Strip& strip : boat.plan.strips)
        if (strip.id == "P02")
            strip.cutLength += 40.0;
    int alone = 0, together = 0;
    for (const Piece& piece : piecesOf(boat.plan)) {
        alone += piece.name() == "S02" || piece.name() == "P02" ? 1 : 0;
        together += piece.name() == "S03 P03" ? 1 : 0;
    }
    CHECK(alone == 2);
    CHECK(together == 1);
}

TEST_CASE("of a bottom run over port's last strip has a sheet of its own that says it is laid whole") {
    test::FakeBoat boat = test::makeFakeBoat(3);
    for (Strip& strip : boat.plan.strips)
        if (strip.id == "S03")
            strip.kind = StripKind::Shutter;
        else if (strip.id == "P03") {
            strip.kind = StripKind::Tapered;
            strip.planedBack = true;
        }
    std::map<std::string, std::string> kinds;
    for (const Piece& piece : piecesOf(boat.plan))
        kinds[piece.name()] = kindWords(piece);
    CHECK(kinds["S03"] == "shutter, starboard");
    CHECK(kinds["P03"] == "laid whole, planed back to the centreline, port");
}

TEST_CASE("a woven row keeps one sheet for both sides, cut to what the passing side needs") {
    test::FakeBoat boat = test::makeFakeBoat(3);
    for (Strip& strip : boat.plan.strips)
        if (strip.row == 2)
            for (StripEnd& end : strip.ends) {
                end.weave = strip.side == Side::Port ? Weave::Passes : Weave::Fitted;
                end.runOuter = strip.side == Side::Port ? 21.0 : 4.0;
                strip.cutLength += end.runOuter;
            }
    const Strip* passes = nullptr;
    for (const Strip& strip : boat.plan.strips)
        if (strip.id == "P02")
            passes = &strip;
    REQUIRE(passes != nullptr);
    int together = 0;
    for (const Piece& piece : piecesOf(boat.plan))
        if (piece.name() == "S02 P02") {
            ++together;
            CHECK(piece.cutLength() == passes->cutLength);
            CHECK(piece.cutLength() > piece.strip->cutLength);
        }
    CHECK(together == 1);
}

TEST_CASE("the ends are drawn full size where they fit and the bar is as long as it says") {
    const test::FakeBoat boat = test::makeFakeBoat();
    for (const Units units : {Units::Millimetres, Units::Inches})
        for (const PageSize size : {PageSize::A4, PageSize::A3}) {
            const std::vector<Sheet> sheets = cutSheets(boat.project, boat.hull, boat.plan, units, size);
            const double wanted = units == Units::Millimetres ? 100.0 : 101.6;
            for (const Sheet& sheet : sheets) {
                bool bar = false;
                for (const Item& item : sheet.items)
                    if (const auto* path = std::get_if<Path>(&item);
                        path != nullptr && path->points.size() == 2)
                        bar = bar || std::abs((path->points[1] - path->points[0]).norm() - wanted) < 1e-9;
                CHECK(bar);
            }
            // S01: 15.875 mm wide, so a full-size face has two edges that far apart
            const auto sheet = std::find_if(
                sheets.begin(), sheets.end(), [](const Sheet& s) { return lineOf(largest(s)) == "S01 P01"; });
            REQUIRE(sheet != sheets.end());
            CHECK(has(wordsOf(*sheet), "Bow end, full size"));
            bool face = false;
            for (const Item& item : sheet->items)
                if (const auto* path = std::get_if<Path>(&item);
                    path != nullptr && !path->closed && path->points.size() > 3) {
                    const Box box = extentOf(item);
                    face = face || std::abs(box.bottom - box.top - lineWidth(path->line) - 15.875) < 0.05;
                }
            CHECK(face);
        }
}

TEST_CASE("names too long for the page, no findings, no stations: still a tidy set") {
    test::FakeBoat boat = test::makeFakeBoat(4);
    boat.project.name = std::string(140, 'M') + " of the long lake";
    boat.plan.findings.clear();
    boat.hull.findings.clear();
    boat.hull.stationX.clear();
    boat.project.hull.stations.clear();
    boat.project.strips.wood = "white-spruce";
    const std::vector<Sheet> sheets =
        cutSheets(boat.project, boat.hull, boat.plan, Units::Inches, PageSize::Letter);
    for (const Sheet& sheet : sheets) {
        CHECK(test::outside(sheet, 8.0) == "");
        CHECK(test::overlapping(sheet) == "");
        CHECK_FALSE(has(wordsOf(sheet), "edcedar"));
    }
    CHECK(has(wordsOf(sheets.front()), "Nothing that asks for care"));
}

TEST_CASE("a hundred findings run on over further pages without losing one") {
    test::FakeBoat boat = test::makeFakeBoat(2);
    boat.plan.findings.clear();
    for (int i = 0; i < 100; ++i)
        boat.plan.findings.push_back({Level::Note,
                                      "made-up",
                                      std::nullopt,
                                      std::nullopt,
                                      markNumber(i) + " look at the batten there before you go on."});
    std::string words;
    for (const Sheet& sheet :
         cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4)) {
        CHECK(test::outside(sheet, 8.0) == "");
        CHECK(test::overlapping(sheet) == "");
        words += wordsOf(sheet);
    }
    for (int i = 0; i < 100; ++i)
        CHECK(has(words, markNumber(i)));
}

TEST_CASE("findings and rows that would have a last page of a line or two are set closer") {
    test::FakeBoat boat = test::makeFakeBoat(37); // 79 pieces, two columns of 37 in full pitch on Letter
    const std::vector<Sheet> letter =
        coverSheets(boat.project, boat.hull, boat.plan, Units::Inches, PageSize::Letter);
    CHECK(letter.size() == 2);
    std::vector<double> types; // of the notes on covers of more and more findings, while one page does
    for (int more = 0; more < 40; ++more) {
        boat.plan.findings.push_back(
            {Level::Note, "some-code", std::nullopt, std::nullopt, markNumber(more)});
        const std::vector<Sheet> cover =
            coverSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4);
        for (const Text& text : textsOf(cover.front()))
            if (has(lineOf(text), markNumber(0)))
                types.push_back(text.size);
        if (cover[1].title.find("continued") != std::string::npos)
            break;
        CHECK(types.back() > 0.88 * typeSize::note - 1e-9);
    }
    REQUIRE(types.size() > 4);
    CHECK_THAT(types.front(), WithinAbs(typeSize::note, 1e-9));
    CHECK(types[types.size() - 2] < typeSize::note - 0.1);
    CHECK_THAT(types.back(), WithinAbs(typeSize::note, 1e-9)); // too many for one page: full type again
}

TEST_CASE("small rows share a sheet: each whole, in its order, its name read across a shop, none lost") {
    test::FakeBoat boat = test::makeFakeBoat();
    const auto rowsOf = [](const std::vector<Sheet>& sheets) {
        std::vector<std::string> rows;
        for (const Sheet& sheet : sheets)
            for (const Text& text : textsOf(sheet))
                if (text.weight == Weight::Bold && capHeight * text.size >= 19.99)
                    rows.push_back(lineOf(text));
        return rows;
    };
    std::size_t shared = 0;
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3, PageSize::Tabloid}) {
        boat.project.paper.severalRows = false;
        const std::vector<Sheet> one =
            cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, size);
        boat.project.paper.severalRows = true;
        const std::vector<Sheet> several =
            cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, size);
        CHECK(several.size() <= one.size());
        const std::size_t before = shared;
        CHECK(rowsOf(several) == rowsOf(one));
        for (const Sheet& sheet : several) {
            INFO(sheet.title);
            CHECK(test::outside(sheet, 8.0) == "");
            CHECK(test::overlapping(sheet) == "");
            const std::vector<std::string> rows = rowsOf({sheet});
            if (rows.size() < 2)
                continue;
            ++shared;
            for (const char* told : {"Row ", "to cut, ", "Station", "Bow end", "Stern end", "Edge bend"})
                CHECK(test::timesIn(wordsOf(sheet), told) >= rows.size());
        }
        CHECK(rowsAlone(boat.project, boat.plan, several, size).has_value() == (shared == before));
    }
    CHECK(shared > 4);
}

TEST_CASE("where rows were to share sheets and none can, that is told") {
    test::FakeBoat boat = test::makeFakeBoat(4);
    std::erase_if(boat.plan.strips, [](const Strip& strip) { return strip.row < 1 || strip.row > 4; });
    const auto told = [&](PageSize size) {
        return rowsAlone(boat.project,
                         boat.plan,
                         cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, size),
                         size);
    };
    CHECK_FALSE(told(PageSize::A4)); // nobody asked
    boat.project.paper.severalRows = true;
    const auto alone = told(PageSize::A4); // rows as long as the boat
    REQUIRE(alone);
    CHECK(alone->code == "rows-alone");
    CHECK(alone->level == Level::Note);
    CHECK(alone->text.find("A3 and Tabloid") != std::string::npos);
    CHECK_FALSE(told(PageSize::A3));
    boat.plan.strips.resize(2); // one row alone can't share
    CHECK_FALSE(told(PageSize::A4));
}
