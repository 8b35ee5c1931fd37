#include "core/sheets/list_pages.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

std::string money(double value) {
    return numberText(value, 2);
}

/// What is said below the boards of what the boat takes of each wood.
std::vector<ListRow> woodRows(const StockPlan& stock, Units units) {
    std::vector<ListRow> rows;
    for (const WoodCutting& use : stock.woods)
        rows.push_back({{spoken(use.wood),
                         std::to_string(use.strips),
                         std::to_string(use.pieces),
                         std::to_string(use.joints),
                         runOfStrip(use.needed, units),
                         numberText(std::max(0.0, 100.0 * use.gap()), 1) + " percent"}});
    return rows;
}

std::vector<std::string> advice(const Project& project, const StockPlan& stock, Units units) {
    const Stock& asked = *project.stock;
    double longest = 0.0;
    for (const StockStrip& strip : stock.strips)
        for (const StockPiece& piece : strip.pieces)
            longest = std::max(longest, piece.toCut);
    std::vector<std::string> texts;
    texts.push_back(
        "Choose clear boards, straight in the grain and flat sawn or quartered alike, free of "
        "knots, shakes and pith over " +
        pieceText(longest, units) + " at least, the longest piece; " + pieceText(asked.endTrim, units) +
        " at each end may be checked. Bring the actual sizes home: a board thinner or narrower than "
        "listed gives fewer strips.");
    texts.push_back("Spare strips are " + numberText(100.0 * asked.spare, 0) +
                    " percent of those needed, filled up to whole boards.");
    return texts;
}

} // namespace

Sheet boardSheet(const Project& project, const StockPlan& stock, Units units, PageSize size) {
    // smaller only where there are so many lots that one page wouldn't hold them
    for (double zoom = 1.0;; zoom *= 0.9) {
        ListPages pages(pageOf(size), project.name + ", boards to buy", zoom);
        std::vector<ListRow> rows;
        int boards = 0;
        double feet = 0.0, cost = 0.0;
        bool priced = true, several = false;
        for (const LotUse& use : stock.lots) {
            if (use.boards == 0)
                continue;
            several = !rows.empty();
            rows.push_back({{std::to_string(use.boards),
                             use.lot.name,
                             sizeText(use.lot, units) + " " + spoken(use.lot.wood),
                             std::to_string(use.milling.strips()),
                             numberText(use.boardFeet, 0),
                             use.lot.price ? money(*use.lot.price) : "",
                             use.cost ? money(*use.cost) : ""},
                            true});
            boards += use.boards;
            feet += use.boardFeet;
            priced = priced && use.cost.has_value();
            cost += use.cost.value_or(0.0);
        }
        if (several)
            rows.push_back({{std::to_string(boards),
                             "all",
                             "",
                             "",
                             numberText(feet, 0),
                             "",
                             priced ? money(cost) : ""}});
        pages.list({{"Boards", 1.0, Anchor::Left, Weight::Bold},
                    {"Lot", 0.8, Anchor::Left, Weight::SemiBold},
                    {"Thick, wide, long, actual", 5.6},
                    {"Strips each", 1.0, Anchor::Right},
                    {"Board feet", 1.0, Anchor::Right},
                    {"Price", 1.2, Anchor::Right},
                    {"Cost", 1.2, Anchor::Right}},
                   rows);
        for (const LotUse& use : stock.lots)
            if (use.missing > 0)
                pages.text("Lot " + use.lot.name + " holds " + std::to_string(use.missing) +
                           (use.missing == 1 ? " board" : " boards") + " fewer than are needed.");
        for (const std::string& text : advice(project, stock, units))
            pages.text(text);
        pages.heading("What the boat takes");
        pages.list({{"Wood", 2.6, Anchor::Left, Weight::SemiBold},
                    {"Strips", 1.0, Anchor::Right},
                    {"Pieces", 1.0, Anchor::Right},
                    {"Scarfs", 1.0, Anchor::Right},
                    {"Strip, scarfs included", 1.8, Anchor::Right},
                    {"Over the least", 1.6, Anchor::Right}},
                   woodRows(stock, units));
        pages.text("Bare planking weighs about " + weightText(stock.weight, units) +
                   " at 12 percent moisture, planed and sanded no further than milled.");
        pages.text("Board feet are tallied as a yard does: nominal thickness of at least an inch, actual "
                   "width, length in whole feet. Over the least: how much more this cutting costs than the "
                   "best there can be, at most.");
        std::vector<Sheet> sheets = pages.take();
        constexpr double smallest = 0.3;
        if (sheets.size() == 1 || zoom < smallest)
            return sheets.front();
    }
}

} // namespace sheerlay::core
