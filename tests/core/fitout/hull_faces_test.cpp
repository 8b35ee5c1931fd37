#include "core/fitout/hull_faces.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 0.01; // mm, of the spline that stands for the closed form

} // namespace

TEST_CASE("faces lie by the thickness of planking and cloth off the moulds, along the normal") {
    Project project = test::bareFitout();
    project.fitout->glassInside = 0.6;
    project.fitout->glassOutside = 0.4;
    project.strips.thickness = 6.0;
    const auto faces = facesOf(project, test::quarterPipe(400, 2000));
    REQUIRE(faces);
    CHECK(sheerAt(faces->inside, 700)->point.y() == Approx(399.4).margin(exact));
    CHECK(sheerAt(faces->outside, 700)->point.y() == Approx(406.4).margin(exact));
    CHECK(bottomAt(faces->inside, 700).value() == Approx(-399.4).margin(exact));
    CHECK(faces->forward == Approx(0).margin(exact));
    CHECK(faces->aft == Approx(2000).margin(exact));
}

TEST_CASE("a level line across the boat meets the face where the circle says") {
    const auto faces = facesOf(test::bareFitout(), test::quarterSphere(500));
    REQUIRE(faces);
    for (const double x : {150.0, 500.0, 820.0})
        for (const double z : {-5.0, -60.0, -140.0}) {
            const auto p = acrossAt(faces->inside, x, z);
            REQUIRE(p);
            CHECK(p->point.y() == Approx(std::sqrt(500 * 500 - (x - 500) * (x - 500) - z * z)).margin(exact));
            CHECK((p->point - Eigen::Vector3d(x, p->point.y(), z)).norm() < 1e-6);
            CHECK((p->normal - (p->point - Eigen::Vector3d(500, 0, 0)).normalized()).norm() < 1e-3);
            const auto again = acrossAt(faces->inside, x + 10, z - 10, p->uv);
            REQUIRE(again);
            CHECK(again->point.norm() > 0);
            const FacePoint back = nearestOn(faces->inside, again->point + 3 * again->normal, p->uv);
            CHECK((back.point - again->point).norm() < 1e-3);
        }
}

TEST_CASE("beside, above and below the hull there is no point") {
    const auto faces = facesOf(test::bareFitout(), test::quarterPipe(400, 2000));
    REQUIRE(faces);
    CHECK_FALSE(acrossAt(faces->inside, 700, 30));
    CHECK_FALSE(acrossAt(faces->inside, 700, -420));
    CHECK_FALSE(sheerAt(faces->inside, -5));
    CHECK_FALSE(sheerAt(faces->inside, 2005));
    CHECK_FALSE(bottomAt(faces->inside, 2100));
}

TEST_CASE("girth down the face is the arc to the height") {
    const auto faces = facesOf(test::bareFitout(), test::quarterPipe(400, 2000));
    REQUIRE(faces);
    for (const double z : {-30.0, -150.0, -390.0})
        CHECK(girthDownTo(faces->inside, 700, z) == Approx(400 * std::asin(-z / 400)).margin(exact));
    CHECK(girthDownTo(faces->inside, 700, -900) == Approx(200 * std::numbers::pi).margin(exact));
}
