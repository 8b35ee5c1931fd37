#include "core/stock/stock_plan.hpp"
#include "core/units/length.hpp"
#include "tests/core/stock/board_lots.hpp"
#include "tests/core/stock/scarf_rules.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/planked.hpp"

#include <numbers>
#include <random>
#include <set>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

const Finding* findingOf(const StockPlan& stock, const std::string& code) {
    for (const Finding& finding : stock.findings)
        if (finding.code == code)
            return &finding;
    return nullptr;
}

/// mm, of the boards that a finding says would do; 0 where it names none.
double lengthAdvised(const Finding& finding) {
    const std::string words = "boards of ";
    const auto at = finding.text.rfind(words);
    return at == std::string::npos ? 0.0 : std::stod(finding.text.substr(at + words.size()));
}

} // namespace

TEST_CASE(
    "the example canoe from 8, 10, 12 and 16 ft boards: within 5 percent of the bound, no rule broken") {
    static const Planked boat =
        planked(projectAt(std::string(SHEERLAY_EXAMPLES) + "/brindlewick/brindlewick.sheerlay"));
    const double feet = GENERATE(8.0, 10.0, 12.0, 16.0);
    const JointSides sides = GENERATE(JointSides::Mirror, JointSides::Stagger);
    INFO(feet << " ft, " << (sides == JointSides::Mirror ? "mirrored" : "staggered"));
    Project project = boat.project;
    project.stock = Stock{};
    project.stock->lots = {lotOf(feet)};
    project.stock->sides = sides;
    const auto stock = planStock(project, boat.hull, boat.plan);
    REQUIRE(stock);
    CHECK(all(brokenRules(project, boat.hull, boat.plan, *stock)) == "");
    CHECK(stock->findings.empty());
    REQUIRE(stock->woods.size() == 1);
    const WoodCutting& use = stock->woods[0];
    UNSCOPED_INFO("gap " << use.gap() << ", " << use.pieces << " pieces");
    CHECK(use.gap() >= 0.0);
    CHECK(use.gap() <= 0.05);
    // the bound is no less than the wood that is in the boat, its scarfs not even counted
    double wood = 0.0;
    for (const Strip& strip : boat.plan.strips)
        wood += strip.cutLength;
    CHECK(use.bound >= wood);
    CHECK(use.needed >= wood);
    // boards hold what is cut and the spares
    const LotUse& lot = stock->lots[0];
    CHECK(lot.sticks == static_cast<int>(stock->sticks.size()));
    CHECK(lot.boards * lot.milling.strips() == lot.sticks + lot.spares);
    CHECK(lot.spares >= 0.1 * lot.sticks);
    CHECK((lot.boards - 1) * lot.milling.strips() < 1.1 * lot.sticks);
    // offcuts first: no strip is begun for pieces that the ends left of the others would hold
    for (const Stick& begun : stock->sticks) {
        std::multiset<double> ends;
        for (const Stick& other : stock->sticks)
            if (other.name != begun.name)
                ends.insert(other.left);
        const bool held = std::ranges::all_of(begun.parts, [&](const Stick::Part& part) {
            const auto end = ends.lower_bound(part.toCut); // the shortest that holds it
            if (end == ends.end())
                return false;
            ends.insert(*end - part.toCut - project.stock->kerf);
            ends.erase(end);
            return true;
        });
        INFO(begun.name);
        CHECK_FALSE(held);
    }
    // a boat of about 15 ft from stock shorter than the hull: 150 to 230 pieces, common practice, no source
    if (feet <= 10.0) {
        CHECK(use.pieces >= 150);
        CHECK(use.pieces <= 230);
    }
}

