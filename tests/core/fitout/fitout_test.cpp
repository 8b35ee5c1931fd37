#include "core/fitout/fastenings.hpp"
#include "core/fitout/fitout.hpp"
#include "core/fitout/fitout_json.hpp"
#include "core/fitout/fitout_text.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double balance = 1525; // mm from the bow

/// Everything there is, on a pipe of 400 mm.
Project wanted() {
    Project p = test::bareFitout();
    p.strips.thickness = 6;
    FitoutChoices& f = *p.fitout;
    f.gunwales = GunwaleChoices{};
    f.gunwales->inner = {20, 18};
    BulkheadChoice bulkhead;
    bulkhead.fromEnd = 300;
    f.bulkheads = {bulkhead};
    DeckChoice deck;
    deck.end = End::Stern;
    f.decks = {deck};
    SeatChoice seat;
    seat.name = "seat";
    seat.x = 1500;
    seat.belowSheer = 90;
    seat.boltInset = 0;
    seat.caning = CaningChoice{};
    f.seats = {seat};
    ThwartChoice thwart;
    thwart.name = "thwart";
    thwart.x = 900;
    f.thwarts = {thwart};
    f.yoke = ThwartChoice{};
    f.yoke->name = "yoke";
    return p;
}

Fitout made(const Project& project, const LoftedHull& hull) {
    auto planned = planFitout(project, hull, Plan{}, [](const Fitout&) { return balance; });
    REQUIRE(planned);
    REQUIRE(planned->has_value());
    return std::move(**planned);
}

} // namespace

TEST_CASE("a project that asks for nothing gets nothing") {
    const auto planned =
        planFitout(Project{}, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return balance; });
    REQUIRE(planned);
    CHECK_FALSE(planned->has_value());
}

TEST_CASE("every part asked for is there, in the place asked for") {
    const Fitout f = made(wanted(), test::quarterPipe(400, 3000));
    REQUIRE(f.gunwales);
    CHECK(f.gunwales->inner.sheerLength == Approx(3000).margin(0.05));
    CHECK(f.bulkheads.size() == 1);
    CHECK(f.decks.size() == 1);
    REQUIRE(f.seats.size() == 1);
    CHECK(f.seats[0].x == Approx(1500));
    CHECK(f.thwarts.size() == 1);
    REQUIRE(f.yoke);
    CHECK(f.yoke->x == balance); // no x in the file: where she balances
    Project placed = wanted();
    placed.fitout->yoke->x = 1380;
    CHECK(made(placed, test::quarterPipe(400, 3000)).yoke->x == 1380);
}

TEST_CASE("the table's x is moved to the bow's, as everything else of the table") {
    LoftedHull hull = test::quarterPipe(400, 3000);
    hull.xShift = -100;
    CHECK(made(wanted(), hull).seats[0].x == Approx(1400));
    CHECK(made(wanted(), hull).thwarts[0].x == Approx(800));
}

TEST_CASE("without gunwales nothing hangs from them, and it is said") {
    Project p = wanted();
    p.fitout->gunwales.reset();
    const Fitout f = made(p, test::quarterPipe(400, 3000));
    CHECK(f.thwarts.empty());
    CHECK_FALSE(f.yoke);
    CHECK(std::count_if(f.findings.begin(), f.findings.end(), [](const Finding& x) {
              return x.code == "no-gunwales";
          }) == 2);
    for (std::size_t i = 1; i < f.findings.size(); ++i)
        CHECK(f.findings[i - 1].level >= f.findings[i].level);
}

