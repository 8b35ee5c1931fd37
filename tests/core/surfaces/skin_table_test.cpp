#include "core/surfaces/skin_table.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/given_hull.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

HalfSkin skinOf(const GivenParts& parts) {
    const auto given = givenHull(parts);
    const auto axes = boatAxes(given.mesh, {});
    REQUIRE(axes.has_value());
    const auto skin = halfSkin(given, *axes, {});
    REQUIRE(skin.has_value());
    return *skin;
}

} // namespace

TEST_CASE("stations stand at round figures, with points on the skin") {
    const HullFormula f;
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const auto table = skinTable(skinOf({}), units);
        REQUIRE(table.has_value());
        REQUIRE(table->stations.size() > 40);
        const double step = units == Units::Inches ? 76.2 : 100.0;
        int round = 0;
        for (const Station& s : table->stations) {
            round += std::abs(std::remainder(s.x, step)) < 1e-3 ? 1 : 0;
            CHECK(s.x == std::round(s.x * 1000) / 1000); // so it is written in few digits
            REQUIRE(s.keel.has_value());
            CHECK_THAT(s.sheer.height, WithinAbs(f.sheer(s.x), 0.1)); // chords of 26 mm
            CHECK_THAT(s.keel->height, WithinAbs(f.keel(s.x), 0.6));
            CHECK(s.keel->halfBreadth == 0.0);
            for (const TablePoint& p : s.points)
                CHECK(std::abs(f.off({s.x, p.halfBreadth, p.height})) <
                      0.5); // chords of a 32nd of a quarter turn
        }
        CHECK(round > 35);
        CHECK(table->transoms.empty());
        CHECK(table->profile.size() >= 4); // the stems
        CHECK(std::ranges::is_sorted(table->stations, {}, &Station::x));
    }
}

TEST_CASE("a transom has a station just inside it") {
    const auto table = skinTable(skinOf({.end = 0.8}), Units::Millimetres);
    REQUIRE(table.has_value());
    REQUIRE(table->transoms.size() == 1);
    CHECK(table->transoms.front().end == End::Stern);
    CHECK_THAT(table->transoms.front().xAtSheer, WithinAbs(3360, 0.01));
    CHECK_THAT(table->stations.back().x, WithinAbs(3359.99, 0.01));
}

TEST_CASE("a section of two lines is refused with its place") {
    HalfSkin skin = skinOf({});
    // a second skin inside the first, as the inner face of a thick one
    geometry::Mesh inner = skin.mesh;
    for (auto& p : inner.points)
        p.y() *= 0.98;
    skin.mesh = geometry::together(skin.mesh, inner);
    const auto table = skinTable(skin, Units::Millimetres);
    REQUIRE_FALSE(table.has_value());
    CHECK(table.error().found.find("a section of 2 lines") != std::string::npos);
    CHECK(table.error().found.find("mm from the bow") != std::string::npos);
}