TEST_CASE("stealers on the formula canoe: scarfs keep clear of nibs, and of those of the strip let in to") {
    static const Planked boat = [] { // the layout of stealer_joints_test.cpp
        Project project = projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay");
        project.strips.coverWidth = 17;
        project.planking.start.kind = StartLine::Kind::Geodesic;
        project.planking.start.girth = 0;
        project.planking.taper = Taper::Anywhere;
        project.planking.edgeBendRadius = 1000 / 0.15;
        project.planking.narrowest = 15.5;
        return planked(std::move(project));
    }();
    REQUIRE(std::ranges::count(boat.plan.strips, StripKind::Stealer, &Strip::kind) >= 2);
    const double feet = GENERATE(5.0, 7.0, 8.0, 10.0);
    Project project = boat.project;
    project.stock = Stock{};
    project.stock->lots = {lotOf(feet)};
    const auto stock = planStock(project, boat.hull, boat.plan);
    REQUIRE(stock);
    INFO(feet << " ft");
    CHECK(all(brokenRules(project, boat.hull, boat.plan, *stock)) == "");
    CHECK(findingOf(*stock, "stock-scarf-at-nib") == nullptr);
    CHECK(stock->woods.at(0).gap() <= 0.05);
}

TEST_CASE("strip length lies below the rule of thumb: length x girth / cover width") {
    const Planked boat =
        planked(projectAt(std::string(SHEERLAY_EXAMPLES) + "/brindlewick/brindlewick.sheerlay"));
    double strips = 0.0;
    for (const Strip& strip : boat.plan.strips)
        strips += strip.cutLength;
    const double thumb = boat.hull.laid.length * 2 * boat.hull.laid.halfGirthMax / boat.plan.coverWidth;
    // the rule overstates by about a fifth; between 75 and 100 percent, common practice, no source
    CHECK(strips > 0.75 * thumb);
    CHECK(strips < thumb);
}

TEST_CASE("a hundred random plans break no rule of scarfs") {
    std::mt19937 random(20261125);
    const auto between = [&random](double least, double most) {
        return least + (most - least) * static_cast<double>(random() % 10001) / 10000.0;
    };
    int joined = 0;
    for (int trial = 0; trial < 100; ++trial) {
        FakeBoat boat = makeFakeBoat(3 + static_cast<int>(random() % 4));
        double x = between(-100.0, 200.0);
        boat.hull.stationX.clear();
        const double bay = between(250.0, 460.0);
        for (; x < 5000.0; x += bay * between(0.9, 1.1))
            boat.hull.stationX.push_back(x);
        for (Strip& strip : boat.plan.strips) {
            const double first = strip.samples.front().x, last = strip.samples.back().x;
            strip.edgeBend.atX = between(first, last);
            strip.twistAtX = between(first, last);
            strip.bendAtX = between(first, last);
        }
        Stock stock;
        stock.lots = {lotOf(between(6.0, 13.0))};
        if (trial % 2 == 0) {
            stock.lots.push_back(lotOf(between(5.0, 12.0)));
            stock.lots.back().name = "B";
            if (trial % 4 == 0)
                stock.lots.back().count = 2;
        }
        if (trial % 5 == 0) {
            stock.lots.push_back(lotOf(between(7.0, 12.0), "northern-white-cedar"));
            stock.lots.back().name = "C";
            stock.woodRules = {{"northern-white-cedar", 2, 9, 2, {}, 0}};
        }
        stock.sides = trial % 3 == 0   ? JointSides::Stagger
                      : trial % 3 == 1 ? JointSides::Mirror
                                       : JointSides::BookMatched;
        if (trial % 4 == 1 && stock.lots[0].length > 9 * mmPerFoot) { // a knot near an end of every board
            const double at = between(0.1, 0.3) * stock.lots[0].length;
            stock.lots[0].defects = {{at, at + between(20.0, 150.0)}};
        }
        stock.shortestPiece = between(300.0, 700.0);
        stock.kerf = between(0.5, 4.0);
        boat.project.stock = stock;
        const auto made = planStock(boat.project, boat.hull, boat.plan);
        REQUIRE(made);
        INFO("trial " << trial);
        CHECK(all(brokenRules(boat.project, boat.hull, boat.plan, *made)) == "");
        for (const WoodCutting& use : made->woods) {
            CHECK(use.bound <= use.cost * (1 + 1e-9));
            joined += use.joints;
        }
        for (const Finding& finding : made->findings)
            CHECK(finding.level != Level::Stop);
    }
    CHECK(joined > 500); // else nothing was put to the test
}

