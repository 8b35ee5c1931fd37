#include "core/project/ten_strips.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace sheerlay::core {

namespace {

bool beaded(const StripStock& strip) {
    return strip.width - strip.coverWidth > 0.05;
}

/// A dimension to set a machine to: hundredths of a millimetre, or thousandths of an inch beside the nearest
/// sixty-fourth.
std::string setting(double millimetres, Units units) {
    return stockText(millimetres, units);
}

/// "a", "b", … along the board.
std::string clearName(std::size_t clear) {
    return std::string(1, static_cast<char>('a' + static_cast<char>(clear % 26)));
}

/// How boards with defects are cut, and what their clear lengths are called in the list of pieces.
std::string clearText(const LotUse& use, Units units) {
    std::string defects, lengths;
    for (const auto& [from, to] : use.lot.defects)
        defects +=
            (defects.empty() ? "" : ", ") + say("{} to {}", pieceText(from, units), pieceText(to, units));
    for (std::size_t c = 0; c < use.milling.clear.size(); ++c)
        lengths += (c == 0 ? "" : ", ") + say("{} from {} to {}",
                                              clearName(c),
                                              pieceText(use.milling.clear[c][0], units),
                                              pieceText(std::floor(use.milling.clear[c][1]), units));
    return say("Every board has defects at {} from its first end; mark that end on every strip before it is "
               "ripped. The clear lengths between them are {}; pieces are cut from the length named before "
               "them.",
               defects,
               lengths);
}

std::vector<std::string> sequence(const Project& project, const LotUse& use, Units units) {
    const Stock& stock = *project.stock;
    const StripStock& strip = project.strips;
    const Milling& m = use.milling;
    std::vector<std::string> texts;
    texts.push_back(stock.surfacing > 0.0
                        ? say("Plane the boards to {}.", setting(m.thickness, units))
                        : say("The boards come planed; check that they are {} thick everywhere.",
                              setting(m.thickness, units)));
    texts.push_back(say("Joint one edge straight. {} of the width is left then.", setting(m.width, units)));
    std::string rip = say("Rip strips {} thick with the jointed edge to the fence, {} side by side, the saw "
                          "taking {}; joint the edge again when it wanders.",
                          setting(m.ripped, units),
                          m.sideBySide,
                          setting(stock.kerf, units));
    if (m.layers > 1)
        rip += " " + say("First resaw the board into {} layers of at least {}.",
                         m.layers,
                         setting(strip.width, units));
    texts.push_back(rip);
    if (m.thickness - m.layers * strip.width > 0.1)
        texts.push_back(say("Bring the strips to {} wide.", setting(strip.width, units)));
    if (stock.planing > 0.0)
        texts.push_back(say("Plane both faces of the strips, down to {}.", setting(strip.thickness, units)));
    texts.push_back(
        say("Number each strip as it comes off the saw, {}1-01 at the jointed edge of board 1, and "
            "keep those of a board together: their colours match.",
            use.lot.name));
    if (stock.sides == JointSides::BookMatched)
        texts.push_back(
            say("Strips 1 and 2, 3 and 4 and so on lay side by side on the board: the first goes to "
                "starboard, the second to port, and the faces the saw parted look outside on both."));
    if (!use.lot.defects.empty())
        texts.push_back(clearText(use, units));
    if (beaded(strip))
        // common practice, no source
        texts.push_back(
            say("Set both cutters on the test pieces below. Rout the beads first, all of them, then "
                "the coves: a cove's thin lips should not have to run along the fence. Feather-boards "
                "in place, and feed against the cutter."));
    texts.push_back(
        say("Cut the pieces as listed, the longest of a strip first, square; scarfs are cut afterwards."));
    return texts;
}

void test(ListPages& pages, const StripStock& strip, Units units) {
    pages.heading(say("Test pieces, and what a strip really covers"));
    pages.text(say(
        "Before any good strip is routed, take two spare strips and cut ten pieces of about 300 mm "
        "(12 in) from them. Rout them, lay all ten edge to edge as tight as they will lie on the hull, and "
        "measure across. Set the cutters until bead and cove close without light between them."));
    std::vector<ListRow> rows;
    const bool inches = units == Units::Inches;
    for (const auto& [measured, cover] : coverWidthTest(strip, units))
        rows.push_back({{formatLength(measured, units, 32, 1),
                         inches ? numberText(cover / mmPerInch, 3) + "\"" : numberText(cover, 2) + " mm"},
                        true});
    pages.list({{say("Ten strips measure"), 1.0, Anchor::Left, Weight::SemiBold}, {say("One covers"), 1.0}},
               rows);
    pages.text(
        say("Put what the ten measure into the window, Ten laid on the bench Stock, or what one covers "
            "into the project, cover-width under [strips], and plan again before you cut "
            "anything to length: a tenth of a millimetre on every strip moves the last plank by several."));
}

/// "S07 (2) 5' 3 1/4"": the second piece of S07.
std::string
partText(const Stick::Part& part, const std::map<std::string, std::size_t>& piecesOf, Units units) {
    const bool whole = piecesOf.at(part.strip) == 1;
    return part.strip + (whole ? "" : " (" + std::to_string(part.number) + ")") + " " +
           pieceText(part.toCut, units);
}

void cutting(ListPages& pages, const StockPlan& stock, Units units) {
    std::map<std::string, std::size_t> piecesOf;
    for (const StockStrip& strip : stock.strips)
        piecesOf[strip.strip] = strip.pieces.size();
    pages.heading(say("Which pieces each milled strip is cut into"));
    pages.text(
        say("In the order of cutting, each with its length; S07 (2) is the second piece of S07 from the bow. "
            "Lengths leave room for the saw cut beside them."));
    std::vector<ListRow> rows;
    for (const Stick& stick : stock.sticks) {
        const bool parted = stock.lots[stick.lot].milling.clear.size() > 1;
        std::string parts;
        for (std::size_t i = 0; i < stick.parts.size(); ++i) {
            const Stick::Part& part = stick.parts[i];
            const bool onNext = i == 0 || part.clear != stick.parts[i - 1].clear;
            parts += (parts.empty() ? "" : ",  ") + (parted && onNext ? clearName(part.clear) + ": " : "") +
                     partText(part, piecesOf, units);
        }
        rows.push_back(
            {{stick.name, parts, stick.left > 0.0 ? pieceText(std::floor(stick.left), units) : ""}, true});
    }
    pages.list({{say("Strip"), 1.4, Anchor::Left, Weight::SemiBold},
                {say("Pieces"), 7.4},
                {say("Left over"), 1.3, Anchor::Right}},
               rows);
}

void leftOver(ListPages& pages, const StockPlan& stock, Units units) {
    std::vector<const Stick*> worth;
    for (const Stick& stick : stock.sticks)
        if (constexpr double useful = 300.0; stick.left >= useful) // mm
            worth.push_back(&stick);
    std::ranges::stable_sort(worth, [](const Stick* a, const Stick* b) { return a->left > b->left; });
    pages.heading(say("What remains"));
    std::string spares;
    for (const LotUse& use : stock.lots)
        if (use.spares > 0)
            spares += (spares.empty() ? "" : ", ") + say("{} of lot {}", use.spares, use.lot.name);
    if (!spares.empty())
        pages.text(
            say("Whole strips to spare: {}. They take the place of strips that break or come out badly.",
                spares));
    if (worth.empty())
        return;
    std::string ends;
    constexpr std::size_t most = 24;
    for (std::size_t i = 0; i < std::min(most, worth.size()); ++i)
        ends += (i == 0 ? "" : ", ") + worth[i]->name + " " + pieceText(std::floor(worth[i]->left), units);
    std::string text = say("Ends worth keeping, for test pieces, fillers and wedges: {}.", ends);
    if (worth.size() > most)
        text += " " + say("And {} shorter ones.", worth.size() - most);
    pages.text(text);
}

} // namespace

