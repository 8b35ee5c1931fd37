#include "core/fitout/cross_piece.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <cmath>
#include <functional>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

constexpr double exact = 0.05;                          // mm, issue 8
constexpr double angle = 0.05 * std::numbers::pi / 180; // issue 8
constexpr double width = 40, height = 20;               // mm, of the rail

HullFaces facesOfBare(const LoftedHull& hull) {
    auto faces = facesOf(test::bareFitout(), hull);
    REQUIRE(faces);
    return std::move(*faces);
}

/// Checks a rail against a hull whose half-breadth is a formula of x and z. The ends' plane may stand back
/// from the hull by what a flat face in a hollow must: no corner is closer than 0, and the middle touches
/// nowhere beyond it.
void check(const CrossPiece& rail, const std::function<double(double, double)>& half) {
    const auto breadth = [&](double a, double c) {
        const Vector2d at = rail.at(a, c);
        return half(at.x(), at.y());
    };
    double nearest = 1e9, farthest = -1e9;
    for (int i = 0; i <= 20; ++i)
        for (int j = 0; j <= 20; ++j) {
            const double a = width * i / 20, c = -height * j / 20;
            const double gap = breadth(a, c) - rail.halfAt(a, c);
            nearest = std::min(nearest, gap);
            farthest = std::max(farthest, gap);
        }
    CHECK(nearest > -exact);
    CHECK(nearest < exact);
    CHECK(farthest < rail.gap * 1.3 + exact);
    // slopes of the hull over the rail's own edges
    const double a = width / 2, c = -height / 2;
    CHECK(rail.plan == Approx(std::atan((breadth(width, c) - breadth(0, c)) / width)).margin(angle));
    CHECK(rail.section == Approx(std::atan((breadth(a, 0) - breadth(a, -height)) / height)).margin(angle));
    CHECK(rail.frontTop == Approx(2 * rail.halfAt(0, 0)).margin(1e-9));
    CHECK(rail.backBottom == Approx(2 * rail.halfAt(width, -height)).margin(1e-9));
}

} // namespace

TEST_CASE("across a cylinder the ends are square in plan and lean like the circle's chord") {
    const HullFaces faces = facesOfBare(test::quarterPipe(400, 2000));
    const auto rail = fitAcross(faces.inside, {{900, -100}, 0.0, width, height});
    REQUIRE(rail);
    check(*rail, [](double, double z) { return std::sqrt(400.0 * 400 - z * z); });
    CHECK(rail->plan == Approx(0).margin(angle));
    // by hand: half-breadth 387.298 at -100, 381.576 at -120; a flat end that touches at its corners
    CHECK(rail->frontTop == Approx(2 * 387.298).margin(exact));
    CHECK(rail->frontBottom == Approx(2 * 381.576).margin(exact));
    CHECK(rail->gap == Approx(20.0 * 20 / 8 / 400).margin(0.03)); // the chord's sagitta, seen square to it
}

TEST_CASE("across a cone and a sphere the ends follow in plan and section") {
    const HullFaces cone = facesOfBare(test::coneBoat(250, 0.12, 2000));
    const auto level = fitAcross(cone.inside, {{900, -90}, 0.0, width, height});
    REQUIRE(level);
    check(*level, [](double x, double z) { return std::sqrt(std::pow(250 + 0.12 * x, 2) - z * z); });
    CHECK(level->plan > 0.1); // she widens aft
    const HullFaces sphere = facesOfBare(test::quarterSphere(500));
    for (const double x : {250.0, 480.0, 700.0}) {
        const auto rail = fitAcross(sphere.inside, {{x, -80}, 0.0, width, height});
        REQUIRE(rail);
        check(*rail,
              [](double at, double z) { return std::sqrt(500.0 * 500 - (at - 500) * (at - 500) - z * z); });
    }
}

TEST_CASE("a tilted rail is fitted in its own axes") {
    constexpr double tilt = 4 * std::numbers::pi / 180;
    const HullFaces cone = facesOfBare(test::coneBoat(250, 0.12, 2000));
    const auto rail = fitAcross(cone.inside, {{900, -90}, tilt, width, height});
    REQUIRE(rail);
    CHECK(rail->at(width, 0).y() > -90); // the forward edge is the lower one
    check(*rail, [](double x, double z) { return std::sqrt(std::pow(250 + 0.12 * x, 2) - z * z); });
}

TEST_CASE("what does not lie inside the hull is not fitted") {
    const HullFaces faces = facesOfBare(test::quarterPipe(400, 2000));
    CHECK_FALSE(fitAcross(faces.inside, {{900, 10}, 0.0, width, height}));
    CHECK_FALSE(fitAcross(faces.inside, {{900, -390}, 0.0, width, height}));
}
