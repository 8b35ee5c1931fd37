#include "core/stock/board_order.hpp"

#include "core/stock/stock_words.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <tuple>
#include <utility>

namespace sheerlay::core {

namespace {

using Group = std::vector<Stick>; // one stick, or a matched pair

std::vector<Group> inOrderOfLaying(std::vector<Stick> sticks, std::size_t each, const Plan& plan) {
    std::map<std::string, std::pair<int, std::string>> orderOf;
    for (const Strip& strip : plan.strips)
        orderOf[strip.id] = {strip.row > 0 ? strip.row - 1 : strip.row, strip.id.substr(1) + strip.id};
    std::vector<Group> groups;
    for (std::size_t i = 0; i < sticks.size(); i += each)
        groups.emplace_back(std::make_move_iterator(sticks.begin() + static_cast<std::ptrdiff_t>(i)),
                            std::make_move_iterator(sticks.begin() + static_cast<std::ptrdiff_t>(i + each)));
    std::ranges::stable_sort(groups, {}, [&](const Group& group) {
        const Stick& stick = group.front();
        auto first = orderOf.at(stick.parts.front().strip);
        for (const Stick::Part& part : stick.parts)
            first = std::min(first, orderOf.at(part.strip));
        return std::tuple(stick.lot, first.first, first.second);
    });
    return groups;
}

/// Which strip of its board the n-th is, from 1: pairs never lie across the joint between two layers.
int numberOnBoard(int n, const Milling& milling, int each) {
    const int perLayer = milling.sideBySide / each * each;
    return n / perLayer * milling.sideBySide + n % perLayer + 1;
}

void buy(LotUse& use, const Stock& stock, int perBoard, std::vector<Finding>& findings) {
    const double wanted = use.sticks * (1 + stock.spare);
    use.boards = static_cast<int>(std::ceil(wanted / perBoard - 1e-9));
    use.spares = use.boards * use.milling.strips() - use.sticks;
    use.boardFeet = use.boards * talliedBoardFeet(use.lot.chargedThickness, use.lot.width, use.lot.length);
    if (use.lot.price)
        use.cost = *use.lot.price * use.boards;
    use.missing = use.lot.count ? std::max(0, use.boards - *use.lot.count) : 0;
    if (use.missing > 0)
        findings.push_back({Level::Stop,
                            "stock-not-enough-boards",
                            std::nullopt,
                            std::nullopt,
                            say("Lot {} has {} boards of {} and {} are needed; {} more would do, or another "
                                "lot of the same wood.",
                                use.lot.name,
                                *use.lot.count,
                                spoken(use.lot.wood),
                                use.boards,
                                use.missing)});
}

} // namespace

StockPlan withBoardsFilled(const Stock& stock, const Plan& plan, StockPlan made) {
    const int each = stock.sides == JointSides::BookMatched ? 2 : 1;
    const auto perBoard = [each](const Milling& m) { return each == 2 ? 2 * m.pairs() : m.strips(); };
    const auto groups = inOrderOfLaying(std::exchange(made.sticks, {}), static_cast<std::size_t>(each), plan);
    for (const Group& group : groups)
        made.sticks.insert(made.sticks.end(), group.begin(), group.end());
    std::map<std::string, StockStrip*> stripOf;
    for (StockStrip& strip : made.strips)
        stripOf[strip.strip] = &strip;
    for (Stick& stick : made.sticks) {
        LotUse& use = made.lots[stick.lot];
        const int most = perBoard(use.milling);
        stick.board = use.sticks / most + 1;
        stick.number = numberOnBoard(use.sticks % most, use.milling, each);
        ++use.sticks;
        stick.name = use.lot.name + std::to_string(stick.board) + "-" + (stick.number < 10 ? "0" : "") +
                     std::to_string(stick.number);
        for (const Stick::Part& part : stick.parts)
            stripOf.at(part.strip)->pieces[static_cast<std::size_t>(part.number) - 1].stick = stick.name;
    }
    for (LotUse& use : made.lots)
        if (use.sticks > 0)
            buy(use, stock, perBoard(use.milling), made.findings);
    return made;
}

} // namespace sheerlay::core
