#include "core/stock/stock_json.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"

#include <nlohmann/json.hpp>

#include <set>
#include <stdexcept>

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("the stock plan as JSON says what the plan says, and joins plan.json") {
    FakeBoat boat = makeFakeBoat(6);
    boat.project.stock = Stock{};
    BoardLot lot;
    lot.name = "A";
    lot.wood = "western-redcedar";
    lot.thickness = 0.75 * mmPerInch;
    lot.width = 5.5 * mmPerInch;
    lot.length = 10 * mmPerFoot;
    lot.chargedThickness = mmPerInch;
    boat.project.stock->lots = {lot};
    const auto stock = planStock(boat.project, boat.hull, boat.plan);
    REQUIRE(stock);
    const auto json = nlohmann::json::parse(withStockPlan(R"({"format":"sheerlay-plan"})", *stock));
    CHECK(json.at("format") == "sheerlay-plan");
    const auto& made = json.at("stock_plan");
    CHECK(made.at("lots").at(0).at("boards") == stock->lots[0].boards);
    CHECK(made.at("strips").size() == boat.plan.strips.size());
    std::set<std::string> pieces, cut;
    for (const auto& strip : made.at("strips")) {
        CHECK(strip.at("pieces").size() == strip.at("scarfs").size() + 1);
        for (const auto& piece : strip.at("pieces"))
            pieces.insert(strip.at("strip").get<std::string>() + "/" + piece.at("number").dump() + "/" +
                          piece.at("milled_strip").get<std::string>());
    }
    for (const auto& stick : made.at("milled_strips"))
        for (const auto& part : stick.at("pieces"))
            cut.insert(part.at("strip").get<std::string>() + "/" + part.at("number").dump() + "/" +
                       stick.at("name").get<std::string>());
    CHECK(pieces == cut);
    CHECK(made.at("woods").at(0).at("gap").get<double>() >= 0.0);
    CHECK_THROWS_AS(withStockPlan("nothing", *stock), std::invalid_argument);
}
