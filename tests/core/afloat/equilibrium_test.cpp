#include "core/afloat/equilibrium.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/floating_shapes.hpp"

#include <cmath>
#include <numbers>
#include <random>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector3d;

namespace {

constexpr double fresh = 1000; // kg/m3
constexpr double degree = std::numbers::pi / 180;

FloatBody box() {
    return test::prism({{500, 700}, {500, 0}, {0, 0}}, 4000);
}

} // namespace

TEST_CASE("a box barge rests at the draught, trim and heel of the closed form") {
    const double L = 4000, B = 1000, T = 300;
    Burden burden{1200, {30, 8, 250}};
    const auto found = rest(box(), burden, fresh);
    REQUIRE(found);
    // The moments of the truncated prism (tests of submerged) about G vanish: with p, q the water's slopes
    // fore and aft and across, B = (p L^2 / 12 T, q B^2 / 12 T, (T^2 + p^2 L^2 / 12 + q^2 B^2 / 12) / 2 T)
    // must lie on the plumb line through G: (B - G) parallel (-p, -q, 1). Solved by iteration on p and q.
    double p = 0, q = 0;
    for (int i = 0; i < 200; ++i) {
        const double bz = (T * T + p * p * L * L / 12 + q * q * B * B / 12) / (2 * T);
        const double gap = burden.centre.z() - bz;
        p = burden.centre.x() / (L * L / (12 * T) - gap);
        q = burden.centre.y() / (B * B / (12 * T) - gap);
    }
    const Vector3d up = found->water.up();
    CHECK(-up.x() / up.z() == Approx(p).margin(1e-9));
    CHECK(-up.y() / up.z() == Approx(q).margin(1e-9));
    CHECK(found->water.level / up.z() == Approx(T).margin(1e-5));
    CHECK(found->under.volume == Approx(1.2e9).epsilon(1e-9));
}

TEST_CASE("metacentric height of an upright box is BM + KB - KG") {
    const auto found = rest(box(), {1200, {0, 0, 250}}, fresh);
    REQUIRE(found);
    CHECK(found->bm == Approx(1000.0 * 1000 / (12 * 300)).epsilon(1e-6));
    CHECK(found->gm == Approx(1000.0 * 1000 / (12 * 300) + 150 - 250).epsilon(1e-6));
    CHECK(found->draught == Approx(300).margin(1e-5));
    CHECK(found->freeboard == Approx(400).margin(1e-5));
    const auto salt = rest(box(), {1200, {0, 0, 250}}, 1025);
    REQUIRE(salt);
    CHECK(salt->draught == Approx(300 / 1.025).margin(1e-5));
}

TEST_CASE("any start comes to the same rest, within 0.01 mm and 0.001 degrees") {
    const FloatBody boat = test::bodyOf(test::wigley(5000, 800, 400), 5000, 150, -400);
    const Burden burden{520, {120, 6, -120}};
    const auto first = rest(boat, burden, fresh);
    REQUIRE(first);
    REQUIRE(std::abs(first->water.heel) > 0.1 * degree); // the paddler leans: not a trivial rest
    REQUIRE(std::abs(first->water.trim) > 0.05 * degree);
    std::mt19937 random(20261125);
    std::uniform_real_distribution<double> level(-380, 140), trim(-8, 8), heel(-40, 40);
    for (int i = 0; i < 40; ++i) {
        const WaterPlane start{level(random), trim(random) * degree, heel(random) * degree};
        const auto again = rest(boat, burden, fresh, start);
        REQUIRE(again);
        CHECK(std::abs(again->draught - first->draught) < 0.01);
        CHECK(std::abs(again->water.trim - first->water.trim) < 0.001 * degree);
        CHECK(std::abs(again->water.heel - first->water.heel) < 0.001 * degree);
    }
    // at rest the centres stand above one another
    const Vector3d arm = first->under.centre - burden.centre;
    CHECK(arm.cross(first->water.up()).norm() < 1e-5);
}

