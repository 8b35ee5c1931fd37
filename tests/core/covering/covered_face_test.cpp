#include "core/covering/covered_face.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector3d;

namespace {

constexpr double pi = std::numbers::pi;

} // namespace

TEST_CASE("a pipe: area, centre and lengths in closed form, and a weave that never slides") {
    const double r = 400, length = 3000;
    const CoveredFace face = measureFace(test::quarterPipe(r, length).laid);
    CHECK_THAT(face.area, WithinRel(pi * r * length, 1e-4));
    CHECK_THAT(face.halfGirth, WithinRel(pi * r / 2, 1e-4));
    CHECK_THAT(face.length, WithinRel(length, 1e-3));
    CHECK_THAT(face.keelLength, WithinRel(length, 1e-6));
    CHECK_THAT(face.centre.x(), WithinAbs(length / 2, 1));
    CHECK_THAT(face.centre.z(), WithinRel(-2 * r / pi, 1e-3));
    for (const auto& turns : face.turns) {
        REQUIRE(turns.size() > 10);
        for (const WeaveTurn& t : turns) {
            CHECK(std::abs(t.surface) < 1e-4);
            CHECK(std::abs(t.keel) < 1e-4);
        }
    }
}

TEST_CASE("half a ball: the weave slides by the Gauss curvature it lies on") {
    const double r = 600;
    const CoveredFace face = measureFace(test::quarterSphere(r).laid);
    CHECK_THAT(face.area, WithinRel(2 * pi * r * r, 1e-3));
    CHECK_THAT(face.centre.z(), WithinRel(-r / 2, 5e-3));
    CHECK_THAT(face.halfGirth, WithinRel(pi * r / 2, 1e-3));
    CHECK_THAT(face.keelLength, WithinRel(pi * r, 1e-3));
    for (const auto& turns : face.turns)
        for (const WeaveTurn& t : turns) {
            // a quarter of a zone of height h on a sphere holds pi h / (2 r); keel and sheer are great
            // circles
            CHECK_THAT(t.surface, WithinAbs(pi / 2 * std::abs(t.x - r) / r, 0.02));
            CHECK(std::abs(t.keel) < 0.01);
        }
    CHECK_THAT(face.turns[0].back().surface, WithinAbs(pi / 2, 0.02));
}

TEST_CASE("Gauss and Bonnet: curvature within, turns along the edges and the corners add up") {
    // of one side: integral of K + turn of the profile + turn of the sheer = the two angles between sheer and
    // profile
    const LoftedHull hull =
        loft(readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project).value();
    const TrimmedSurface& s = hull.laid;
    const CoveredFace face = measureFace(s);
    double sheerTurn = 0;
    for (std::size_t i = 1; i + 1 < s.sheer.size(); ++i) {
        const Vector3d n = s.surface.jet(s.outline.sheer[i].x(), 0).normal();
        const auto within = [&](const Vector3d& v) { return Vector3d(v - v.dot(n) * n).normalized(); };
        const Vector3d a = within(s.sheer[i] - s.sheer[i - 1]), b = within(s.sheer[i + 1] - s.sheer[i]);
        sheerTurn += std::atan2(a.cross(b).dot(n), a.dot(b));
    }
    const auto corner = [](const Vector3d& at, const Vector3d& one, const Vector3d& other) {
        return std::acos((one - at).normalized().dot((other - at).normalized()));
    };
    const double corners =
        corner(s.sheer.front(), s.sheer[1], s.profile[1]) +
        corner(s.sheer.back(), s.sheer[s.sheer.size() - 2], s.profile[s.profile.size() - 2]);
    const double within = face.turns[0].back().surface + face.turns[1].back().surface;
    const double along = face.turns[0].back().keel + face.turns[1].back().keel;
    INFO("K " << within << ", profile " << along << ", sheer " << sheerTurn << ", corners " << corners);
    CHECK_THAT(within + along + sheerTurn, WithinAbs(corners, 0.06));
    CHECK(along > 1.0); // the stems turn the cloth by most of a right angle each
}
