#include "core/planking/planking.hpp"
#include "core/planking/thin_piece.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/edge_curves.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double w = 17, length = 1000;

/// A straight strip in the plane y = 100, its lower edge at z = 0; port first.
std::vector<Strip> straightStrip() {
    Strip s;
    s.id = "S01";
    for (double x = 0; x <= length; x += 20) {
        s.upperEdge.emplace_back(x, 100, w);
        s.lowerEdge.emplace_back(x, 100, 0);
    }
    for (const Vector3d& p : s.upperEdge)
        s.outline.emplace_back(p.x(), -w / 2);
    s.outlineUpperCount = s.outline.size();
    for (auto p = s.lowerEdge.rbegin(); p != s.lowerEdge.rend(); ++p)
        s.outline.emplace_back(p->x(), w / 2);
    Strip port = s;
    port.id = "P01";
    port.side = Side::Port;
    for (auto* line : {&port.upperEdge, &port.lowerEdge})
        for (Vector3d& p : *line)
            p.y() = -p.y();
    for (Vector2d& p : port.outline)
        p.y() = -p.y();
    return {port, s};
}

/// What is left below that strip from x = a to b: `deep` mm half way, to a point at both ends unless blunt.
RowPiece crescent(double a, double b, double deep, bool blunt = false) {
    RowPiece thin;
    const int steps = 10;
    for (int i = 0; i <= steps; ++i) {
        const double t = static_cast<double>(i) / steps, x = a + t * (b - a);
        const double depth = blunt ? deep : 4 * deep * t * (1 - t);
        thin.parentEdge.push_back({x / 20, 0, {x, 0}, {x, 100, 0}});
        thin.childEdge.push_back({x / 20, depth, {x, depth}, {x, 100, -depth}});
    }
    return thin;
}

} // namespace

TEST_CASE("a strip runs on over a crescent too thin to be wood") {
    std::vector<Strip> strips = straightStrip();
    const auto wide = takeIn(crescent(310, 690, 0.4), strips, geometry::FanSide::TowardKeel);
    REQUIRE(wide.has_value());
    CHECK_THAT(wide->beyond, WithinAbs(0.4, 1e-9));
    CHECK_THAT(wide->across, WithinAbs(w + 0.4, 1e-9));
    CHECK(wide->strip == "S01");
    const Strip &port = strips[0], &s = strips[1];
    CHECK(s.kind == StripKind::Tapered);
    CHECK(port.kind == StripKind::Tapered);
    REQUIRE(s.outline.size() == s.upperEdge.size() + s.lowerEdge.size());
    REQUIRE(port.outline.size() == s.outline.size());
    // 2/3 of its length times its depth: a parabola, by ten chords (one in a hundred less)
    CHECK_THAT(areaOf(s.outline) - length * w, WithinAbs(2.0 / 3 * 380 * 0.4 * 0.99, 1e-6));
    double deepest = 0;
    for (std::size_t i = 0; i < s.lowerEdge.size(); ++i) {
        const Vector3d& p = s.lowerEdge[i];
        const Vector2d& flat = s.outline[s.outline.size() - 1 - i];
        CHECK_THAT(flat.x(), WithinAbs(p.x(), 1e-9));
        CHECK_THAT(flat.y(), WithinAbs(w / 2 - p.z(), 1e-9));
        CHECK(port.lowerEdge[i] == Vector3d(p.x(), -100, p.z()));
        CHECK(port.outline[s.outline.size() - 1 - i] == Vector2d(flat.x(), -flat.y()));
        deepest = std::max(deepest, -p.z());
        if (i > 0)
            CHECK(p.x() > s.lowerEdge[i - 1].x());
    }
    CHECK_THAT(deepest, WithinAbs(0.4, 1e-9));
    CHECK(s.lowerEdge.front() == Vector3d(0, 100, 0));
    CHECK(s.lowerEdge.back() == Vector3d(length, 100, 0));
}

TEST_CASE("a remainder that keeps its width to the ends takes the strip's ends with it") {
    std::vector<Strip> strips = straightStrip();
    REQUIRE(takeIn(crescent(0, length, 0.3, true), strips, geometry::FanSide::TowardKeel));
    CHECK(strips[1].lowerEdge.front() == Vector3d(0, 100, -0.3));
    CHECK(strips[1].lowerEdge.back() == Vector3d(length, 100, -0.3));
    CHECK_THAT(areaOf(strips[1].outline), WithinAbs(length * (w + 0.3), 1e-6));
}

TEST_CASE("a thin piece that no strip lies along is left to its fate") {
    std::vector<Strip> strips = straightStrip();
    RowPiece away = crescent(310, 690, 0.4);
    for (RowPoint& p : away.parentEdge)
        p.p.z() -= 1;
    CHECK_FALSE(takeIn(away, strips, geometry::FanSide::TowardKeel));
    CHECK_FALSE(
        takeIn(crescent(310, 690, 0.4), strips, geometry::FanSide::TowardSheer)); // not its upper edge
    CHECK_FALSE(takeIn(RowPiece{}, strips, geometry::FanSide::TowardKeel));
    CHECK(strips[1].lowerEdge == straightStrip()[1].lowerEdge);
}

TEST_CASE("a pipe that twenty strips cover but for 0.3 mm has no gap, and the plan says so") {
    const int rows = 20;
    const double girth = rows * w + 0.3;
    Planked b;
    b.project.strips.coverWidth = w;
    b.project.planking.layOn = LayOn::Moulds;
    b.hull = quarterPipe(girth * 2 / std::numbers::pi, 2000);
    b.plan = plank(b.project, b.hull).value();
    CHECK(b.plan.lastRow == rows);
    CHECK(b.plan.coverage.largestGap < 0.02);
    CHECK_THAT(b.plan.coverage.stripsArea, WithinRel(b.plan.coverage.hullArea, 1e-4));
    for (const Strip* s : stripsOf(b.plan, Side::Starboard))
        if (s->row == rows)
            for (const Vector3d& p : s->lowerEdge)
                CHECK_THAT(p.y(), WithinAbs(0, 1e-3));
    const auto told = std::find_if(b.plan.findings.begin(), b.plan.findings.end(), [](const Finding& f) {
        return f.code == "remainder-taken-in";
    });
    REQUIRE(told != b.plan.findings.end());
    CHECK(told->level == Level::Note);
    CHECK(told->text.find("0.30 mm") != std::string::npos);

    b.project.strips.width = w; // square edges: the stock has nothing to spare
    const Plan tight = plank(b.project, b.hull).value();
    const auto over = std::ranges::find(tight.findings, "remainder-over-stock", &Finding::code);
    REQUIRE(over != tight.findings.end());
    CHECK(over->level == Level::Caution);
    CHECK(over->strip == "S20");
    CHECK(over->text.find("17.30 mm") != std::string::npos);
    CHECK(over->text.find("17.00 mm") != std::string::npos);
}