TEST_CASE("port mirrors starboard, bow mirrors stern") {
    const FloatBody boat = test::bodyOf(test::wigley(5000, 800, 400), 5000, 150, -400);
    const auto one = rest(boat, {520, {120, 6, -120}}, fresh),
               other = rest(boat, {520, {-120, -6, -120}}, fresh);
    REQUIRE(one);
    REQUIRE(other);
    CHECK(one->water.trim > 0); // weight abaft amidships puts the stern down
    CHECK(one->water.heel > 0); // weight to starboard puts starboard down
    CHECK(one->water.trim == Approx(-other->water.trim).margin(1e-9));
    CHECK(one->water.heel == Approx(-other->water.heel).margin(1e-9));
    CHECK(one->draught == Approx(other->draught).margin(1e-6));
}

TEST_CASE("a weight too high rests heeled, not upright") {
    // wall-sided: GM below 0 gives the angle of loll tan^2 = -2 GM / BM, as long as no corner comes in or out
    const double bm = 1000.0 * 1000 / (12 * 300), kg = 150 + bm + 4;
    for (const double heel : {0.01, 0.0}) { // upright she balances on a crest, and stays nowhere near it
        const auto found = rest(box(), {1200, {0, 0, kg}}, fresh, {300, 0, heel});
        REQUIRE(found);
        CHECK(std::abs(std::tan(found->water.heel)) == Approx(std::sqrt(2 * 4 / bm)).epsilon(1e-4));
        CHECK(found->gm > 0);
    }
    const auto over = rest(box(), {1200, {0, 0, kg + 1500}}, fresh);
    REQUIRE_FALSE(over);
    CHECK(over.error().kind == AfloatError::Kind::Swamped);
}

TEST_CASE("a load that swamps her is refused") {
    const auto sunk = rest(box(), {3000, {0, 0, 100}}, fresh);
    REQUIRE_FALSE(sunk);
    CHECK(sunk.error().kind == AfloatError::Kind::TooHeavy);
    CHECK(sunk.error().most == Approx(2800).epsilon(1e-6)); // 4 x 1 x 0.7 m
    // the box itself could carry this, but not all of it at the stern
    const auto swamped = rest(box(), {2000, {700, 0, 100}}, fresh);
    REQUIRE_FALSE(swamped);
    CHECK(swamped.error().kind == AfloatError::Kind::Swamped);
    CHECK(swamped.error().at.x() == Approx(2000));
    CHECK(swamped.error().depth > 0);
}

TEST_CASE("the largest load on an even keel leaves just the freeboard asked for") {
    CHECK(levelDisplacement(box(), fresh, 150) == Approx(2200).epsilon(1e-6)); // 4 x 1 x 0.55 m
    CHECK(levelDisplacement(box(), 1025, 150) == Approx(2255).epsilon(1e-6));
    CHECK(levelDisplacement(box(), fresh, 900) == 0.0);
}

TEST_CASE("the energy's minimum is where level and balance agree at a held heel") {
    const FloatBody boat = test::bodyOf(test::wigley(5000, 800, 400), 5000, 150, -400);
    const Burden burden{520, {120, 0, -120}};
    const WaterPlane held = balancedAt(boat, burden, fresh, 0.2, {});
    const Submerged under = submerged(boat, held);
    CHECK(held.heel == 0.2);
    CHECK(under.volume == Approx(0.52e9).epsilon(1e-9));
    CHECK(std::abs(held.aft().dot(under.centre - burden.centre)) < 1e-5);
}

TEST_CASE("two burdens are one at their common centre") {
    const Burden both = together({30, {0, 0, 100}}, {90, {400, -40, 300}});
    CHECK(both.mass == 120);
    CHECK((both.centre - Vector3d(300, -30, 250)).norm() < 1e-12);
    CHECK(together({}, {}).mass == 0.0);
}
