#include "tests/support/fitout_hulls.hpp"

#include "tests/support/surfaces.hpp"

#include <Eigen/Core>

#include <cmath>
#include <numbers>

namespace sheerlay::test {

core::LoftedHull helixPipe(double radius, double length, double rise) {
    geometry::Trims trims;
    trims.bow = geometry::TransomPlane{0, 0, 0};
    trims.stern = geometry::TransomPlane{length, 0, 0};
    const double quarter = radius * std::numbers::pi / 2;
    return exactHull(splineOf(
                         [=](double u, double v) {
                             const double a = (v + rise * u) / radius;
                             return Eigen::Vector3d(u, radius * std::cos(a), -radius * std::sin(a));
                         },
                         {-200, (length + 400) / 40, 40},
                         {-80, (quarter + 240) / 24, 24}),
                     trims);
}

core::LoftedHull tubeBoat(double ring, double tube) {
    const double reach = (ring + tube) * std::acos(ring / (ring + tube)) + 150;
    const double quarter = tube * std::numbers::pi / 2;
    return exactHull(splineOf(
                         [=](double u, double v) {
                             const double a = u / (ring + tube), b = v / tube;
                             const double rho = ring + tube * std::cos(b);
                             return Eigen::Vector3d(
                                 rho * std::sin(a), rho * std::cos(a) - ring, -tube * std::sin(b));
                         },
                         {-reach, 2 * reach / 60, 60},
                         {-80, (quarter + 240) / 24, 24}),
                     {});
}

core::LoftedHull coneBoat(double radiusAtBow, double slope, double length) {
    geometry::Trims trims;
    trims.bow = geometry::TransomPlane{0, 0, 0};
    trims.stern = geometry::TransomPlane{length, 0, 0};
    constexpr double unit = 400.0; // mm of v to the radian
    return exactHull(splineOf(
                         [=](double u, double v) {
                             const double r = radiusAtBow + slope * u;
                             return Eigen::Vector3d(u, r * std::cos(v / unit), -r * std::sin(v / unit));
                         },
                         {-200, (length + 400) / 50, 50},
                         {-80, 24, static_cast<int>(unit * std::numbers::pi / 2 / 24) + 8}),
                     trims);
}

core::Project bareFitout() {
    core::Project project;
    project.fitout = core::FitoutChoices{};
    project.fitout->glassInside = 0.0;
    project.fitout->glassOutside = 0.0;
    return project;
}

core::Project fittedPipe() {
    core::Project p = bareFitout();
    p.name = "Pipe";
    p.fitout->gunwales = core::GunwaleChoices{};
    p.fitout->gunwales->inner = {20, 18};
    p.fitout->bulkheads.resize(1);
    p.fitout->decks.resize(1);
    p.fitout->seats.resize(1);
    p.fitout->seats[0].name = "seat";
    p.fitout->seats[0].x = 1500;
    p.fitout->seats[0].belowSheer = 90;
    p.fitout->thwarts.resize(1);
    p.fitout->thwarts[0].name = "thwart";
    p.fitout->thwarts[0].x = 900;
    return p;
}

} // namespace sheerlay::test
