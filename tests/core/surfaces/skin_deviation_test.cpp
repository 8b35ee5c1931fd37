#include "core/surfaces/skin_deviation.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// Points of a quarter pipe of another radius, and its edges; x moved by `shift`.
HalfSkin pipeSkin(double radius, double length, double shift) {
    HalfSkin skin;
    for (int i = 1; i < 40; ++i)
        for (int j = 1; j < 20; ++j) {
            const double a = 0.5 * std::numbers::pi * j / 20;
            skin.mesh.points.emplace_back(
                length * i / 40 + shift, radius * std::cos(a), -radius * std::sin(a));
        }
    for (int i = 0; i <= 40; ++i) {
        skin.sheer.emplace_back(length * i / 40 + shift, radius, 0);
        skin.lower.emplace_back(length * i / 40 + shift, 0, -radius);
    }
    return skin;
}

} // namespace

TEST_CASE("the distance of a pipe from a thinner one is the difference of their radii") {
    LoftedHull hull = quarterPipe(300, 2000);
    hull.xShift = 25;
    const SkinDeviation outside = skinDeviation(pipeSkin(300.4, 2000, -25), hull);
    CHECK(outside.points == 39 * 19);
    CHECK_THAT(outside.most, WithinAbs(0.4, 1e-4));
    CHECK_THAT(outside.rms, WithinAbs(0.4, 1e-4));
    CHECK_THAT(outside.sheer, WithinAbs(0.4, 1e-3));
    CHECK_THAT(outside.lower, WithinAbs(0.4, 1e-3));
    CHECK_THAT(skinDeviation(pipeSkin(299, 2000, -25), hull).most, WithinAbs(-1.0, 1e-4));
    HalfSkin dented = pipeSkin(300, 2000, -25);
    dented.mesh.points[100].y() += 2;
    const SkinDeviation dent = skinDeviation(dented, hull);
    CHECK(dent.where == dented.mesh.points[100]);
    CHECK(dent.rms < 0.1);
}
