#include "tests/support/catch.hpp"
#include "ui/view3d/orbit_camera.hpp"

#include <Eigen/Geometry>

#include <cmath>

using namespace sheerlay::ui;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Where a point of the boat comes to stand in the picture, parts of its height from the middle, right and
/// up: by the textbook's pinhole, not by the camera's own formulas.
Vector2d seen(const CameraPose& pose, const Vector3d& p) {
    const Vector3d forward = (pose.target - pose.eye).normalized();
    const Vector3d right = forward.cross(pose.up).normalized();
    const Vector3d up = right.cross(forward);
    const Vector3d from = p - pose.eye;
    const double size =
        pose.parallel ? pose.height : 2.0 * from.dot(forward) * std::tan(0.5 * OrbitCamera::fieldOfView);
    return {from.dot(right) / size, from.dot(up) / size};
}

std::vector<Vector3d> boxCorners() {
    std::vector<Vector3d> corners;
    for (const double x : {0.0, 4800.0})
        for (const double y : {-430.0, 430.0})
            for (const double z : {-20.0, 700.0})
                corners.emplace_back(x, y, z);
    return corners;
}

OrbitCamera camera(Look look) {
    OrbitCamera made;
    made.setAspect(1.6);
    made.setShape(boxCorners());
    made.look(look);
    return made;
}

} // namespace

TEST_CASE("upside down, the standard views show what their names say") {
    const Vector3d bow(0.0, 0.0, 300.0);
    const Vector3d stern(4800.0, 0.0, 300.0);
    const Vector3d keel(2400.0, 0.0, 0.0);
    const Vector3d sheer(2400.0, 0.0, 600.0);
    const Vector3d starboard(2400.0, 400.0, 300.0);
    const Vector3d port(2400.0, -400.0, 300.0);

    const CameraPose plan = camera(Look::Plan).pose();
    CHECK(seen(plan, bow).x() < seen(plan, stern).x());
    CHECK(seen(plan, port).y() > seen(plan, starboard).y());  // as the map has it
    CHECK((plan.target - plan.eye).normalized().z() > 0.999); // from the keel's side

    const CameraPose profile = camera(Look::Profile).pose();
    CHECK(seen(profile, bow).x() < seen(profile, stern).x());
    CHECK(seen(profile, keel).y() > seen(profile, sheer).y()); // the keel is up

    const CameraPose body = camera(Look::Body).pose();
    CHECK(body.eye.x() < bow.x()); // from before the bow
    CHECK(seen(body, keel).y() > seen(body, sheer).y());
}

TEST_CASE("right way up, the keel is down and the bow still left") {
    OrbitCamera turned = camera(Look::Profile);
    turned.setUpsideDown(false);
    const CameraPose pose = turned.pose();
    CHECK(seen(pose, {2400.0, 0.0, 0.0}).y() < seen(pose, {2400.0, 0.0, 600.0}).y());
    CHECK(seen(pose, {0.0, 0.0, 300.0}).x() < seen(pose, {4800.0, 0.0, 300.0}).x());
}

TEST_CASE("a fitted boat fills the picture and stays inside it") {
    for (const Look look : {Look::ThreeQuarter, Look::Plan, Look::Profile, Look::Body}) {
        const CameraPose pose = camera(look).pose();
        double widest = 0.0;
        double highest = 0.0;
        for (const Vector3d& p : boxCorners()) {
            widest = std::max(widest, std::abs(seen(pose, p).x()) / 1.6);
            highest = std::max(highest, std::abs(seen(pose, p).y()));
        }
        CHECK(widest < 0.5);
        CHECK(highest < 0.5);
        CHECK(std::max(widest, highest) > 0.42); // one way or the other it is full
    }
}

TEST_CASE("zooming keeps the place under the pointer") {
    OrbitCamera eye = camera(Look::Profile);
    const Vector3d mark(1000.0, 0.0, 200.0);
    const Vector2d before = seen(eye.pose(), mark);
    eye.zoom(2.0, before);
    const Vector2d after = seen(eye.pose(), mark);
    CHECK_THAT(after.x(), WithinAbs(before.x(), 1e-9));
    CHECK_THAT(after.y(), WithinAbs(before.y(), 1e-9));
    const double apart = seen(eye.pose(), {2000.0, 0.0, 200.0}).x() - after.x();
    eye.zoom(0.5, {0.0, 0.0});
    CHECK_THAT(seen(eye.pose(), {2000.0, 0.0, 200.0}).x() - seen(eye.pose(), mark).x(),
               WithinRel(0.5 * apart, 1e-9));
}

TEST_CASE("panning moves the boat with the hand") {
    OrbitCamera eye = camera(Look::Plan);
    const Vector3d mark(1000.0, 100.0, 0.0);
    const Vector2d before = seen(eye.pose(), mark);
    eye.pan({0.1, -0.05});
    const Vector2d moved = seen(eye.pose(), mark) - before;
    CHECK_THAT(moved.x(), WithinAbs(0.1, 1e-9));
    CHECK_THAT(moved.y(), WithinAbs(-0.05, 1e-9));
}

TEST_CASE("turning takes the near side along and never tips over the top") {
    OrbitCamera eye = camera(Look::Profile);
    const Vector3d near = eye.pose().eye + 0.8 * (eye.pose().target - eye.pose().eye);
    const double before = seen(eye.pose(), near).x();
    eye.turn(0.1, 0.0);
    CHECK(seen(eye.pose(), near).x() > before);
    eye.turn(0.0, 50.0);
    const CameraPose top = eye.pose();
    CHECK((top.target - top.eye).normalized().z() > 0.999); // straight down on the keel, no farther
    CHECK_THAT(top.up.norm(), WithinAbs(1.0, 1e-9));
    CHECK_THAT(top.up.dot((top.target - top.eye).normalized()), WithinAbs(0.0, 1e-9));
}

TEST_CASE("a view moved by hand is kept when the boat changes, a fitted one follows it") {
    OrbitCamera fitted = camera(Look::ThreeQuarter);
    OrbitCamera moved = camera(Look::ThreeQuarter);
    moved.turn(0.2, 0.1);
    const Vector3d kept = moved.pose().eye;
    const Vector3d before = fitted.pose().eye;
    std::vector<Vector3d> longer = boxCorners();
    longer.emplace_back(9000.0, 0.0, 0.0);
    moved.setShape(longer);
    fitted.setShape(longer);
    CHECK(moved.pose().eye.isApprox(kept));
    CHECK(!fitted.pose().eye.isApprox(before));
}
