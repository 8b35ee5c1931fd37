#include "core/hull/trimmed_surface.hpp"
#include "core/lines/hull_lines.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/spheroid_hull.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// The lines of a half spheroid, ellipses and circles all of them, against closed forms.

namespace {

TrimmedSurface hullOf(double a, double b) {
    return trimSurface(SpheroidHull{a, b}.surface(), {}).value();
}

double ellipseCurvature(double a, double b, double x, double y) {
    return 1 / (a * a * b * b * std::pow(x * x / std::pow(a, 4) + y * y / std::pow(b, 4), 1.5));
}

std::vector<HullLine> of(const std::vector<HullLine>& lines, LineFamily family) {
    std::vector<HullLine> some;
    std::copy_if(lines.begin(), lines.end(), std::back_inserter(some), [&](const HullLine& l) {
        return l.family == family;
    });
    return some;
}

} // namespace

TEST_CASE("sheer, keel, waterline, buttock and diagonal of a spheroid bend as their ellipses do") {
    constexpr double a = 2500, b = 400;
    const TrimmedSurface hull = hullOf(a, b);
    LineChoices choices;
    choices.stations = {-600, 0, 1500};
    choices.waterlines = {-150};
    choices.buttocks = {150};
    choices.diagonals = {{0, 0.7}};
    const std::vector<HullLine> lines = hullLines(hull, choices);
    const auto check = [&](LineFamily family, auto expected) {
        const auto found = of(lines, family);
        REQUIRE(found.size() == 1);
        int points = 0;
        for (const HullLinePoint& q : found[0].points)
            if (std::abs(q.p.x()) < 0.8 * a) {
                CHECK_THAT(q.curvature, WithinRel(expected(q.p), 0.01));
                ++points;
            }
        CHECK(points > 100);
    };
    const double part = std::sqrt(1 - 150.0 * 150.0 / (b * b));
    check(LineFamily::SheerPlan, [&](const auto& p) { return ellipseCurvature(a, b, p.x(), p.y()); });
    check(LineFamily::Keel, [&](const auto& p) { return ellipseCurvature(a, b, p.x(), p.z()); });
    check(LineFamily::Waterline,
          [&](const auto& p) { return ellipseCurvature(part * a, part * b, p.x(), p.y()); });
    check(LineFamily::Buttock,
          [&](const auto& p) { return ellipseCurvature(part * a, part * b, p.x(), p.z()); });
    check(LineFamily::Diagonal,
          [&](const auto& p) { return ellipseCurvature(a, b, p.x(), std::hypot(p.y(), p.z())); });
    // the sheer lies in a level plane: from the side it is straight
    for (const HullLinePoint& q : of(lines, LineFamily::SheerProfile).front().points)
        if (std::abs(q.p.x()) < 0.8 * a)
            CHECK_THAT(q.curvature, WithinAbs(0, 1e-7));
    const auto stations = of(lines, LineFamily::Station);
    REQUIRE(stations.size() == 3);
    for (const HullLine& s : stations) {
        const double x = choices.stations[s.index];
        CHECK(s.points.front().p.z() > s.points.back().p.z()); // sheer to keel
        for (const HullLinePoint& q : s.points)
            CHECK_THAT(q.curvature, WithinRel(1 / (b * std::sqrt(1 - x * x / (a * a))), 0.01));
    }
}

TEST_CASE("a line of equal girth on a ball bends as the ball does") {
    const TrimmedSurface ball = hullOf(400, 400);
    LineChoices choices;
    choices.girths = {100, 250, 5000};
    const auto lines = of(hullLines(ball, choices), LineFamily::EqualGirth);
    REQUIRE(lines.size() == 2); // nothing is 5 m below the sheer
    for (const HullLine& line : lines)
        for (const HullLinePoint& q : line.points)
            if (std::abs(q.p.x()) < 200) {
                CHECK_THAT(q.curvature, WithinRel(1 / 400.0, 0.01));
                const double r = std::hypot(q.p.y(), q.p.z());
                CHECK_THAT(r * std::atan2(-q.p.z(), q.p.y()), WithinAbs(choices.girths[line.index], 0.2));
            }
}

TEST_CASE("the usual lines stand at round figures and each crosses the hull") {
    const TrimmedSurface hull = hullOf(2500, 400);
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const double unit = units == Units::Inches ? 25.4 : 25.0;
        const LineChoices c = usualLines(hull, units);
        CHECK(c.stations.empty());
        for (const auto* levels : {&c.waterlines, &c.buttocks, &c.girths}) {
            CHECK(levels->size() >= 3);
            CHECK(levels->size() <= 7);
            for (const double level : *levels)
                CHECK_THAT(level / unit, WithinAbs(std::round(level / unit), 1e-9));
        }
        CHECK(c.diagonals.size() >= 2);
        for (const DiagonalPlane& d : c.diagonals) {
            const double degrees = d.angle * 180 / std::numbers::pi;
            CHECK_THAT(degrees / 5, WithinAbs(std::round(degrees / 5), 1e-9));
            CHECK(d.height <= 0.5 * unit); // not from above the sheer, which is at z = 0
        }
        const auto lines = hullLines(hull, c);
        for (const auto& [family, count] : {std::pair{LineFamily::Waterline, c.waterlines.size()},
                                            std::pair{LineFamily::Buttock, c.buttocks.size()},
                                            std::pair{LineFamily::Diagonal, c.diagonals.size()},
                                            std::pair{LineFamily::EqualGirth, c.girths.size()}})
            CHECK(of(lines, family).size() == count);
    }
}

TEST_CASE("the way out along a diagonal is measured in its plane") {
    const DiagonalPlane d{300, std::atan2(3.0, 4.0)};
    CHECK_THAT(d.outward({0, 0, 300}), WithinAbs(0, 1e-12));
    CHECK_THAT(d.outward({0, 400, 0}), WithinAbs(500, 1e-9)); // 3, 4, 5
}

TEST_CASE("stations turn sharply on a knuckle, exactly there") {
    const LoftedHull hull = loft(prismProject()).value();
    LineChoices choices;
    choices.stations = {700};

    choices.waterlines = {50, 200};
    const auto lines = hullLines(hull.drawn, choices);
    const ChineSection s = prismSection(700);
    const auto station = of(lines, LineFamily::Station);
    REQUIRE(station.size() == 1);
    double nearest = 1e300, off = 0;
    for (const HullLinePoint& q : station[0].points) {
        nearest = std::min(nearest, (q.p.tail<2>() - s[1]).norm());
        off = std::max(off, offSection(s, q.p.tail<2>()));
        CHECK(std::abs(q.curvature) < 1e-6);
    }
    CHECK(nearest < 0.05);
    CHECK(off < 0.05);
    CHECK(of(lines, LineFamily::Waterline).size() == 2);
}
