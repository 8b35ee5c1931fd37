#include "core/sheets/unrolled.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/sheet_reading.hpp"

using namespace sheerlay;
using namespace sheerlay::core;
using test::wordsOf;

namespace {

double areaOf(const std::vector<Eigen::Vector2d>& outline) {
    double twice = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Eigen::Vector2d& a = outline[i];
        const Eigen::Vector2d& b = outline[(i + 1) % outline.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(twice) / 2;
}

} // namespace

TEST_CASE("unrolling keeps every strip's area and stacks full rows edge to edge") {
    test::FakeBoat boat = test::makeFakeBoat(12);
    const std::vector<UnrolledStrip> unrolled = unroll(boat.plan, boat.hull, Side::Starboard);
    double girth = 0.0;
    for (const UnrolledStrip& laid : unrolled) {
        const double flat = areaOf(laid.strip->outline);
        CHECK(areaOf(laid.outline) == Approx(flat).epsilon(2e-3));
        if (laid.strip->row < 1 || laid.strip->side == Side::Centre)
            continue;
        const double half = laid.strip->length / 2,
                     width = laid.strip->samples[laid.strip->samples.size() / 2].width;
        CHECK(laid.at(half, -1.0).y() == Approx(girth).margin(0.05));
        CHECK(laid.at(half, 1.0).y() == Approx(girth + width).margin(0.05));
        CHECK(laid.at(half, 0.0).x() == Approx(0.0).margin(1e-6)); // amidships is where the section is widest
        girth += width;
    }
    CHECK(unrolled.size() == 15); // 12 rows, two fillers, the shutter
}

TEST_CASE("a stealer has a band of its own above the strip that it is let in to") {
    test::FakeBoat boat = test::makeFakeBoat(6);
    std::vector<Strip> strips;
    for (const Strip& strip : boat.plan.strips) {
        strips.push_back(strip);
        if (strip.row != 3)
            continue;
        strips.back().kind = StripKind::Stealer;
        strips.push_back(strip);
    }
    boat.plan.strips = strips;
    double girth = 0.0;
    for (const UnrolledStrip& laid : unroll(boat.plan, boat.hull, Side::Starboard)) {
        if (laid.strip->row < 1 || laid.strip->side == Side::Centre)
            continue;
        INFO(laid.strip->id);
        const double half = laid.strip->length / 2;
        CHECK(laid.at(half, -1.0).y() == Approx(girth).margin(0.05));
        girth += laid.strip->samples[laid.strip->samples.size() / 2].width;
        CHECK(laid.at(half, 1.0).y() == Approx(girth).margin(0.05));
    }
}

TEST_CASE("a piece that doesn't reach the widest section stands at its own place of the boat") {
    const test::FakeBoat boat = test::makeFakeBoat(5);
    for (const UnrolledStrip& laid : unroll(boat.plan, boat.hull, Side::Port)) {
        if (laid.strip->row != -1)
            continue;
        // x grows one to one along every made-up strip, so places are x less the widest section's
        const double x = laid.strip->samples.front().x;
        CHECK(laid.middle.front().x() == Approx(x - boat.hull.laid.halfGirthMaxX).margin(0.5));
        CHECK(laid.middle.front().y() < 0.0);
    }
}

TEST_CASE("the wall map names every strip, keeps its margins and lets no words cover others") {
    for (const int rows : {6, 20, 37}) {
        const test::FakeBoat boat = test::makeFakeBoat(rows);
        for (const Units units : {Units::Millimetres, Units::Inches}) {
            const Sheet sheet = wallMap(boat.project, boat.hull, boat.plan, units);
            INFO(rows << " rows on " << sheet.width);
            CHECK(test::outside(sheet, 8.0) == "");
            CHECK(test::overlapping(sheet) == "");
            std::string words(1, ' ');
            words += wordsOf(sheet);
            for (const Strip& strip : boat.plan.strips)
                CHECK(words.find(" " + strip.id + " ") != std::string::npos);
            for (const char* wanted :
                 {"woven ends, rows 1 to", "closing", "clamp", "shutter", "port above, starboard below"})
                CHECK(words.find(wanted) != std::string::npos);
            CHECK(((sheet.width == 594.0 && sheet.height == 420.0) ||
                   (sheet.width == 841.0 && sheet.height == 594.0) ||
                   (sheet.width == 1189.0 && sheet.height == 841.0)));
        }
    }
}

TEST_CASE("more rows ask for larger paper") {
    const auto paper = [](int rows) {
        const test::FakeBoat boat = test::makeFakeBoat(rows);
        return wallMap(boat.project, boat.hull, boat.plan, Units::Millimetres).width;
    };
    CHECK(paper(6) < paper(37));
}

TEST_CASE("port lies above the keel and starboard below, sheer outward, as seen from outside upside down") {
    const test::FakeBoat boat = test::makeFakeBoat(9);
    const Sheet sheet = wallMap(boat.project, boat.hull, boat.plan, Units::Millimetres);
    const auto heightOf = [&](const std::string& id) {
        for (const Text& text : test::textsOf(sheet))
            if (test::lineOf(text).starts_with(id + ' '))
                return text.at.y();
        FAIL("no name " << id);
        return 0.0;
    };
    CHECK(heightOf("P01") < heightOf("P09"));
    CHECK(heightOf("P09") < heightOf("C10"));
    CHECK(heightOf("C10") < heightOf("S09"));
    CHECK(heightOf("S09") < heightOf("S01"));
}
