#include "core/hull/hull.hpp"
#include "core/hull/knuckle.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

bool told(const LoftedHull& hull, const std::string& code) {
    return std::any_of(
        hull.findings.begin(), hull.findings.end(), [&](const Finding& f) { return f.code == code; });
}

/// The section's corner: its point where it turns most.
Vector2d cornerOf(const std::vector<Vector3d>& section) {
    double most = -1;
    Vector2d corner(0, 0);
    for (std::size_t i = 1; i + 1 < section.size(); ++i) {
        const Vector3d a = (section[i] - section[i - 1]).normalized();
        const Vector3d b = (section[i + 1] - section[i]).normalized();
        if (const double turn = a.cross(b).norm(); turn > most) {
            most = turn;
            corner = {section[i].y(), section[i].z()};
        }
    }
    return corner;
}

} // namespace

TEST_CASE("a prism with a knuckle is lofted as the planes it is made of") {
    Project p = prismProject();
    p.planking.layOn = LayOn::Outside;
    const auto hull = loft(p);
    REQUIRE(hull);
    CHECK(hull->doubtful.empty());
    const ChineSection s = prismSection(0);
    const double side = (s[0] - s[1]).norm(), bottom = (s[1] - s[2]).norm();
    const double turn = std::atan2(400, 100) - std::atan2(100, 250); // both off upright
    double off = 0;
    for (double x = 60; x < 2400; x += 171) {
        for (const Vector3d& q : sectionAt(hull->drawn, x))
            off = std::max(off, offSection(s, {q.y(), q.z()}));
        CHECK((cornerOf(sectionAt(hull->drawn, x)) - s[1]).norm() < 0.05);
        CHECK_THAT(halfGirthAt(hull->drawn, x), WithinAbs(side + bottom, 0.05));
    }
    CHECK(off < 0.05);
    CHECK_THAT(hull->drawn.halfArea, WithinRel(2400 * (side + bottom), 1e-4));

    // the outside of 6.35 mm planking: both planes moved out, the corner where they meet; v = 0 moves square
    // to the side
    const double t = 6.35;
    const Vector2d up(std::cos(std::atan2(100, 250)), -std::sin(std::atan2(100, 250)));
    const Vector2d down(std::cos(std::atan2(400, 100)), -std::sin(std::atan2(400, 100)));
    const Vector2d corner = s[1] + t * (up + down) / (1 + up.dot(down));
    for (double x = 60; x < 2400; x += 390)
        CHECK((cornerOf(sectionAt(hull->laid, x)) - corner).norm() < 0.05);

    const auto line = knuckleLine(hull->drawn);
    REQUIRE(line.size() > 10);
    CHECK_THAT(line.front().p.x(), WithinAbs(0, 0.01));
    CHECK_THAT(line.back().p.x(), WithinAbs(2400, 0.01));
    for (const KnucklePlace& k : line) {
        CHECK_THAT(k.turn, WithinAbs(turn, 1e-3));
        CHECK((k.p.tail<2>() - s[1]).norm() < 0.05);
    }
    CHECK_THAT(knuckleAt(hull->drawn, line, 777).p.x(), WithinAbs(777, 1e-6));
    CHECK(told(*hull, "knuckle"));
    CHECK_FALSE(told(*hull, "knuckle-soft"));
}

TEST_CASE("a skiff's table rounded to a sixteenth is lofted within 1 mm rms and 3 mm on both panels") {
    const auto hull = loft(skiffProject());
    REQUIRE(hull);
    CHECK(hull->doubtful.empty());
    struct Sum {
        double squares = 0, most = 0, x = 0;
        int n = 0;
    };
    Sum sides, bottom;
    double corner = 0;
    for (double x = 150; x < 3590; x += 50) {
        const ChineSection s = skiffSection(x);
        const auto section = sectionAt(hull->drawn, x + hull->xShift, 80);
        REQUIRE(section.size() > 10);
        const Vector2d found = cornerOf(section);
        if (x >= 600) // further forward the knuckle is too soft to be told from the points
            corner = std::max(corner, (found - s[1]).norm());
        for (const Vector3d& q : section) {
            const double d = offSection(s, {q.y(), q.z()});
            Sum& of = q.z() > s[1].y() ? sides : bottom;
            of.squares += d * d;
            if (x >= 300 && d > of.most) { // in the last gap the table leaves the forefoot open
                of.most = d;
                of.x = x;
            }
            ++of.n;
        }
    }
    const double rmsSides = std::sqrt(sides.squares / sides.n),
                 rmsBottom = std::sqrt(bottom.squares / bottom.n);
    INFO("sides rms " << rmsSides << " max " << sides.most << ", bottom rms " << rmsBottom << " max "
                      << bottom.most << " at " << bottom.x << ", corner " << corner);
    CHECK(rmsSides < 1.0);
    CHECK(rmsBottom < 1.0);
    CHECK(sides.most < 3.0);
    CHECK(bottom.most < 3.0);
    CHECK(corner < 3.0);
    CHECK(told(*hull, "knuckle"));
}

TEST_CASE("a soft knuckle is told, and a hull without one has no line") {
    Project p = prismProject();
    for (Station& s : p.hull.stations) { // all but straight from sheer to keel
        s.knuckle->halfBreadth = 255;
        s.knuckle->height = 170;
        s.points.clear();
    }
    const auto soft = loft(p);
    INFO((soft ? "" : soft.error().text));
    REQUIRE(soft);
    CHECK(told(*soft, "knuckle-soft"));
    CHECK(told(*soft, "panel-straight"));
    p = prismProject();
    for (Station& s : p.hull.stations)
        s.knuckle.reset();
    const auto smooth = loft(p);
    REQUIRE(smooth);
    CHECK_FALSE(smooth->drawn.surface.crease());
    CHECK(knuckleLine(smooth->drawn).empty());
    CHECK_FALSE(told(*smooth, "knuckle"));
}

TEST_CASE("a knuckle that runs into the sheer is refused in words") {
    Project p = prismProject();
    p.hull.stations[4].knuckle->halfBreadth = 498;
    p.hull.stations[4].knuckle->height = 345;
    const auto hull = loft(p);
    REQUIRE_FALSE(hull);
    CHECK(hull.error().text.find("so near the sheer") != std::string::npos);
    CHECK(hull.error().text.find("1200") != std::string::npos);
}
