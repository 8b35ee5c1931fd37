#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

// Hulls no one would row, but every figure of their planking is a closed form.

namespace {

constexpr double pi = std::numbers::pi;

Project plain(double cover) {
    Project p;
    p.strips.coverWidth = cover;
    p.planking.layOn = LayOn::Moulds;
    return p;
}

} // namespace

TEST_CASE("a quarter pipe takes straight strips of one width, and one over the keel") {
    const double R = 400, length = 3000, w = 20; // girth 200 pi = 31.4 strips
    const LoftedHull hull = quarterPipe(R, length);
    const Plan plan = plank(plain(w), hull).value();
    CHECK(plan.firstRow == 1);
    CHECK(plan.lastRow == 32);
    const auto starboard = stripsOf(plan, Side::Starboard);
    REQUIRE(starboard.size() == 31);
    for (const Strip* s : starboard) {
        INFO(s->id);
        CHECK(s->kind == StripKind::Full);
        CHECK_THAT(s->length, WithinAbs(length, 1e-3));
        CHECK_THAT(lengthOf(s->upperEdge), WithinAbs(length, 1e-3));
        CHECK(s->edgeBend.maxAbs < 1e-8);
        CHECK(s->twistMax < 1e-8);
        CHECK(s->strainMax < 1e-3);
        for (const Vector3d& p : s->lowerEdge)
            CHECK_THAT(std::atan2(-p.z(), p.y()) * R, WithinAbs(w * s->row, 1e-4));
        for (const StripSample& sample : s->samples)
            CHECK_THAT(sample.width, WithinAbs(w, 1e-6));
        for (const StripEnd& e : s->ends) {
            CHECK(e.on == EndsOn::Transom);
            CHECK_THAT(e.cut, WithinAbs(pi / 2, 1e-6));
            CHECK_THAT(e.bevel, WithinAbs(0, 1e-6)); // a plumb transom square to the strips
            CHECK(e.lap == 0.0);
        }
        // flat it is a rectangle
        REQUIRE(s->outlineUpperCount >= 2);
        for (std::size_t i = 0; i < s->outline.size(); ++i) {
            CHECK_THAT(s->outline[i].y(), WithinAbs(i < s->outlineUpperCount ? -w / 2 : w / 2, 1e-3));
            CHECK(s->outline[i].x() > -1e-3);
            CHECK(s->outline[i].x() < length + 1e-3);
        }
    }
    // what is left, 8.3 mm on each side, is one plank
    const auto centre = stripsOf(plan, Side::Centre);
    REQUIRE(centre.size() == 1);
    CHECK(centre[0]->id == "C32");
    CHECK(centre[0]->kind == StripKind::Shutter);
    CHECK_THAT(plan.coverage.hullArea, WithinRel(length * R * pi / 2, 1e-6));
    CHECK(plan.coverage.largestGap < 1e-3);
    CHECK(plan.coverage.largestOverlap < 1e-3);
    CHECK_FALSE(plan.marks.weaveBow.has_value());
}

TEST_CASE("a closing plank between two transoms is whole from end to end") {
    const double R = 400, length = 3000;
    for (const double w : {20.0, 22.0}) { // 8.3 mm left on each side: one plank; 12.3 mm: one on each side
        const Plan plan = plank(plain(w), quarterPipe(R, length)).value();
        const double left = R * pi / 2 - w * std::floor(R * pi / 2 / w);
        int closing = 0;
        for (const Strip& s : plan.strips) {
            if (s.kind != StripKind::Shutter)
                continue;
            ++closing;
            INFO(s.id);
            CHECK_THAT(s.length, WithinAbs(length, 0.1));
            CHECK_THAT(s.widths.back()[0], WithinAbs(length, 0.1));
            for (const auto& width : s.widths)
                CHECK_THAT(width[1], WithinAbs(s.side == Side::Centre ? 2 * left : left, 0.01));
        }
        CHECK(closing == (w == 20 ? 1 : 2));
        CHECK_THAT(plan.coverage.stripsArea, WithinRel(length * R * pi / 2, 1e-4));
    }
}

