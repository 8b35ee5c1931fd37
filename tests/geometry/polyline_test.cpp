#include "geometry/polyline.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::geometry;

TEST_CASE("distance from a line is to its nearest piece or end") {
    const std::vector<Eigen::Vector3d> line{{0, 0, 0}, {10, 0, 0}, {10, 0, 0}, {10, 10, 0}};
    CHECK_THAT(distanceTo(line, {5, 0, 3}), WithinAbs(3, 1e-12));
    CHECK_THAT(distanceTo(line, {-3, 4, 0}), WithinAbs(5, 1e-12));
    CHECK_THAT(distanceTo(line, {12, 7, 0}), WithinAbs(2, 1e-12));
    CHECK(distanceTo({}, {0, 0, 0}) > 1e100);
    CHECK_THAT(lengthOf(line), WithinAbs(20, 1e-12));
    CHECK(lengthOf({}) == 0.0);
}