std::vector<std::array<double, 2>> coverWidthTest(const StripStock& strip, Units units) {
    constexpr int around = 3;
    const bool inches = units == Units::Inches;
    const double step = inches ? mmPerInch / 16 : 1.5,
                 readTo = inches ? mmPerInch / 32 : 0.5; // over ten strips
    const double planned = std::round(tenStripsMeasure(strip) / readTo) * readTo;
    std::vector<std::array<double, 2>> rows;
    for (int i = -around; i <= around; ++i)
        if (const auto cover = coverByTenStrips(planned + i * step, strip))
            rows.push_back({planned + i * step, *cover});
    return rows;
}

std::vector<Sheet> millingSheets(const Project& project, const StockPlan& stock, Units units, PageSize size) {
    const Speaking speaking(project.language);
    ListPages pages(pageOf(size), say("{}, from boards to strips", project.name));
    for (const LotUse& use : stock.lots) {
        if (use.boards == 0)
            continue;
        pages.heading(say("Lot {}: {} {} of {}",
                          use.lot.name,
                          countText(static_cast<std::size_t>(use.boards), say("board"), say("boards")),
                          sizeText(use.lot, units),
                          spoken(use.lot.wood)));
        pages.steps(sequence(project, use, units));
    }
    if (beaded(project.strips))
        test(pages, project.strips, units);
    cutting(pages, stock, units);
    leftOver(pages, stock, units);
    return pages.take();
}

} // namespace sheerlay::core
