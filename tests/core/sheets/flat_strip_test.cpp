#include "core/sheets/flat_strip.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"

using namespace sheerlay;

namespace {

/// Both edges lie straight, half a width off the middle.
void checkWidths(const core::FlatStrip& flat, const test::FakeStrip& fake) {
    for (std::size_t i = 0; i < flat.straight.size(); ++i) {
        const double across = i < flat.upperCount ? -fake.width / 2 : fake.width / 2;
        CHECK(flat.straight[i].y() == Approx(across).margin(0.15));
    }
}

} // namespace

TEST_CASE("a circular strip comes out straight, true in length and width") {
    for (const double bend : {0.0, 0.2e-3, -0.35e-3}) {
        test::FakeStrip fake;
        fake.edgeBend = bend;
        fake.cut = 0.7;
        const core::Strip strip = test::makeFakeStrip(fake);
        const core::FlatStrip flat = core::layStraight(strip);
        REQUIRE(flat.straight.size() == strip.outline.size());
        const double slant = fake.endWidth / 2 / std::tan(fake.cut);
        checkWidths(flat, fake);
        CHECK(flat.straight.front().x() == Approx(-slant).margin(0.15));
        CHECK(flat.straight[flat.upperCount - 1].x() == Approx(fake.length + slant).margin(0.15));
        CHECK(flat.straight.back().x() == Approx(slant).margin(0.15));
    }
}

TEST_CASE("a long tip lies straight as well, in line with its edge") {
    for (const double bend : {0.35e-3, -0.35e-3}) {
        test::FakeStrip fake;
        fake.edgeBend = bend;
        fake.cut =
            0.027; // tips of 0.3 m past the middle's ends; tangents would leave the edge by 15 mm there
        const core::Strip strip = test::makeFakeStrip(fake);
        const core::FlatStrip flat = core::layStraight(strip);
        REQUIRE(flat.straight.size() == strip.outline.size());
        const double slant = fake.endWidth / 2 / std::tan(fake.cut);
        checkWidths(flat, fake);
        CHECK(flat.straight.front().x() == Approx(-slant).margin(0.5));
        CHECK(flat.straight[flat.upperCount - 1].x() == Approx(fake.length + slant).margin(0.5));
        for (const double s : {-0.9 * slant, fake.length + 0.9 * slant})
            CHECK((flat.curvedAt(s, -fake.width / 2) - test::fakePoint(fake, s, -fake.width / 2)).norm() <
                  0.5);
    }
}

TEST_CASE("port comes out as its starboard mirror image") {
    test::FakeStrip fake;
    fake.edgeBend = 0.3e-3;
    const core::FlatStrip starboard = core::layStraight(test::makeFakeStrip(fake));
    fake.side = core::Side::Port;
    const core::FlatStrip port = core::layStraight(test::makeFakeStrip(fake));
    REQUIRE(port.straight.size() == starboard.straight.size());
    for (std::size_t i = 0; i < port.straight.size(); ++i)
        CHECK((port.straight[i] - starboard.straight[i]).norm() < 1e-9);
}

TEST_CASE("a place on the straight strip leads back to the curved one") {
    test::FakeStrip fake;
    fake.edgeBend = -0.3e-3;
    const core::FlatStrip flat = core::layStraight(test::makeFakeStrip(fake));
    for (const double s : {10.0, 900.0, 2400.0, 4700.0})
        for (const double d : {-7.0, 0.0, 7.0})
            CHECK((flat.curvedAt(s, d) - test::fakePoint(fake, s, d)).norm() < 0.1);
}

TEST_CASE("an outline that is none gives no flat strip") {
    core::Strip strip;
    CHECK(core::layStraight(strip).straight.empty());
    strip.outline = {{0, 0}, {10, 0}, {10, 5}};
    strip.outlineUpperCount = 2;
    CHECK(core::layStraight(strip).straight.empty());
}

TEST_CASE("stations are crossed in order, where x says and as wide as the strip is there") {
    test::FakeStrip fake;
    fake.firstX = 100.0;
    fake.length = 2000.0;
    fake.endWidth = 10.0;
    const core::Strip strip = test::makeFakeStrip(fake);
    const std::vector<double> stations{0.0, 100.0, 612.5, 1100.0, 2100.0, 2400.0};
    const std::vector<core::StationMark> marks = core::stationMarks(strip, stations);
    REQUIRE(marks.size() == 4); // 0 and 2400 lie beyond its ends; its own ends count
    for (std::size_t i = 0; i < marks.size(); ++i) {
        CHECK(marks[i].station == i + 1);
        CHECK(marks[i].along == Approx(stations[i + 1] - 100.0).margin(1e-9));
        CHECK(marks[i].width == Approx(test::fakeWidth(fake, marks[i].along)).margin(0.15));
    }
    CHECK(core::widthAt(strip, 1000.0) == Approx(fake.width));
    CHECK(core::widthAt(strip, -50.0) == Approx(10.0));
    CHECK(core::widthAt(strip, 9999.0) == Approx(10.0));
    CHECK(core::widthAt(core::Strip{}, 5.0) == 0.0);
}