TEST_CASE("the plan's JSON carries the fit-out's own figures") {
    const Fitout f = made(wanted(), test::quarterPipe(400, 3000));
    const auto part = nlohmann::json::parse(fitoutToJson(f));
    CHECK(part["gunwales"]["inner"]["sheer_length"].get<double>() == Approx(3000).margin(0.05));
    CHECK(part["bulkheads"][0]["end"] == "bow");
    CHECK(part["bulkheads"][0]["void_litres"].get<double>() ==
          Approx(std::numbers::pi * 0.4 * 0.4 / 2 * (0.3 - 0.00635) * 1000).epsilon(2e-3));
    // a kilogram of water to the litre, 2.2046 lb to the kilogram
    CHECK(part["bulkheads"][0]["buoyancy_lb"].get<double>() ==
          Approx(2.2046 * part["bulkheads"][0]["void_litres"].get<double>()).epsilon(1e-4));
    CHECK(part["seats"][0]["front_rail"]["bolt"]["hanger"].get<double>() == Approx(90 - 18).margin(0.05));
    CHECK(part["seats"][0]["cleats"].is_null());
    CHECK(part["yoke"]["name"] == "yoke");
}

TEST_CASE("the text says gunwales, ends, seats and yoke in four lines, in either unit") {
    const Fitout f = made(wanted(), test::quarterPipe(400, 3000));
    using Catch::Matchers::Contains;
    const std::string mm = toText(f, Units::Millimetres);
    CHECK(std::count(mm.begin(), mm.end(), '\n') == 4);
    CHECK_THAT(mm, Contains("inner 3100 mm in 1 piece"));                    // 50 mm left over at each end
    CHECK_THAT(mm, Contains("1 bulkhead, 74 litres of air behind; 1 deck")); // half a pipe of 0.4 m
    CHECK_THAT(mm, Contains("seat 779 mm and 779 mm wide inside"));          // 2 sqrt(400^2 - 90^2)
    CHECK_THAT(mm, Contains("thwart 799 mm"));                               // 18 mm under it
    CHECK_THAT(mm, Contains("1525 mm from the bow"));
    CHECK_THAT(toText(f, Units::Inches),
               Contains("inner 10' 2 1/4\" in 1 piece")); // 122.05 in, and never less
}

TEST_CASE("legs find the next thwart, seat or bulkhead before a seat, and too little room is told") {
    Project p = wanted();
    const auto told = [&] {
        const Fitout f = made(p, test::quarterPipe(400, 3000));
        const auto found =
            std::ranges::find_if(f.findings, [](const Finding& one) { return one.code == "leg-room"; });
        return found == f.findings.end() ? std::string() : found->text;
    };
    // the seat's edge at 1500 - 127, the thwart's after edge at 900 + 28.575
    p.fitout->seats[0].legRoom = 444;
    CHECK(told().empty());
    p.fitout->seats[0].legRoom = 445;
    CHECK(told().find("to the thwart") != std::string::npos);
    p.fitout->thwarts.clear(); // then the bow bulkhead at 300
    CHECK(told().empty());
    p.fitout->seats[0].legRoom = 1100;
    CHECK(told().find("bow bulkhead") != std::string::npos);
    p.fitout->seats[0].legRoom = 0;
    CHECK(told().empty());
}

TEST_CASE("screws of the builder's own length are used as told, and told where they do not fit") {
    Project p = wanted();
    p.fitout->gunwales->outer = {21, 18};
    const auto code = [&](double length) {
        p.fitout->gunwales->screwLength = length;
        const Fitout f = made(p, test::quarterPipe(400, 3000));
        CHECK(planFastenings(p, f).front().length == length);
        return std::ranges::any_of(f.findings, [](const Finding& one) { return one.code == "screw-length"; });
    };
    // 20 + 6 less 6 under the plug, then 21 of the outer one
    CHECK_FALSE(code(27.5));
    CHECK(code(26.5));
    CHECK_FALSE(code(40.5));
    CHECK(code(41));
    p.fitout->gunwales->screwDiameter = 5;
    p.fitout->boltDiameter = 8;
    const auto all = planFastenings(p, made(p, test::quarterPipe(400, 3000)));
    CHECK(all.front().diameter == 5);
    CHECK(all.back().diameter == 8);
}
