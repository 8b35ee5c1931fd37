#include "core/planking/difficulty.hpp"
#include "core/sheets/words.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"

#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

constexpr Units mm = Units::Millimetres, inches = Units::Inches;
constexpr double degree = std::numbers::pi / 180.0;

namespace {

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("predicted figures say no more than the plan can promise") {
    CHECK(widthText(14.04, mm) == "14.0 mm");
    CHECK(widthText(25.4 * 0.63, inches) == "5/8\"");
    CHECK(radiusText(5555.0, mm) == "5.6 m");
    CHECK(radiusText(14210.0, mm) == "14 m");
    CHECK(radiusText(123456.0, mm) == "120 m");
    CHECK(radiusText(304.8 * 18.2, inches) == "18 ft");
    CHECK(twistText(12.3 * degree / 304.8, inches) == "12.5 degrees in a foot");
    CHECK(twistText(-14.1 * degree / 304.8, inches) == "14 degrees in a foot");
    CHECK(twistText(45.2 * degree / 1000.0, mm) == "46 degrees in a metre");
    CHECK(forceText(28.2, mm) == "30 N (6 lb)");
    CHECK(forceText(28.2, inches) == "6 lb (30 N)");
    CHECK(angleText(51.6 * degree) == "52\u00B0");
    CHECK(stockText(19.05, mm) == "19.05 mm");
    CHECK(stockText(6.0, mm) == "6 mm");
    CHECK(stockText(6.35, inches) == "1/4\"");
    CHECK(runText(184200.0, mm) == "185 m");
}

TEST_CASE("the sag is that of a circle through a straight edge's ends") {
    for (const double bend : {0.05e-3, 0.15e-3, 0.3e-3}) {
        const double radius = 1.0 / bend, half = 1000.0;
        const double exact = radius - std::sqrt(radius * radius - half * half);
        CHECK(sagOver(bend, 2000.0) == Approx(exact).epsilon(0.025));
    }
    CHECK(sagText(0.2e-3, mm) == "100 mm over 2 m");
    CHECK(sagText(-0.2e-3, mm) == "100 mm over 2 m");
    CHECK(sagText(0.2013e-3, mm) == sagText(0.1987e-3, mm)); // both print as 0.20 /m
    CHECK(sagText(0.1e-3, inches) == "3\" over 8 ft");       // 0.1e-3 * 2438.4^2 / 8 = 74.3 mm = 2.93 in
}

TEST_CASE("places are told by the stations around them") {
    const test::FakeBoat boat = test::makeFakeBoat(1); // stations every foot, from x = 5
    const Places places(boat.project, boat.hull);
    CHECK(places.at(5.0 + 304.8 * 3) == "at station 3-0-0");
    CHECK(places.at(5.0 + 304.8 * 3.05) == "at station 3-0-0");
    CHECK(places.at(5.0 + 304.8 * 3.5) == "between stations 3-0-0 and 4-0-0");
    CHECK(places.at(-100.0) == "forward of station 0-0-0");
    CHECK(places.at(5200.0) == "aft of station 16-0-0");
}

TEST_CASE("each kind of end has its own sentence, with lap and bevel where there are any") {
    StripEnd end;
    end.cut = 52 * degree;
    end.bevel = 22 * degree;
    end.lap = 12.2;
    CHECK(endText(end, mm) ==
          "woven at the stem, 52\u00B0 to its line. Let it run about 12 mm past the centreplane, then cut it "
          "back. Bevel the end face by 22\u00B0.");
    end.weave = Weave::Passes; // of starboard, where both are told
    CHECK(has(endText(end, mm), "Let it run about 12 mm past"));
    CHECK(has(
        endText(end, mm, true),
        "Let starboard run about 12 mm past the centreplane, then cut it back; fit port against its inner "
        "face."));
    end.weave = Weave::Fitted;
    CHECK(has(endText(end, mm), "Fit it against the inner face of the other side's strip, which passes."));
    CHECK(has(endText(end, mm, true), "Let port run about 12 mm past"));
    end.weave = Weave::None;
    end.lap = end.bevel = 0.0;
    CHECK(endText(end, mm) == "lands on the stem, 52\u00B0 to its line.");
    end.landing = 9.2;
    CHECK(endText(end, mm) == "lands on the stem, 52\u00B0 to its line, with about 9 mm of wood on wood.");
    end.landing = 0.0;
    std::vector<std::string> seen;
    for (const EndsOn on :
         {EndsOn::Stem, EndsOn::Keel, EndsOn::Transom, EndsOn::Sheer, EndsOn::Strip, EndsOn::Nib}) {
        end.on = on;
        const std::string text = endText(end, mm);
        CHECK(text.ends_with("."));
        CHECK(std::find(seen.begin(), seen.end(), text) == seen.end());
        seen.push_back(text);
    }
}

TEST_CASE("an end at the keel line says which side runs past it and what becomes of that") {
    StripEnd end;
    end.on = EndsOn::Keel;
    end.cut = 12 * degree;
    end.crossing = KeelCrossing{50.2, true, false}; // run over: port
    CHECK(has(endText(end, mm), "Let it run about 50 mm past the centreline, square, and plane it back"));
    end.crossing->first = false;
    CHECK(has(endText(end, mm), "Fit its point against port's planed edge."));
    CHECK(has(endText(end, mm, true),
              "Let port run about 50 mm past the centreline, square, and plane it back"));
    end.on = EndsOn::Strip;
    end.crossing = KeelCrossing{29.0, true, true}; // herringbone
    CHECK(has(endText(end, mm),
              "Let it run about 29 mm past the centreline and cut it along the other side's"));
    CHECK(has(endText(end, mm, true), "Let the side laid first run about 29 mm past the centreline; cut it"));
    end.crossing->first = false;
    CHECK(has(endText(end, mm), "Cut it along the other side's edge, about 29 mm short of the centreline."));
}
