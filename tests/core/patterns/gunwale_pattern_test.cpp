#include "core/fitout/fitout.hpp"
#include "core/fitout/rings.hpp"
#include "core/patterns/gunwale_pattern.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

constexpr double degree = std::numbers::pi / 180;

Gunwales gunwalesOn(const LoftedHull& hull, double stock = 3657.6, bool rabbet = false) {
    Project p = test::bareFitout();
    p.strips.thickness = 6;
    p.fitout->gunwales = GunwaleChoices{};
    p.fitout->gunwales->outer = {20, 18};
    p.fitout->gunwales->inner = {16, 18};
    p.fitout->gunwales->stockLength = stock;
    if (rabbet)
        p.fitout->gunwales->edge = GunwaleChoices::Edge::Rabbet;
    const auto faces = facesOf(p, hull);
    REQUIRE(faces);
    return planGunwales(p, hull, *faces).gunwales;
}

SheerPoint leaning(double flare, double along) {
    SheerPoint p;
    p.point = {0, along, 0};
    p.along = {1, 0, 0};
    p.out = {0, 1, 0};
    p.up = {0, 0, 1};
    p.flare = flare;
    return p;
}

double widest(const std::vector<Vector2d>& ring) {
    double from = 1e9, to = -1e9;
    for (const Vector2d& p : ring) {
        from = std::min(from, p.x());
        to = std::max(to, p.x());
    }
    return to - from;
}

} // namespace

TEST_CASE("plumb gunwales are planed against a side that leans, and nowhere wider than their stock") {
    Gunwales g;
    g.outer.size = {20, 18};
    g.inner.size = {16, 18};
    for (const double flare : {12 * degree, -7 * degree, 0.0}) {
        const GunwaleSection s = gunwaleSection(g, leaning(flare, 6), leaning(flare, 0), 40);
        // a wedge of height 18 and that angle is planed off
        const double wedge = 0.5 * 18 * 18 * std::tan(std::abs(flare));
        CHECK(ringArea(s.outer) == Approx(20 * 18 - wedge));
        CHECK(ringArea(s.inner) == Approx(16 * 18 - wedge));
        CHECK(widest(s.outer) == Approx(20));
        CHECK(widest(s.inner) == Approx(16));
        // the planking lies between: 6 level, 40 down
        CHECK(ringArea(s.planking) == Approx(6 * 40));
        CHECK(s.outer[3].x() == Approx(-18 * std::tan(flare)));
        CHECK(s.inner[3].x() == Approx(-6 - 18 * std::tan(flare)));
    }
}

TEST_CASE("along the side the sticks lean with it; a rabbet's lip covers the planking's edge") {
    Gunwales g;
    g.outer.size = {20, 18};
    g.inner.size = {16, 18};
    SheerPoint side = leaning(12 * degree, 0);
    side.out = {0, std::cos(12 * degree), -std::sin(12 * degree)};
    const GunwaleSection s = gunwaleSection(g, side, side, 40);
    CHECK(ringArea(s.outer) == Approx(20 * 18));
    CHECK((s.outer[3] - s.outer[0]).norm() == Approx(18));
    CHECK(std::atan2(s.outer[0].x() - s.outer[3].x(), s.outer[0].y() - s.outer[3].y()) ==
          Approx(12 * degree));

    g.rabbet = 6;
    const GunwaleSection lapped = gunwaleSection(g, leaning(0, 6), leaning(0, 0), 40);
    CHECK(ringArea(lapped.outer) == Approx(20 * 18 + 26 * 6)); // lip 6 high over stick and planking
    CHECK(widest(lapped.outer) == Approx(26));
}

TEST_CASE("ends are cut to the angle at which the sheer comes to the centreline") {
    // the outer sheer is a circle of 5406 about an axis 5000 to port: it comes in at acos(5000 / 5406)
    const Gunwales g = gunwalesOn(test::tubeBoat(5000, 400), 1700);
    const auto patterns = gunwalePatterns(g, Units::Millimetres);
    REQUIRE(patterns.size() == 2);
    CHECK(std::ranges::any_of(
        patterns[0].texts, [](const PatternText& t) { return t.text.find("station") != std::string::npos; }));
    const Pattern& pattern = patterns[1];
    const double outer = std::acos(5000.0 / 5406), inner = std::acos(5000.0 / 5400);
    int found = 0, scarfs = 0, outboardUp = 0;
    for (const PatternLine& line : pattern.lines) {
        if (line.layer != Layer::Cut || line.points.size() != 4)
            continue;
        const Vector2d cut = line.points[0] - line.points[3];
        const double w = -cut.y(), point = std::min(line.points[0].x(), line.points[3].x());
        if (std::abs(line.points[1].x() - point - 120) < 1e-9) { // an end of 120 mm
            CHECK(std::atan2(w, std::abs(cut.x())) == Approx(w > 18 ? outer : inner).margin(0.05 * degree));
            outboardUp += cut.x() > 0 ? 1 : 0;
            ++found;
        } else {
            ++scarfs;
        }
    }
    CHECK(found == 4);
    CHECK(outboardUp == 2); // the longer side is the outboard one: up at the bow, down at the stern
    CHECK(scarfs == 4);     // two sticks of the outer's joint, two of the inner's
    for (const char* words : {"scarf of the outer", "scarf of the inner", "to the centreline"})
        CHECK(std::ranges::any_of(
            pattern.texts, [&](const PatternText& t) { return t.text.find(words) != std::string::npos; }));
}

TEST_CASE("at a transom they are cut to it, and a stick that needs no scarf shows none") {
    const Pattern pattern = gunwalePatterns(gunwalesOn(test::quarterPipe(400, 3000)), Units::Inches).back();
    CHECK(std::ranges::none_of(
        pattern.texts, [](const PatternText& t) { return t.text.find("scarf") != std::string::npos; }));
    CHECK(std::ranges::count_if(pattern.texts, [](const PatternText& t) {
              return t.text.find("to the transom, 90.0\u00B0") != std::string::npos;
          }) == 4);
}