TEST_CASE("with more than half a strip left each side closes with its own") {
    const double R = 400,
                 w = 25; // 25.13 strips: 3.3 mm left; then 24: 26.18 strips, 4.3 mm; 22: 28.56, 12.3 mm
    const Plan one = plank(plain(w), quarterPipe(R, 3000)).value();
    CHECK(stripsOf(one, Side::Centre).size() == 1);
    const Plan two = plank(plain(22), quarterPipe(R, 3000)).value();
    CHECK(stripsOf(two, Side::Centre).empty());
    const auto starboard = stripsOf(two, Side::Starboard);
    REQUIRE(starboard.size() == 29);
    CHECK(starboard.back()->kind == StripKind::Shutter);
    for (const StripSample& s : starboard.back()->samples)
        CHECK_THAT(s.width, WithinAbs(R * pi / 2 - 28 * 22, 0.01));
}

TEST_CASE("a quarter sphere planked from its great circle: rows are latitudes") {
    const double R = 800, w = 20;
    const LoftedHull hull = quarterSphere(R);
    CHECK_THAT(hull.laid.halfArea, WithinRel(pi * R * R, 1e-4));
    CHECK_THAT(hull.laid.halfGirthMax, WithinAbs(R * pi / 2, 0.1));
    const Plan plan = plank(plain(w), hull).value();
    const auto starboard = stripsOf(plan, Side::Starboard);
    REQUIRE(starboard.size() > 45);
    for (const Strip* s : starboard) {
        const double lat = (s->row - 0.5) * w / R; // of the middle
        INFO(s->id << ", middle at latitude " << lat);
        CHECK_THAT(s->edgeBend.signedMax, WithinRel(std::tan(lat) / R, 1e-3)); // toward the keel
        CHECK_THAT(s->edgeBend.signedMin, WithinRel(std::tan(lat) / R, 1e-3));
        CHECK_THAT(s->length, WithinAbs(pi * R * std::cos(lat), 0.2)); // chords of 16 mm
        CHECK(s->twistMax < 1e-6);
        REQUIRE(s->bendMinRadius.has_value());
        CHECK_THAT(*s->bendMinRadius, WithinRel(R, 1e-3));
        for (const Vector3d& p : s->middle)
            CHECK_THAT(-p.z(), WithinAbs(R * std::sin(lat), 1e-3));
        for (const StripEnd& e : s->ends)
            CHECK_THAT(e.cut, WithinAbs(pi / 2, 1e-3)); // a latitude crosses a meridian squarely
    }
    // near the pole the rows would fold: it says so and keeps the sound ones
    const bool told = std::any_of(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
        return f.code == "rows-fold" && f.level == Level::Stop;
    });
    CHECK(told);
    CHECK(plan.findings.front().level == Level::Stop); // heaviest first
    // J = cos(latitude): 0.2 is met after 80 percent of the way
    CHECK_THAT(static_cast<double>(plan.lastRow) * w, WithinAbs(R * std::acos(0.2), 2 * w));
}

TEST_CASE("a quarter sphere's strips cover what they cover: zones") {
    const double R = 800, w = 20;
    const Plan plan = plank(plain(w), quarterSphere(R)).value();
    // half a zone between two latitudes: pi R^2 (sin b - sin a)
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(pi * R * R * std::sin(plan.lastRow * w / R), 1e-4));
    CHECK(plan.coverage.largestGap < 1e-2);
    CHECK(plan.coverage.largestOverlap < 1e-2);
}

TEST_CASE("a geodesic start on a sphere is a great circle as well, with rows on both sides") {
    const double R = 800, w = 20, girth = 300;
    Project p = plain(w);
    p.planking.start.kind = StartLine::Kind::Geodesic;
    p.planking.start.girth = girth;
    const Plan plan = plank(p, quarterSphere(R)).value();
    CHECK(plan.firstRow < 0);
    // the great circle through the point 300 mm down amidships, tangent to x there: it is the sheer tilted
    // about the x axis, and its normal is
    const double tilt = girth / R;
    const Vector3d axis(0, std::sin(tilt), std::cos(tilt)); // points above the start are on its positive side
    int checked = 0;
    for (const Strip* s : stripsOf(plan, Side::Starboard)) {
        const double off = (s->row > 0 ? s->row - 0.5 : s->row + 0.5) * w / R; // below the start, in radians
        if (s->kind != StripKind::Full)
            continue;
        ++checked;
        INFO(s->id);
        for (const StripSample& sample : s->samples)
            CHECK_THAT(sample.edgeBend, WithinAbs(std::tan(off) / R, 2e-6)); // + toward the keel
        for (const Vector3d& q : s->middle) {
            const double above = axis.dot(q - Vector3d(R, 0, 0));
            CHECK_THAT(above, WithinAbs(-R * std::sin(off), 1e-2));
        }
    }
    CHECK(checked > 20);
}
