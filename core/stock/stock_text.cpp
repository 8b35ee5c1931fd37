#include "core/stock/stock_plan.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

std::string line(const std::string& label, const std::string& text) {
    return "  " + label + std::string(11 - std::min<std::size_t>(10, label.size()), ' ') + text + "\n";
}

std::string count(int n, const std::string& one, const std::string& many) {
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

std::string money(double value) {
    return numberText(value, 2);
}

} // namespace

std::string toText(const StockPlan& stock, Units units) {
    std::string text;
    double all = 0.0;
    int bought = 0;
    bool priced = true;
    for (const LotUse& use : stock.lots) {
        if (use.boards == 0)
            continue;
        text += line(bought++ == 0 ? "boards" : "",
                     "lot " + use.lot.name + ": " + count(use.boards, "board ", "boards ") +
                         sizeText(use.lot, units) + " of " + spoken(use.lot.wood));
        text += line("",
                     count(use.milling.strips(), "strip", "strips") + " from each, " +
                         std::to_string(use.spares) + " of them spare; " + numberText(use.boardFeet, 0) +
                         " board feet" + (use.cost ? ", cost " + money(*use.cost) : ""));
        priced = priced && use.cost.has_value();
        all += use.cost.value_or(0.0);
    }
    for (const WoodCutting& use : stock.woods)
        text += line(
            "cutting",
            count(use.pieces, "piece", "pieces") + (stock.woods.size() > 1 ? " of " + spoken(use.wood) : "") +
                ", " + count(use.joints, "scarf", "scarfs") + ", at most " +
                numberText(std::max(0.0, 100.0 * use.gap()), 1) + " percent over the best there can be");
    if (priced && bought > 1)
        text += line("cost", money(all) + " for all boards");
    text += line("weight", "bare planking about " + weightText(stock.weight, units));
    return text;
}

} // namespace sheerlay::core