TEST_CASE("the same plan twice is the same to the last piece") {
    FakeBoat boat = makeFakeBoat(12);
    boat.project.stock = Stock{};
    boat.project.stock->lots = {lotOf(10)};
    const auto a = planStock(boat.project, boat.hull, boat.plan),
               b = planStock(boat.project, boat.hull, boat.plan);
    REQUIRE(a->sticks.size() == b->sticks.size());
    for (std::size_t i = 0; i < a->sticks.size(); ++i) {
        CHECK(a->sticks[i].name == b->sticks[i].name);
        REQUIRE(a->sticks[i].parts.size() == b->sticks[i].parts.size());
        CHECK(a->sticks[i].parts.front().strip == b->sticks[i].parts.front().strip);
    }
    CHECK(a->woods[0].cost == b->woods[0].cost);
}

TEST_CASE("what can't be is told with the nearest that can") {
    FakeBoat boat = makeFakeBoat(6);
    for (Strip& strip : boat.plan.strips) // hardest in the first bay, which leaves no joint out of the rest
        strip.edgeBend.atX = strip.twistAtX = strip.bendAtX = 10.0;
    boat.project.stock = Stock{};
    Stock& stock = *boat.project.stock;

    stock.lots = {lotOf(3)};
    stock.shortestPiece = 900.0; // 3 ft less the ends is shorter than that
    auto made = planStock(boat.project, boat.hull, boat.plan);
    const Finding* finding = findingOf(*made, "stock-boards-too-short");
    REQUIRE(finding);
    CHECK(finding->level == Level::Stop);
    CHECK(finding->text.find("boards of ") != std::string::npos);

    // boards as long as the findings say, for the worst of the strips, do; an inch less doesn't
    stock.shortestPiece = 300.0;
    stock.lots = {lotOf(1.6)};
    made = planStock(boat.project, boat.hull, boat.plan);
    double advised = 0.0;
    for (const Finding& told : made->findings) {
        if (told.code == "stock-boards-too-short")
            advised = std::max(advised, lengthAdvised(told));
    }
    REQUIRE(advised > stock.lots[0].length);
    stock.lots = {lotOf((advised + 1.0) / mmPerFoot)}; // told to the millimetre
    made = planStock(boat.project, boat.hull, boat.plan);
    CHECK(findingOf(*made, "stock-boards-too-short") == nullptr);
    stock.lots = {lotOf((advised - 25.4) / mmPerFoot)};
    made = planStock(boat.project, boat.hull, boat.plan);
    CHECK(findingOf(*made, "stock-boards-too-short") != nullptr);

    stock.lots = {lotOf(12)};
    stock.lots[0].count = 1;
    made = planStock(boat.project, boat.hull, boat.plan);
    finding = findingOf(*made, "stock-not-enough-boards");
    REQUIRE(finding);
    CHECK(made->lots[0].missing == made->lots[0].boards - 1);
    CHECK(finding->text.find(std::to_string(made->lots[0].missing) + " more would do") != std::string::npos);
    CHECK(all(brokenRules(boat.project, boat.hull, boat.plan, *made)) == "");
    stock.lots[0].count = 1 + made->lots[0].missing; // as it says
    made = planStock(boat.project, boat.hull, boat.plan);
    CHECK(findingOf(*made, "stock-not-enough-boards") == nullptr);

    stock.lots = {lotOf(12, "white-ash")};
    made = planStock(boat.project, boat.hull, boat.plan);
    REQUIRE(findingOf(*made, "stock-no-boards"));
    CHECK(made->sticks.empty());

    stock.lots = {lotOf(12)};
    stock.lots[0].thickness = 10.0;
    made = planStock(boat.project, boat.hull, boat.plan);
    CHECK(findingOf(*made, "stock-lot-gives-no-strips"));

    boat.project.stock.reset();
    CHECK_FALSE(planStock(boat.project, boat.hull, boat.plan));
}

