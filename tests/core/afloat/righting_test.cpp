#include "core/afloat/righting.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/floating_shapes.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double fresh = 1000;
constexpr double degree = std::numbers::pi / 180;

} // namespace

TEST_CASE("box barge: the wall-sided formula holds to 30 degrees") {
    // GZ = sin f (GM + BM tan^2 f / 2) as long as neither lid nor bottom meets the water: here to 30.9
    // degrees
    const double B = 1000, T = 300, D = 700, KG = 280;
    const FloatBody body = test::prism({{B / 2, D}, {B / 2, 0}, {0, 0}}, 4000);
    const double bm = B * B / (12 * T), gm = bm + T / 2 - KG;
    for (const double side : {1.0, -1.0}) {
        const RightingCurve curve = rightingCurve(body, {1200, {0, 0, KG}}, fresh, side, {});
        int checked = 0;
        for (const RightingArm& a : curve.arms) {
            const double f = std::abs(a.heel);
            if (f > 30 * degree + 1e-9)
                continue;
            const double exact = std::sin(f) * (gm + bm * std::pow(std::tan(f), 2) / 2);
            CHECK(std::abs(a.arm - exact) < 1e-4);
            CHECK(a.heel * side >= 0.0);
            ++checked;
        }
        CHECK(checked == 16);
    }
}

TEST_CASE("wedge: righting arms in closed form to 30 degrees") {
    // Section a V with its point at the keel, half angle w. Up the two sides the water stands at a = c /
    // cos(w + f) and b = c / cos(w - f) from the point; the area a b sin 2w / 2 is given, the centre a third
    // of the way.
    const double w = 50 * degree, depth = 300, H = 900, KG = 330, L = 4000;
    const FloatBody body = test::prism({{H * std::tan(w), H}, {0, 0}}, L);
    const double area = depth * depth * std::tan(w);
    const RightingCurve curve = rightingCurve(body, {area * L / 1e6, {0, 0, KG}}, fresh, 1, {});
    int checked = 0;
    for (const RightingArm& arm : curve.arms) {
        const double f = arm.heel;
        if (f > 30 * degree + 1e-9)
            continue;
        const double low = std::cos(w + f), high = std::cos(w - f);
        const double c = std::sqrt(2 * area * low * high / std::sin(2 * w));
        const double a = c / low,
                     b = c / high; // starboard goes down and the water stands farther up that side
        const double y = (a - b) * std::sin(w) / 3, z = (a + b) * std::cos(w) / 3;
        const double exact = y * std::cos(f) + (z - KG) * std::sin(f);
        CHECK(std::abs(arm.arm - exact) < 1e-4);
        ++checked;
    }
    CHECK(checked == 16);
}

TEST_CASE("the curve ends where the sheer meets the water") {
    // of the box: tan f = 2 (D - T) / B while the bottom's other corner stays under
    const FloatBody body = test::prism({{500, 500}, {500, 0}, {0, 0}}, 4000);
    const RightingCurve curve = rightingCurve(body, {1200, {0, 0, 250}}, fresh, 1, {});
    CHECK(curve.floods);
    CHECK(std::tan(curve.arms.back().heel) == Approx(2 * 200.0 / 1000).epsilon(1e-6));
    CHECK_FALSE(curve.vanishes);
    CHECK(curve.largest.arm == curve.arms.back().arm);
}

TEST_CASE("a body of round sections has the same metacentre all the way") {
    // circular sections: buoyancy always passes through the axis, GZ = (height of axis over G) sin f
    const FloatBody body = test::halfSpheroid(2500, 400);
    const double below = 60; // G under the axis
    const RightingCurve curve = rightingCurve(body, {450, {0, 0, -below}}, fresh, 1, {-120, 0, 0});
    CHECK(curve.floods);
    REQUIRE(curve.arms.size() > 5);
    for (const RightingArm& a : curve.arms)
        CHECK(std::abs(a.arm - below * std::sin(a.heel)) < 0.01);
    // with G above the axis she turns over from the start
    const RightingCurve capsizing = rightingCurve(body, {450, {0, 0, 20}}, fresh, 1, {-120, 0, 0});
    CHECK(capsizing.largest.arm < 1e-6);
}

TEST_CASE("arms that fall to nothing before water comes in are told") {
    // sides that fall home above the water: the waterplane narrows as she heels
    const FloatBody body = test::prism({{150, 900}, {500, 400}, {500, 300}, {0, 0}}, 4000);
    const double mass = 1000; // 4 m of 0.25 m2: the water stands at 350 to 400 mm
    const double kg = 520;
    const RightingCurve curve = rightingCurve(body, {mass, {0, 0, kg}}, fresh, 1, {350, 0, 0});
    REQUIRE(curve.vanishes);
    CHECK(*curve.vanishes < std::abs(curve.arms.back().heel));
    CHECK(curve.largest.arm > 1.0);
    for (std::size_t i = 1; i < curve.arms.size(); ++i)
        CHECK((curve.arms[i].arm > 0.0) == (std::abs(curve.arms[i].heel) < *curve.vanishes));
    // worked out anew at that very heel the arm is nothing, but for the chord between steps of 2 degrees
    const WaterPlane there = balancedAt(body, {mass, {0, 0, kg}}, fresh, *curve.vanishes, {350, 0, 0});
    const double arm = there.across().dot(submerged(body, there).centre - Eigen::Vector3d(0, 0, kg));
    CHECK(std::abs(arm) < 0.01 * curve.largest.arm);
}
