#include "core/surfaces/skin_rim.hpp"
#include "tests/support/catch.hpp"

#include <cmath>

using namespace sheerlay::core;
using Eigen::Vector3d;
using Line = std::vector<Vector3d>;

namespace {

constexpr double length = 4000;

double breadth(double x) {
    return 400 * (1 - std::pow(2 * x / length - 1, 2)) + 1e-9;
}

/// Sheer level at 300, keel at 0, plumb stem at the bow; at the stern a stem or a transom raked by `rake` mm.
Line rim(bool transom, double rake, double bulge = 0.0) {
    Line line;
    const double end = transom ? 0.8 * length : length;
    for (int i = 0; i <= 200; ++i)
        line.emplace_back((end + rake) * i / 200, breadth((end + rake) * i / 200), 300);
    if (transom)
        for (int i = 1; i < 40; ++i) {
            const double t = 1.0 - i / 40.0;
            line.emplace_back(end + rake * t + bulge * t * (1 - t), breadth(end) * std::sqrt(t), 300 * t);
        }
    for (int i = 0; i <= 200; ++i)
        line.emplace_back(end * (1 - i / 200.0), 0, 0);
    line.push_back(line.front());
    return line;
}

} // namespace

TEST_CASE("sheer and keel meet on the stems") {
    const auto parts = splitRim(rim(false, 0), length);
    REQUIRE(parts.has_value());
    CHECK_FALSE(parts->bow);
    CHECK_FALSE(parts->stern);
    CHECK(parts->sheer.front().x() < 1);
    CHECK(parts->sheer.back().x() > length - 1);
    CHECK(parts->lower.front().z() == 300); // its head
}

TEST_CASE("a raked transom's plane is found and cut off the sheer") {
    for (const double rake : {0.0, 90.0, -60.0}) {
        const auto parts = splitRim(rim(true, rake), length);
        REQUIRE(parts.has_value());
        REQUIRE(parts->stern.has_value());
        CHECK_THAT(parts->stern->xAtSheer, WithinAbs(0.8 * length + rake, 0.5));
        CHECK_THAT(parts->stern->xAtKeel, WithinAbs(0.8 * length, 0.5));
        CHECK_THAT(parts->sheer.back().x(), WithinAbs(0.8 * length + rake, 1e-6));
        CHECK(parts->said.size() == 1);
    }
}

TEST_CASE("a transom that is round is refused with how far it leaves a plane") {
    const auto parts = splitRim(rim(true, 0, 60), length);
    REQUIRE_FALSE(parts.has_value());
    CHECK(parts.error().found.find("leaves a plane by") != std::string::npos);
}

TEST_CASE("a cut into the sheer is refused with its place") {
    Line cut = rim(false, 0);
    cut.insert(cut.begin() + 101, {{2000.0, 390, 200}, {2001.0, 390, 200}});
    const auto parts = splitRim(cut, length);
    REQUIRE_FALSE(parts.has_value());
    CHECK(parts.error().found.find("rises or falls 100.0 mm at once, 2000 mm from the bow") !=
          std::string::npos);
}

TEST_CASE("an edge that does not run round, or not along the keel, is refused") {
    Line open = rim(false, 0);
    open.pop_back();
    CHECK_FALSE(splitRim(open, length).has_value());
    Line far = rim(false, 0);
    for (Vector3d& p : far)
        p.y() += 300;
    const auto parts = splitRim(far, length);
    REQUIRE_FALSE(parts.has_value());
    CHECK(parts.error().found.find("from the centreplane") != std::string::npos);
}
