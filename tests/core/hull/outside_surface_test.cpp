#include "core/hull/outside_surface.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("the outside of a pipe is a pipe larger by what lies outside the laid surface") {
    const LoftedHull hull = test::quarterPipe(400, 3000); // laid on the pipe, laidHeight 0
    Project project;
    project.strips.thickness = 6.35;
    project.hull.drawnTo = DrawnTo::Moulds;
    const auto outside = outsideSurface(project, hull);
    REQUIRE(outside);
    CHECK_THAT(outside->beam, WithinAbs(2 * 406.35, 0.01));
    CHECK_THAT(outside->halfArea, WithinRel(std::numbers::pi / 2 * 406.35 * 3000, 1e-4));
}

TEST_CASE("the outside stands one thickness off the moulds, however the cover width is measured") {
    Project project = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
    for (const LayOn layOn : {LayOn::Moulds, LayOn::MidThickness, LayOn::Outside}) {
        project.planking.layOn = layOn;
        const LoftedHull hull = loft(project).value();
        const TrimmedSurface outside = outsideSurface(project, hull).value();
        for (const double u : {1000.0, 2400.0, 3700.0})
            for (const double v : {20.0, 200.0, 400.0}) {
                const auto inner = hull.moulds.surface.jet(u, v);
                const Eigen::Vector3d across = outside.surface.point(u, v) - inner.p;
                CHECK_THAT(across.norm(), WithinAbs(project.strips.thickness, 0.01));
                CHECK_THAT(across.normalized().dot(inner.normal()), WithinAbs(1, 1e-4));
            }
    }
}

TEST_CASE("a hull drawn to the outside is its own outside") {
    Project project = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
    project.hull.drawnTo = DrawnTo::Outside;
    const LoftedHull hull = loft(project).value();
    CHECK(outsideSurface(project, hull)->halfArea == hull.drawn.halfArea);
}

TEST_CASE("sections near the blunt ends of a ball run from the sheer to the keel, on the surface") {
    const double r = 600;
    const TrimmedSurface ball = test::quarterSphere(r).laid;
    for (const double x : {2.0, 15.0, 30.0, 300.0, 1185.0, 1198.0}) {
        const double radius = std::sqrt(r * r - (x - r) * (x - r));
        const auto section = sectionWithNormals(ball, x, 48);
        REQUIRE(section.size() > 8);
        CHECK_THAT((section.front().point - Eigen::Vector3d(x, radius, 0)).norm(), WithinAbs(0, 0.01));
        CHECK_THAT((section.back().point - Eigen::Vector3d(x, 0, -radius)).norm(), WithinAbs(0, 0.01));
        for (const SectionPoint& p : section)
            CHECK_THAT((p.point - Eigen::Vector3d(r, 0, 0)).norm(), WithinAbs(r, 0.01));
    }
}
