#include "core/materials/materials.hpp"
#include "core/materials/materials_sheet.hpp"
#include "core/materials/materials_table.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

/// A pipe with gunwales, a seat, two bulkheads and cloth outside; two strips of 3 m.
struct Pipe {
    Project project = test::bareFitout();
    LoftedHull hull = test::quarterPipe(400, 3000);
    ShopPlan shop;

    Pipe() {
        project.name = "Pipe";
        FitoutChoices& f = *project.fitout;
        f.gunwales = GunwaleChoices{};
        f.gunwales->inner = f.gunwales->outer = {20, 18};
        f.bulkheads.resize(2);
        f.bulkheads[1].end = End::Stern;
        f.seats.resize(1);
        f.seats[0].name = "seat";
        f.seats[0].x = 1500;
        f.seats[0].belowSheer = 90;
        f.seats[0].caning = CaningChoice{};
        project.covering = CoveringChoices{};
        project.covering->outside.emplace().cloth = 200;
        project.covering->mix = MixParts{3, 1, false};
        shop.plan.strips.resize(2);
        for (Strip& strip : shop.plan.strips) {
            strip.cutLength = 3000;
            strip.lowerEdge = {{0, 400, 0}, {3000, 400, 0}};
        }
        auto fitout = planFitout(project, hull, shop.plan, [](const Fitout&) { return 1500.0; });
        REQUIRE(fitout);
        shop.after.fitout = *fitout;
        shop.after.fastenings = planFastenings(project, **fitout);
        shop.after.covering = planCovering(project, hull, hull.moulds);
        shop.after.glue = planGlue(project, shop.plan, *fitout);
    }
    [[nodiscard]] std::vector<Material> list(Units units) const {
        return materialsOf(project, hull, shop, units);
    }
};

const Material& named(const std::vector<Material>& all, const std::string& begin) {
    const auto found =
        std::ranges::find_if(all, [&](const Material& m) { return m.what.starts_with(begin); });
    INFO(begin);
    REQUIRE(found != all.end());
    return *found;
}

} // namespace

TEST_CASE("sticks, plywood, cloth and screws are what the pipe's own lengths say, in either unit") {
    const Pipe pipe;
    const auto mm = pipe.list(Units::Millimetres), in = pipe.list(Units::Inches);
    // two strips of 3 m and a tenth to spare
    CHECK(named(mm, "strips").amount == Approx(6.6));
    CHECK(named(in, "strips").amount == Approx(std::ceil(6600 / 304.8)));
    CHECK(named(in, "strips").unit == "ft");
    // 3000 mm of sheer and 50 over at each end, one piece a side: the stock is 3657.6 long
    CHECK(named(mm, "inner gunwale").amount == Approx(6.2));
    CHECK(named(mm, "inner gunwale").what.find("2 pieces of at most 3100 mm") != std::string::npos);
    // rails 2 sqrt(400^2 - 90^2) wide, side rails 254 - 2 x 38.1 long
    const double rails = 2 * 2 * std::sqrt(400.0 * 400 - 90 * 90) + 2 * (254 - 76.2);
    CHECK(named(mm, "seats").amount == Approx(std::ceil(rails / 100) / 10).margin(1e-9));
    CHECK(named(mm, "hangers").amount == Approx(0.3));     // four of 72
    CHECK(named(mm, "plywood for bulkheads").amount == 1); // two half circles 800 wide on 2.4 m
    const FaceCovering& face = pipe.shop.after.covering->faces[0];
    CHECK(named(mm, "cloth").amount == Approx(std::ceil(face.fromRoll / 500) / 2));
    CHECK(named(in, "cloth").amount == Approx(std::ceil(face.fromRoll / 457.2) / 2));
    CHECK(named(mm, "wood screws").amount == pipe.shop.after.fitout->gunwales->screwCount);
    CHECK(named(mm, "bolts").amount == 4);
    CHECK(named(mm, "bolts").size.find("125 mm") != std::string::npos); // 18 + 72 + 19.05 + 12, up to 5
    CHECK(named(mm, "wooden plugs").amount == named(mm, "wood screws").amount);
}

TEST_CASE("resin holds coats, thickened glue and fillets, parted as it is mixed; wood glue stands apart") {
    Pipe pipe;
    double mixed = pipe.shop.after.covering->litres, wood = 0.0;
    for (const GlueUse& g : pipe.shop.after.glue)
        (g.epoxy ? mixed : wood) += g.litres;
    const auto up = [](double litres) { return std::ceil(litres / 0.05) * 0.05; };
    CHECK(named(pipe.list(Units::Millimetres), "resin").amount == Approx(up(0.75 * mixed)));
    CHECK(named(pipe.list(Units::Millimetres), "hardener").amount == Approx(up(0.25 * mixed)));
    CHECK(named(pipe.list(Units::Millimetres), "glue for wood").amount == Approx(up(wood)));
    CHECK(named(pipe.list(Units::Inches), "resin").amount ==
          Approx(std::ceil(0.75 * mixed / 3.785411784 * 128)));
    pipe.project.covering->mix.reset();
    CHECK(named(pipe.list(Units::Millimetres), "resin and hardener together").amount == Approx(up(mixed)));
    pipe.project.covering->mix = MixParts{100, 45, true};
    CHECK(named(pipe.list(Units::Millimetres), "hardener").unit == "kg");
}