TEST_CASE("where only a scarf beside a nib is left, it is made and told") {
    FakeBoat boat = makeFakeBoat(4);
    for (Strip& strip : boat.plan.strips)
        strip.edgeBend.atX = strip.twistAtX = strip.bendAtX = 10.0;
    boat.project.stock = Stock{};
    boat.project.stock->lots = {lotOf(9)};
    std::vector<Strip> stealers; // with nibs amid nearly every bay, more than a boat has
    for (std::size_t bay = 1; bay + 2 < boat.hull.stationX.size(); bay += 2)
        for (const char side : {'S', 'P'}) {
            FakeStrip f;
            f.side = side == 'S' ? Side::Starboard : Side::Port;
            f.id = side + std::string("03.") + std::to_string(bay);
            f.row = 3;
            f.kind = StripKind::Stealer;
            f.firstX = (boat.hull.stationX[bay] + boat.hull.stationX[bay + 1]) / 2;
            f.length = boat.hull.stationX[bay + 1] - boat.hull.stationX[bay];
            Strip stealer = makeFakeStrip(f);
            stealer.ends[0].on = stealer.ends[1].on = EndsOn::Nib;
            stealers.push_back(stealer);
        }
    boat.plan.strips.insert(boat.plan.strips.end(), stealers.begin(), stealers.end());
    const auto made = planStock(boat.project, boat.hull, boat.plan);
    const Finding* finding = findingOf(*made, "stock-scarf-at-nib");
    REQUIRE(finding);
    CHECK(finding->level == Level::Caution);
    CHECK(all(brokenRules(boat.project, boat.hull, boat.plan, *made)) == "");

    double advised = 0.0; // for the worst of the strips
    for (const Finding& told : made->findings)
        if (told.code == "stock-scarf-at-nib" || told.code == "stock-scarf-in-bend")
            advised = std::max(advised, lengthAdvised(told));
    boat.project.stock->lots = {lotOf((advised + 1.0) / mmPerFoot)}; // told to the millimetre
    const auto longer = planStock(boat.project, boat.hull, boat.plan);
    CHECK(findingOf(*longer, "stock-scarf-at-nib") == nullptr);
    CHECK(findingOf(*longer, "stock-scarf-in-bend") == nullptr);
}

TEST_CASE("where all rows can be joined in one bay only, scarfs side by side are told, and longer boards do "
          "without") {
    FakeBoat boat = makeFakeBoat(6);
    boat.hull.stationX = {2300.0, 2700.0};
    for (Strip& strip : boat.plan.strips)
        strip.edgeBend.atX = strip.twistAtX = strip.bendAtX = 10.0; // in no bay
    boat.project.stock = Stock{};
    boat.project.stock->lots = {lotOf(9)};
    const bool twoWoods = GENERATE(false, true);
    if (twoWoods) {
        boat.project.stock->lots.push_back(lotOf(9, "northern-white-cedar"));
        boat.project.stock->lots.back().name = "B";
        boat.project.stock->woodRules = {{"northern-white-cedar", 2, 6, 2, {}, 0}};
    }
    auto made = planStock(boat.project, boat.hull, boat.plan);
    const Finding* finding = findingOf(*made, "stock-scarfs-side-by-side");
    REQUIRE(finding);
    CHECK(finding->level == Level::Caution);
    CHECK(all(brokenRules(boat.project, boat.hull, boat.plan, *made)) == ""); // all else is kept
    for (BoardLot& lot : boat.project.stock->lots)
        lot.length = 17 * mmPerFoot;
    made = planStock(boat.project, boat.hull, boat.plan);
    CHECK(findingOf(*made, "stock-scarfs-side-by-side") == nullptr);
}

TEST_CASE("cost, board feet and weight from their definitions") {
    FakeBoat boat = makeFakeBoat(6);
    boat.project.stock = Stock{};
    boat.project.stock->lots = {lotOf(10)};
    boat.project.stock->lots[0].price = 20.0;
    const auto made = planStock(boat.project, boat.hull, boat.plan);
    const LotUse& use = made->lots[0];
    CHECK(use.cost == 20.0 * use.boards);
    CHECK_THAT(use.boardFeet, WithinAbs(use.boards * 5.5 * 10 / 12, 1e-9)); // 1 in charged, 5 1/2 in, 10 ft
    CHECK(made->woods[0].inMoney);
    // area of the planking as the fake boat's formula gives it: swelling as half a sine, 2/pi of the rise
    double kilograms = 0.0;
    for (const Strip& strip : boat.plan.strips) {
        const double end = strip.samples.front().width, middle = widest(strip);
        const double area = strip.length * (end + (middle - end) * 2 / std::numbers::pi);
        kilograms += area * boat.project.strips.thickness * 358.0 * 1e-9; // kg/m3, wood_handbook.csv
    }
    CHECK_THAT(made->weight, WithinRel(kilograms, 1e-3));
}
