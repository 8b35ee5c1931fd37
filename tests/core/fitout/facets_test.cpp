#include "core/fitout/facets.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 0.005; // mm

/// A strip whose middle runs along a line of points.
Strip stripAlong(const std::vector<Eigen::Vector3d>& middle, double width, const std::string& id) {
    Strip s;
    s.id = id;
    s.middle = middle;
    for (const auto& p : middle)
        s.samples.push_back({0, p.x(), width, 0, 0, 0});
    return s;
}

} // namespace

TEST_CASE("a flat strip along a pipe stands proud by the chord's rise, along a helix by less") {
    constexpr double radius = 400, width = 30;
    const LoftedHull hull = test::quarterPipe(radius, 2000);
    std::vector<Eigen::Vector3d> straight, helix;
    const double lead = std::tan(0.3) / radius; // rad of turn a mm of x
    for (double x = 200; x <= 900; x += 10) {
        straight.emplace_back(x, radius * std::cos(0.6), -radius * std::sin(0.6));
        const double a = 0.3 + lead * (x - 200);
        helix.emplace_back(x, radius * std::cos(a), -radius * std::sin(a));
    }
    Plan plan;
    plan.strips = {stripAlong(helix, width, "S02"), stripAlong(straight, width, "S01")};
    plan.strips.push_back(plan.strips[0]);
    plan.strips.back().side = Side::Port; // the mirror image is not told twice
    Project project;
    project.strips.thickness = 6;
    const Fairing f = fairing(project, hull, plan);
    REQUIRE(f.facets.size() == 2);
    CHECK(f.facets[0].strip == "S01"); // most to plane first
    CHECK(f.facets[0].height == Approx(width * width / radius / 8).margin(exact));
    CHECK(f.facets[0].left == Approx(6 - f.facets[0].height).margin(1e-9));
    // across a strip that climbs by 0.3 rad the pipe bends by cos^2
    CHECK(f.facets[1].height ==
          Approx(width * width * std::pow(std::cos(0.3), 2) / radius / 8).margin(exact));
    CHECK(f.findings.empty());
}

TEST_CASE("on a sphere every strip alike, and a tight one is told") {
    const LoftedHull hull = test::quarterSphere(80);
    std::vector<Eigen::Vector3d> circle;
    for (double a = -0.5; a <= 0.5; a += 0.05)
        circle.emplace_back(
            80 + 80 * std::cos(0.6) * std::sin(a), 80 * std::cos(0.6) * std::cos(a), -80 * std::sin(0.6));
    Plan plan;
    plan.strips = {stripAlong(circle, 25, "S05")};
    Project project;
    project.strips.thickness = 6;
    const Fairing f = fairing(project, hull, plan);
    REQUIRE(f.facets.size() == 1);
    CHECK(f.facets[0].across == Approx(1.0 / 80).epsilon(1e-3));
    CHECK(f.facets[0].height == Approx(25.0 * 25 / 80 / 8).margin(exact));
    REQUIRE(f.findings.size() == 1); // 0.98 mm of 6
    CHECK(f.findings[0].code == "facet-deep");
    CHECK(f.findings[0].strip == "S05");
}
