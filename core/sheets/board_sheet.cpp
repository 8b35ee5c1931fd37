#include "core/sheets/list_pages.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

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
                         say("{} percent", numberText(std::max(0.0, 100.0 * use.gap()), 1))}});
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
        say("Choose clear boards, straight in the grain and flat sawn or quartered alike, free of knots, "
            "shakes and pith over {} at least, the longest piece; {} at each end may be checked. Bring the "
            "actual sizes home: a board thinner or narrower than listed gives fewer strips.",
            pieceText(longest, units),
            pieceText(asked.endTrim, units)));
    texts.push_back(say("Spare strips are {} percent of those needed, filled up to whole boards.",
                        numberText(100.0 * asked.spare, 0)));
    return texts;
}

} // namespace

Sheet boardSheet(const Project& project, const StockPlan& stock, Units units, PageSize size) {
    const Speaking speaking(project.language);
    // smaller only where there are so many lots that one page wouldn't hold them
    for (double zoom = 1.0;; zoom *= 0.9) {
        ListPages pages(pageOf(size), say("{}, boards to buy", project.name), zoom);
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
                             say("all|boards"),
                             "",
                             "",
                             numberText(feet, 0),
                             "",
                             priced ? money(cost) : ""}});
        pages.list({{say("Boards"), 1.0, Anchor::Left, Weight::Bold},
                    {say("Lot"), 0.8, Anchor::Left, Weight::SemiBold},
                    {say("Thick, wide, long, actual"), 5.6},
                    {say("Strips each"), 1.0, Anchor::Right},
                    {say("Board feet"), 1.0, Anchor::Right},
                    {say("Price"), 1.2, Anchor::Right},
                    {say("Cost"), 1.2, Anchor::Right}},
                   rows);
        for (const LotUse& use : stock.lots)
            if (use.missing > 0)
                pages.text(
                    use.missing == 1
                        ? say("Lot {} holds {} board fewer than are needed.", use.lot.name, use.missing)
                        : say("Lot {} holds {} boards fewer than are needed.", use.lot.name, use.missing));
        for (const std::string& text : advice(project, stock, units))
            pages.text(text);
        pages.heading(say("What the boat takes"));
        pages.list({{say("Wood"), 2.6, Anchor::Left, Weight::SemiBold},
                    {say("Strips"), 1.0, Anchor::Right},
                    {say("Pieces"), 1.0, Anchor::Right},
                    {say("Scarfs"), 1.0, Anchor::Right},
                    {say("Strip, scarfs included"), 1.8, Anchor::Right},
                    {say("Over the least"), 1.6, Anchor::Right}},
                   woodRows(stock, units));
        pages.text(
            say("Bare planking weighs about {} at 12 percent moisture, planed and sanded no further than "
                "milled.",
                weightText(stock.weight, units)));
        pages.text(
            say("Board feet are tallied as a yard does: nominal thickness of at least an inch, actual "
                "width, length in whole feet. Over the least: how much more this cutting costs than the "
                "best there can be, at most."));
        std::vector<Sheet> sheets = pages.take();
        constexpr double smallest = 0.3;
        if (sheets.size() == 1 || zoom < smallest)
            return sheets.front();
    }
}

} // namespace sheerlay::core
