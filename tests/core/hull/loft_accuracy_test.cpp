#include "core/hull/hull.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_tables.hpp"
#include "tests/support/loft_error.hpp"

#include <cmath>
#include <functional>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// How near the loft comes to the hull a table was taken off: four formula hulls rounded to 1/16 in, and three
// surfaces known exactly, not rounded at all.

namespace {

/// Outside the last gaps, which reach from the outermost whole stations to the stems.
void checkFormulaHull(const FormulaHull& f, const Project& p, double from, double to) {
    const auto hull = loft(p);
    REQUIRE(hull.has_value());
    const test::LoftError e = loftError(
        *hull, [&](const Vector3d& q) { return f.distance(q); }, from, to);
    INFO("rms " << e.rms << " mm, max " << e.max << " mm");
    REQUIRE(e.points > 500);
    CHECK(e.rms <= 1.0);
    CHECK(e.max <= 3.0);
}

/// A table of points, given section by section from sheer to keel, between two plumb transoms; two stations
/// stand beyond each, as a loft floor carries its lines past the transom to fair them.
Project tableOf(const std::function<std::array<double, 2>(double x, double part)>& section,
                double reach,
                double step) {
    constexpr int points = 24;
    Project p;
    p.hull.roundedTo = 0.01; // finer than any table: nothing is left to rounding
    for (double x = -reach - 2 * step; x <= reach + 2 * step + 1e-9; x += step) {
        Station s;
        s.x = x;
        s.printedX = std::to_string(static_cast<int>(std::lround(x)));
        const auto at = [&](PointKind kind, double part) {
            const auto [y, z] = section(x, part);
            return TablePoint{kind, y, z, "", "", 0};
        };
        s.sheer = at(PointKind::Sheer, 0);
        for (int k = 1; k < points; ++k)
            s.points.push_back(at(PointKind::Point, static_cast<double>(k) / points));
        s.keel = at(PointKind::Keel, 1);
        p.hull.stations.push_back(s);
    }
    p.hull.transoms = {{End::Bow, -reach, -reach, 0}, {End::Stern, reach, reach, 0}};
    p.planking.layOn = LayOn::Moulds;
    return p;
}

void checkExact(const Project& p, double reach, const std::function<double(const Vector3d&)>& distance) {
    const auto hull = loft(p);
    if (!hull)
        UNSCOPED_INFO(hull.error().text);
    REQUIRE(hull.has_value());
    const test::LoftError e = loftError(*hull, distance, -reach, reach);
    INFO("rms " << e.rms << " mm, max " << e.max << " mm");
    REQUIRE(e.points > 500);
    CAPTURE(hull->fairing);
    CHECK(e.max <= 0.05);
}

} // namespace

TEST_CASE("the canoe, rounded to a sixteenth of an inch") {
    checkFormulaHull(formulaCanoe(), footStations(formulaCanoe(), sixteenth, 50.8), -2133.6, 2133.6);
}

TEST_CASE("the skiff, rounded to a sixteenth of an inch") {
    checkFormulaHull(formulaSkiff(), skiffTable(sixteenth, 50.8), 304.8, 3657.6);
}

TEST_CASE("the narrow double-ender, rounded to a sixteenth of an inch") {
    checkFormulaHull(formulaNarrow(), footStations(formulaNarrow(), sixteenth, 50.8), -2133.6, 2133.6);
}

TEST_CASE("recurved stems, rounded to a sixteenth of an inch") {
    checkFormulaHull(formulaRecurved(), footStations(formulaRecurved(), sixteenth, 50.8), -2133.6, 2133.6);
}

TEST_CASE("a cylinder from an unrounded table") {
    constexpr double r = 400;
    const auto section = [](double, double part) {
        return std::array{r * std::cos(part * std::numbers::pi / 2),
                          r - r * std::sin(part * std::numbers::pi / 2)};
    };
    checkExact(tableOf(section, 1200, 300), 1200, [](const Vector3d& q) {
        return std::hypot(q.y(), q.z() - r) - r;
    });
}

TEST_CASE("a sphere from an unrounded table") {
    constexpr double R = 2500;
    const auto section = [](double x, double part) {
        const double r = std::sqrt(R * R - x * x);
        const double angle = 0.5 * (1 - part); // from straight down: a slack bilge
        return std::array{r * std::sin(angle), R - r * std::cos(angle)};
    };
    checkExact(tableOf(section, 900, 150), 900, [R](const Vector3d& q) {
        return (q - Vector3d(0, 0, R)).norm() - R;
    });
}

TEST_CASE("a torus from an unrounded table") {
    // a tube of 400 mm bent to a rocker of 6 m
    constexpr double tube = 400, ring = 6000;
    const auto section = [](double x, double part) {
        const double angle = (1 - part) * std::numbers::pi / 2; // from straight down
        const double rho = ring + tube * std::cos(angle);
        return std::array{tube * std::sin(angle), ring + tube - std::sqrt(rho * rho - x * x)};
    };
    checkExact(tableOf(section, 1200, 300), 1200, [](const Vector3d& q) {
        return std::hypot(std::hypot(q.x(), q.z() - ring - tube) - ring, q.y()) - tube;
    });
}
