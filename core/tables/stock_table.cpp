#include "core/tables/stock_table.hpp"

#include "core/stock/joint_places.hpp"
#include "core/tables/csv.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <map>
#include <vector>

namespace sheerlay::core {

std::string boardTable(const StockPlan& stock, Units units) {
    std::vector<std::vector<std::string>> rows{{"lot",
                                                "wood",
                                                "boards",
                                                inUnits("thickness", units),
                                                inUnits("width", units),
                                                inUnits("length", units),
                                                "strips each",
                                                "strips cut",
                                                "strips spare",
                                                "board feet",
                                                "price each",
                                                "cost"}};
    for (const LotUse& use : stock.lots)
        rows.push_back({use.lot.name,
                        use.lot.wood,
                        std::to_string(use.boards),
                        plainLength(use.lot.thickness, units),
                        plainLength(use.lot.width, units),
                        plainLength(use.lot.length, units),
                        std::to_string(use.milling.strips()),
                        std::to_string(use.sticks),
                        std::to_string(use.spares),
                        numberText(use.boardFeet, 1),
                        use.lot.price ? numberText(*use.lot.price, 2) : "",
                        use.cost ? numberText(*use.cost, 2) : ""});
    return csvText(rows);
}

std::string pieceTable(const StockPlan& stock, Units units) {
    std::map<std::string, const StockStrip*> stripOf;
    for (const StockStrip& strip : stock.strips)
        stripOf[strip.strip] = &strip;
    std::vector<std::vector<std::string>> rows{{"milled strip",
                                                "lot",
                                                "board",
                                                "strip",
                                                "piece from bow",
                                                "pieces",
                                                inUnits("length to cut", units),
                                                "wood",
                                                inUnits("left over", units)}};
    for (const Stick& stick : stock.sticks)
        for (const Stick::Part& part : stick.parts) {
            const StockStrip& strip = *stripOf.at(part.strip);
            const bool last = &part == &stick.parts.back();
            rows.push_back({stick.name,
                            stock.lots[stick.lot].lot.name,
                            std::to_string(stick.board),
                            part.strip,
                            std::to_string(part.number),
                            std::to_string(strip.pieces.size()),
                            plainLength(part.toCut, units),
                            strip.wood,
                            last ? plainLength(stick.left, units) : ""});
        }
    return csvText(rows);
}

std::string scarfTable(const Plan& plan, const StockPlan& stock, Units units) {
    std::vector<const Strip*> order;
    for (const Strip& strip : plan.strips)
        order.push_back(&strip);
    std::ranges::stable_sort(order, {}, &Strip::order);
    std::vector<std::vector<std::string>> rows{{"order",
                                                "strip",
                                                "scarf from bow",
                                                inUnits("middle from bow cut", units),
                                                inUnits("x", units),
                                                "mould bay",
                                                inUnits("scarf length", units)}};
    for (const Strip* strip : order) {
        const auto made = std::ranges::find(stock.strips, strip->id, &StockStrip::strip);
        if (made == stock.strips.end())
            continue;
        for (std::size_t i = 0; i < made->joints.size(); ++i) {
            const StripJoint& joint = made->joints[i];
            rows.push_back({std::to_string(strip->order),
                            strip->id,
                            std::to_string(i + 1),
                            plainLength(joint.along + bowAllowance(*strip), units),
                            plainLength(joint.x, units),
                            std::to_string(joint.bay + 1),
                            plainLength(stock.scarf, units)});
        }
    }
    return csvText(rows);
}

} // namespace sheerlay::core
