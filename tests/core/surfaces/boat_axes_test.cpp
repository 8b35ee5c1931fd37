#include "core/surfaces/boat_axes.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/given_hull.hpp"
#include "tests/support/made_project.hpp"

#include <algorithm>
#include <array>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

BoatAxes found(const geometry::GivenFaces& given, const std::vector<std::string>& takes = {}) {
    const auto axes = boatAxes(given.mesh, corrected(takes));
    if (!axes)
        UNSCOPED_INFO(axes.error().found);
    REQUIRE(axes.has_value());
    return *axes;
}

/// How far the worst point lies off the formula, once in the boat's frame; both sides count.
double worst(const geometry::GivenFaces& given, const BoatAxes& axes) {
    double most = 0;
    for (const Vector3d& p : given.mesh.points) {
        Vector3d q = axes.inBoat(p);
        q.y() = std::abs(q.y());
        most = std::max(most, std::abs(HullFormula{}.off(q)));
    }
    return most;
}

Matrix3d axesOf(const Vector3d& x, const Vector3d& y, const Vector3d& z) {
    Matrix3d turn;
    turn << x, y, z; // columns: where the boat's own axes point in the file
    return turn;
}

} // namespace

TEST_CASE("a boat is found whichever way she lies in the file") {
    const Vector3d X = Vector3d::UnitX(), Y = Vector3d::UnitY(), Z = Vector3d::UnitZ();
    for (const bool whole : {true, false})
        for (const Matrix3d& turn : {axesOf(X, Y, Z),
                                     axesOf(Y, X, Z),
                                     axesOf(-Y, X, Z),
                                     axesOf(X, -Y, Z),
                                     axesOf(X, Z, Y),
                                     axesOf(Z, X, Y),
                                     axesOf(X, Y, -Z),
                                     axesOf(-X, Y, -Z),
                                     axesOf(Z, -Y, X)}) {
            const auto given = turned(givenHull({.whole = whole}), turn);
            const BoatAxes axes = found(given);
            INFO(axes.said[0] << ' ' << axes.said[1] << ' ' << axes.said[2]);
            CHECK((axes.given == BoatAxes::Given::Whole) == whole);
            CHECK(axes.up == turn.col(2));
            CHECK(std::abs(axes.aft.dot(turn.col(0))) == 1.0);
            CHECK(worst(given, axes) < 1e-6); // alike at both ends, so either may be the bow
            CHECK(axes.said.size() == 3);
        }
}

TEST_CASE("the centreplane need not be where the file has its zero") {
    const auto given = turned(givenHull({.whole = true}), Matrix3d::Identity(), {-900, 57, 12});
    const BoatAxes axes = found(given);
    CHECK_THAT(axes.centre, WithinAbs(57, 1e-6));
    CHECK_THAT(axes.foremost, WithinAbs(-900, 1e-6));
    CHECK(axes.uneven < 1e-6);
    CHECK_THAT(axes.inBoat(given.mesh.points.front()).z(), WithinAbs(given.mesh.points.front().z(), 1e-12));
}

TEST_CASE("a transom is the stern, and what the builder says goes first") {
    const Matrix3d about = axesOf(-Vector3d::UnitX(), -Vector3d::UnitY(), Vector3d::UnitZ());
    const auto cut = givenHull({.whole = true, .end = 0.8});
    CHECK(found(cut).aft == Vector3d::UnitX());
    CHECK(found(turned(cut, about)).aft == -Vector3d::UnitX());
    CHECK(found(cut, {"bow = x"}).aft == -Vector3d::UnitX());
    CHECK(found(cut, {"up = -z"}).up == -Vector3d::UnitZ());
    CHECK(found(givenHull({}), {"up = z", "bow = +x"}).aft == -Vector3d::UnitX());
}

TEST_CASE("two sides that are not quite alike are one boat's, and told") {
    auto given = givenHull({.whole = true});
    for (Vector3d& p : given.mesh.points)
        if (p.y() < 0.0)
            p.y() *= 1.005; // 2 mm amidships
    const BoatAxes axes = found(given, {"centre = 0"});
    CHECK(axes.uneven > 1.0);
    CHECK(axes.uneven < 2.5);
}

TEST_CASE("what is no boat is refused in words") {
    const auto refusal = [](const geometry::GivenFaces& given) {
        const auto axes = boatAxes(given.mesh, {});
        REQUIRE_FALSE(axes.has_value());
        return axes.error();
    };
    auto lopsided = givenHull({.whole = true});
    for (Vector3d& p : lopsided.mesh.points)
        if (p.y() < 0.0)
            p.y() *= 0.6;
    CHECK(refusal(lopsided).found.find("neither port and starboard alike nor one half") != std::string::npos);
    CHECK(refusal(lopsided).would.find("faces = 1, 3") != std::string::npos);
    const Matrix3d squat = Vector3d(0.2, 1, 1).asDiagonal();
    CHECK(refusal(turned(givenHull({.whole = true}), squat)).would.find("bow = -x") != std::string::npos);
}