TEST_CASE("boards bring their cost; a list without prices has none") {
    Pipe pipe;
    const MaterialSum none = sumOf(pipe.list(Units::Inches));
    CHECK(none.priced == 0);
    CHECK(none.unpriced == static_cast<int>(pipe.list(Units::Inches).size()));
    StockPlan stock;
    LotUse use;
    use.lot = {"A", "western-redcedar", 19.05, 139.7, 3657.6, 25.4, std::nullopt, 18.5, {}, 0};
    use.boards = 7;
    use.cost = 7 * 18.5;
    stock.lots = {use};
    pipe.shop.stock = stock;
    const auto all = pipe.list(Units::Inches);
    CHECK(named(all, "western redcedar boards").amount == 7);
    CHECK(sumOf(all).cost == Approx(129.5));
    CHECK(sumOf(all, Shop::Wood).priced == 1);
    CHECK(sumOf(all, Shop::Glass).priced == 0);
    CHECK(std::ranges::none_of(all, [](const Material& m) { return m.what.starts_with("strips"); }));
    const std::string page = test::wordsOf(materialsSheet(pipe.project, all, Units::Inches, PageSize::A4));
    CHECK_THAT(page, Catch::Matchers::Contains("What has a price costs 129.50"));
    CHECK_THAT(page, Catch::Matchers::Contains("have no price"));
    pipe.project.prices.glue = 10.0; // a litre; a US gallon is 3.785411784 L
    const auto priced = pipe.list(Units::Inches);
    CHECK_THAT(test::wordsOf(materialsSheet(pipe.project, priced, Units::Inches, PageSize::A4)),
               Catch::Matchers::Contains("37.85/gal"));
}

TEST_CASE("every key of [prices] reaches its goods, and units change no cost but by what is rounded up") {
    Pipe pipe;
    pipe.project.covering->inside.emplace().cloth = 136;
    pipe.project.covering->bulkheads.emplace().cloth = 136;
    pipe.shop.after.covering = planCovering(pipe.project, pipe.hull, pipe.hull.moulds);
    coverBulkheads(*pipe.shop.after.covering, *pipe.project.covering, pipe.shop.after.fitout->bulkheads);
    for (const PriceKey& key : priceKeys()) {
        INFO(key.key);
        pipe.project.prices = {};
        pipe.project.prices.*key.member = 2.0;
        const auto mm = pipe.list(Units::Millimetres), in = pipe.list(Units::Inches);
        // the small pipe's moulds come to one sheet, its cane and glue to something
        CHECK(sumOf(mm).priced > 0);
        for (std::size_t i = 0; i < mm.size(); ++i) {
            CHECK(mm[i].cost.has_value() == in[i].cost.has_value());
            if (!mm[i].cost)
                continue;
            CHECK(*mm[i].cost == Approx(*mm[i].price * mm[i].amount));
            CHECK(*in[i].cost == Approx(*in[i].price * in[i].amount));
            // both are rounded up, by half a yard of cloth at most
            CHECK(*mm[i].cost == Approx(*in[i].cost).margin(2.0 * 0.5));
        }
    }
    for (const PriceKey& key : priceKeys())
        pipe.project.prices.*key.member = 2.0;
    const auto all = pipe.list(Units::Millimetres);
    CHECK(sumOf(all).unpriced == 0);
    // by hand: 6.6 m of strip, gunwales 12.4 m, … at 2 apiece is twice the sum of the amounts
    double amounts = 0.0;
    for (const Material& m : all)
        amounts += m.amount;
    CHECK(sumOf(all).cost == Approx(2 * amounts));
    double shops = 0.0;
    for (const Shop shop : allShops)
        shops += sumOf(all, shop).cost;
    CHECK(shops == Approx(sumOf(all).cost));
    CHECK_THAT(test::wordsOf(materialsSheet(pipe.project, all, Units::Inches, PageSize::A4)),
               Catch::Matchers::Contains("All of it costs"));
    // mixed by weight a litre's price goes by what a litre weighs
    pipe.project.covering->mix = MixParts{100, 45, true};
    pipe.project.covering->liquidDensity = 1.25;
    CHECK(*named(pipe.list(Units::Millimetres), "resin").price == Approx(2.0 / 1.25));
    // in parts that nobody told it has none
    pipe.project.covering->mix.reset();
    CHECK(sumOf(pipe.list(Units::Millimetres)).unpriced == 1);
}

TEST_CASE("one page whatever the paper, inside the margins; the table holds the same rows") {
    const Pipe pipe;
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const auto all = pipe.list(units);
        for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3}) {
            const Sheet sheet = materialsSheet(pipe.project, all, units, size);
            CHECK(test::outside(sheet, pageMargin - 1) == "");
            CHECK(test::overlapping(sheet) == "");
            for (const char* shop : {"Wood", "Glass", "Resin", "Fastenings"})
                CHECK_THAT(test::wordsOf(sheet), Catch::Matchers::Contains(shop));
        }
        const std::string table = materialsTable(all);
        // and a sum for each of the four shops and for all
        CHECK(static_cast<std::size_t>(std::count(table.begin(), table.end(), '\n')) == all.size() + 1 + 5);
        CHECK_THAT(table, Catch::Matchers::Contains("all,sum"));
        CHECK_THAT(table, Catch::Matchers::StartsWith("shop,what,size,amount,unit,price each,cost\r\n"));
    }
}
