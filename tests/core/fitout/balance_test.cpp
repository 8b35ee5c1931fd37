#include "core/fitout/balance.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Project plain(double thickness) {
    Project p = test::bareFitout();
    p.strips.thickness = thickness;
    return p;
}

} // namespace

TEST_CASE("a bare shell balances where its area does") {
    const double wood = 358; // kg/m3 of western redcedar: Wood Handbook, by way of core/project/wood
    const Balance pipe = balanceOf(plain(6), test::quarterPipe(400, 2000), {});
    CHECK(pipe.x == Approx(1000).margin(1));
    CHECK(pipe.mass == Approx(std::numbers::pi * 400 * 2000 * 6 * wood * 1e-9).epsilon(0.01));
    CHECK(balanceOf(plain(6), test::quarterSphere(500), {}).x == Approx(500).margin(1));
    // lateral surface of a cone: weight goes with the radius
    const double r0 = 250, k = 0.12, l = 2000;
    const double x = (r0 * l * l / 2 + k * l * l * l / 3) / (r0 * l + k * l * l / 2);
    CHECK(balanceOf(plain(6), test::coneBoat(r0, k, l), {}).x == Approx(x).margin(2));
}

TEST_CASE("cloth adds weight, and a thwart pulls the balance toward it by its moment") {
    Project p = plain(6);
    const LoftedHull hull = test::quarterPipe(400, 2000);
    const Balance bare = balanceOf(p, hull, {});
    p.fitout->glassInside = p.fitout->glassOutside = 0.5;
    const Balance glassed = balanceOf(p, hull, {});
    CHECK(glassed.mass - bare.mass == Approx(std::numbers::pi * 400 * 2000 * 1600e-9).epsilon(0.01));

    Thwart thwart;
    thwart.bar.piece.front = {1500, -18};
    thwart.bar.piece.width = 60;
    thwart.bar.piece.height = 20;
    thwart.bar.piece.frontTop = thwart.bar.piece.backTop = 800;
    thwart.bar.piece.frontBottom = thwart.bar.piece.backBottom = 780;
    const Balance with = balanceOf(p, hull, {nullptr, {}, {}, {}, {thwart}});
    const double kg = 672e-9 * 790 * 60 * 20; // white ash: Wood Handbook, by way of core/project/wood
    CHECK(with.mass - glassed.mass == Approx(kg).epsilon(1e-6));
    CHECK(with.x == Approx((glassed.x * glassed.mass + 1530 * kg) / with.mass).margin(1e-6));
}
