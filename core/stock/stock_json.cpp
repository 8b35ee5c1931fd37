#include "core/stock/stock_json.hpp"

#include "core/units/json_text.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <utility>

namespace sheerlay::core {

namespace {

using Json = nlohmann::ordered_json;

/// To 0.001: finer says nothing of wood.
double tidy(double value) {
    return rounded(value, 3);
}

template <class T> Json orNull(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

/// mm from and to, from the board's first end.
Json clearLengths(const Milling& milling) {
    Json list = Json::array();
    for (const auto& [from, to] : milling.clear)
        list.push_back({tidy(from), tidy(to)});
    return list;
}

Json lots(const StockPlan& stock) {
    Json list = Json::array();
    for (const LotUse& use : stock.lots)
        list.push_back({{"name", use.lot.name},
                        {"wood", use.lot.wood},
                        {"thickness", use.lot.thickness},
                        {"width", use.lot.width},
                        {"length", use.lot.length},
                        {"strips_per_board", use.milling.strips()},
                        {"strip_length", tidy(use.milling.stripLength)},
                        {"clear", clearLengths(use.milling)},
                        {"boards", use.boards},
                        {"boards_missing", use.missing},
                        {"strips_cut", use.sticks},
                        {"strips_spare", use.spares},
                        {"board_feet", tidy(use.boardFeet)},
                        {"cost", orNull(use.cost)}});
    return list;
}

Json woods(const StockPlan& stock) {
    Json list = Json::array();
    for (const WoodCutting& use : stock.woods)
        list.push_back({{"wood", use.wood},
                        {"strips", use.strips},
                        {"pieces", use.pieces},
                        {"scarfs", use.joints},
                        {"length", tidy(use.needed)},
                        {"cost", tidy(use.cost)},
                        {"bound", tidy(use.bound)},
                        {"gap", use.gap()},
                        {"counted_in", use.inMoney ? "money" : "mm of strip"}});
    return list;
}

Json strips(const StockPlan& stock) {
    Json list = Json::array();
    for (const StockStrip& strip : stock.strips) {
        Json joints = Json::array(), pieces = Json::array();
        for (const StripJoint& joint : strip.joints)
            joints.push_back({{"along", tidy(joint.along)}, {"x", tidy(joint.x)}, {"bay", joint.bay}});
        for (const StockPiece& piece : strip.pieces)
            pieces.push_back({{"number", piece.number},
                              {"from", tidy(piece.from)},
                              {"to", tidy(piece.to)},
                              {"to_cut", tidy(piece.toCut)},
                              {"milled_strip", piece.stick}});
        list.push_back({{"strip", strip.strip},
                        {"wood", strip.wood},
                        {"scarfs", std::move(joints)},
                        {"pieces", std::move(pieces)}});
    }
    return list;
}

Json sticks(const StockPlan& stock) {
    Json list = Json::array();
    for (const Stick& stick : stock.sticks) {
        Json parts = Json::array();
        for (const Stick::Part& part : stick.parts)
            parts.push_back({{"strip", part.strip},
                             {"number", part.number},
                             {"to_cut", tidy(part.toCut)},
                             {"clear", part.clear}});
        list.push_back({{"name", stick.name},
                        {"lot", stock.lots[stick.lot].lot.name},
                        {"board", stick.board},
                        {"pieces", std::move(parts)},
                        {"left", tidy(stick.left)}});
    }
    return list;
}

Json asJson(const StockPlan& stock) {
    return {{"scarf_length", tidy(stock.scarf)},
            {"weight_kg", tidy(stock.weight)},
            {"lots", lots(stock)},
            {"woods", woods(stock)},
            {"strips", strips(stock)},
            {"milled_strips", sticks(stock)}};
}

} // namespace

std::string stockToJson(const StockPlan& stock) {
    return asJson(stock).dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string withStockPlan(std::string planJson, const StockPlan& stock) {
    return withMember(std::move(planJson), "stock_plan", stockToJson(stock));
}

} // namespace sheerlay::core
