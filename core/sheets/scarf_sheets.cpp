#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/joint_places.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <map>

namespace sheerlay::core {

namespace {

/// A scarf seen on the strip's edge, thickness drawn larger than life.
std::vector<Item> scarfDrawing(double width, double k) {
    const double high = 7.0 * k, run = 0.42 * width, from = 0.29 * width, top = 2.0 * k;
    Path left, right;
    left.closed = right.closed = true;
    left.points = {{0.0, top}, {from, top}, {from + run, top + high}, {0.0, top + high}};
    right.points = {{from, top}, {width, top}, {width, top + high}, {from + run, top + high}};
    left.fill = colours::free;
    right.fill = colours::bench;
    std::vector<Item> items{left, right};
    const double type = typeSize::small * k, below = top + high + 1.0 * k;
    for (const double x : {from, from + run})
        items.emplace_back(makeLine({x, below}, {x, below + 4.0 * k}, LineKind::Thin));
    items.emplace_back(makeLine({from, below + 3.0 * k}, {from + run, below + 3.0 * k}, LineKind::Thin));
    items.emplace_back(makeText({from + run / 2, below + 3.0 * k + type + 0.6 * k},
                                say("length of the scarf"),
                                {.size = type, .anchor = Anchor::Middle}));
    items.emplace_back(makeText(
        {2.0 * k, top + high / 2 + type * capHeight / 2}, say("outside of the strip up"), {.size = type}));
    return items;
}

std::string piecesText(const StockStrip& strip, Units units) {
    std::string text;
    for (const StockPiece& piece : strip.pieces)
        text += (text.empty() ? "" : ",  ") + piece.stick + " " + pieceText(piece.toCut, units);
    return text;
}

} // namespace

std::vector<Sheet> scarfSheets(const Project& project,
                               const LoftedHull& hull,
                               const Plan& plan,
                               const StockPlan& stock,
                               Units units,
                               PageSize size) {
    const Speaking speaking(project.language);
    ListPages pages(pageOf(size), say("{}, scarfs", project.name));
    const double slope = project.stock->scarfSlope;
    pages.text(
        say("Scarfs are {} to 1, {} long on a strip this thick. Cut both slopes at once, one piece on the "
            "other turned end for end, and let the outer feather point toward the stern. Pieces are listed "
            "from the bow; their lengths include the scarfs. Lay the pieces along a straight edge, glue, and "
            "sand the faces flush when the glue is hard.",
            numberText(slope, slope == std::floor(slope) ? 0 : 1),
            lapText(stock.scarf, units)));
    pages.text(say(
        "Keep epoxy off your skin: wear gloves, and let small pots stand on something that may get hot."));
    pages.drawing(scarfDrawing(pages.width(), pages.size(1.0)), pages.size(20.0));

    std::map<std::string, const StockStrip*> madeOf;
    for (const StockStrip& strip : stock.strips)
        madeOf[strip.strip] = &strip;
    std::vector<const Strip*> order;
    for (const Strip& strip : plan.strips)
        order.push_back(&strip);
    std::ranges::stable_sort(order, {}, &Strip::order);
    const Places places(project, hull);
    std::vector<ListRow> rows;
    for (const Strip* strip : order) {
        const StockStrip& made = *madeOf.at(strip->id);
        if (made.pieces.empty())
            continue;
        std::string middles, where;
        for (const StripJoint& joint : made.joints) {
            middles += (middles.empty() ? "" : ",  ") + placeText(joint.along + bowAllowance(*strip), units);
            where += (where.empty() ? "" : "; ") + places.byName(joint.x);
        }
        rows.push_back(
            {{strip->id, piecesText(made, units), middles.empty() ? say("none|of scarfs") : middles, where},
             true});
    }
    pages.heading(say("Strip by strip, in the order of laying"));
    pages.list({{say("Strip"), 1.3, Anchor::Left, Weight::SemiBold},
                {say("Milled strip and length of each piece"), 4.2},
                {say("Scarf's middle, from the bow cut"), 2.5},
                {say("By stations it lies"), 3.8}},
               rows);
    return pages.take();
}

std::vector<Sheet> stockSheets(const Project& project,
                               const LoftedHull& hull,
                               const Plan& plan,
                               const StockPlan& stock,
                               Units units,
                               PageSize size) {
    if (stock.sticks.empty())
        return {};
    const Speaking speaking(project.language);
    std::vector<Sheet> sheets{boardSheet(project, stock, units, size)};
    for (std::vector<Sheet> more : {millingSheets(project, stock, units, size),
                                    scarfSheets(project, hull, plan, stock, units, size),
                                    labelSheets(project, stock, units, size)})
        std::ranges::move(more, std::back_inserter(sheets));
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core
