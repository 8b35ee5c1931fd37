#include "tests/support/catch.hpp"
#include "tests/support/pipe_strip.hpp"
#include "ui/scene/mould_mesh.hpp"
#include "ui/scene/strip_mesh.hpp"
#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Geometry>

#include <cmath>
#include <map>
#include <numbers>
#include <tuple>

using namespace sheerlay;
using namespace sheerlay::ui;
using sheerlay::test::onCylinder;

namespace {

/// Every edge of a closed surface that faces one way is walked once in each direction; points that lie on
/// each other count as one.
bool closedAndOneSided(const TriangleMesh& mesh) {
    using Key = std::tuple<long, long, long>;
    const auto key = [&](int i) {
        const Eigen::Vector3f& p = mesh.points[static_cast<std::size_t>(i)];
        return Key{std::lround(p.x() * 1000.0F), std::lround(p.y() * 1000.0F), std::lround(p.z() * 1000.0F)};
    };
    std::map<std::pair<Key, Key>, int> walked;
    for (const auto& t : mesh.triangles) {
        const std::array<Key, 3> corner{key(t[0]), key(t[1]), key(t[2])};
        if (corner[0] == corner[1] || corner[1] == corner[2] || corner[2] == corner[0])
            continue; // no area, no edge
        for (std::size_t i = 0; i < 3; ++i)
            ++walked[{corner[i], corner[(i + 1) % 3]}];
    }
    for (const auto& [edge, times] : walked) {
        const auto back = walked.find({edge.second, edge.first});
        if (back == walked.end() || back->second != times)
            return false;
    }
    return !walked.empty();
}

} // namespace

TEST_CASE("a box encloses its volume") {
    TriangleMesh mesh;
    mesh.box({-1.0, 2.0, 3.0}, {4.0, 5.0, 7.0});
    CHECK_THAT(enclosedVolume(mesh), WithinAbs(5.0 * 3.0 * 4.0, 1e-4));
    CHECK(closedAndOneSided(mesh));
}

TEST_CASE("a strip is a closed bar of its length, chord and thickness, port as starboard") {
    const double radius = 300.0;
    const double thickness = 6.35;
    for (const core::Side side : {core::Side::Starboard, core::Side::Port}) {
        const core::Strip strip = onCylinder(radius, 0.60, 0.66, 1500.0, side);
        const TriangleMesh mesh = barShape(strip, {-0.5 * thickness, 0.5 * thickness}, fineThinning).solid;
        const double chord = 2.0 * radius * std::sin(0.03);
        // Edges are moved along the middle's normal, so the bar keeps its width through its thickness.
        CHECK_THAT(enclosedVolume(mesh), WithinRel(1500.0 * chord * thickness, 1e-4));
        CHECK(closedAndOneSided(mesh));
    }
}

TEST_CASE("the strip's faces stand where they are told") {
    const core::Strip strip = onCylinder(300.0, 0.60, 0.66, 1500.0, core::Side::Starboard);
    const TriangleMesh mesh = barShape(strip, {-2.0, 5.0}, fineThinning).solid;
    double least = 1e9;
    double most = 0.0;
    for (const Eigen::Vector3f& p : mesh.points) {
        // distance from the cylinder's axis along the middle's normal
        const double along = p.y() * std::cos(0.63) - p.z() * std::sin(0.63);
        least = std::min(least, along);
        most = std::max(most, along);
    }
    const double edge = 300.0 * std::cos(0.03);
    CHECK_THAT(least, WithinAbs(edge - 2.0, 1e-3));
    CHECK_THAT(most, WithinAbs(edge + 5.0, 1e-3));
}

TEST_CASE("a strip that ends in points is closed too") {
    core::Strip strip = onCylinder(300.0, 0.60, 0.66, 1500.0, core::Side::Starboard);
    strip.lowerEdge.front() = strip.upperEdge.front();
    strip.lowerEdge.back() = strip.upperEdge.back();
    const TriangleMesh mesh = barShape(strip, {-3.0, 3.0}, fineThinning).solid;
    CHECK(closedAndOneSided(mesh));
    CHECK(enclosedVolume(mesh) > 0.0);
}

TEST_CASE("edges with different numbers of points are filled without a gap") {
    core::Strip strip = onCylinder(300.0, 0.60, 0.66, 1500.0, core::Side::Starboard);
    strip.lowerEdge.erase(strip.lowerEdge.begin() + 3, strip.lowerEdge.begin() + 15);
    for (std::size_t i = 1; i + 1 < strip.upperEdge.size(); ++i)
        strip.upperEdge[i].z() -=
            2.0 * std::sin(static_cast<double>(i)); // not straight, so that no point is thinned away
    const TriangleMesh mesh = barShape(strip, {-3.0, 3.0}, fineThinning).solid;
    CHECK(closedAndOneSided(mesh));
}

TEST_CASE("a mould is a plate of its outline's area") {
    // half section: a quarter circle from the sheer (y = 300, z = 0) to the keel (0, -300)
    std::vector<Eigen::Vector3d> section;
    for (int i = 0; i <= 90; ++i) {
        const double angle = 0.5 * std::numbers::pi * i / 90;
        section.emplace_back(1200.0, 300.0 * std::cos(angle), -300.0 * std::sin(angle));
    }
    FrameSizes sizes;
    sizes.strongbackTop = 200.0;
    sizes.legHalfWidth = 140.0;
    sizes.plywood = 18.0;
    // half disc, 25 mm straight on at full breadth, legs down to the strongback
    const double area = 0.5 * std::numbers::pi * 300.0 * 300.0 + 600.0 * 25.0 + 280.0 * 175.0;
    for (const bool aft : {true, false}) {
        const TriangleMesh mesh = mouldPlate(section, sizes, aft);
        CHECK_THAT(enclosedVolume(mesh), WithinRel(area * 18.0, 1e-3));
        double low = 1e9;
        double high = -1e9;
        for (const Eigen::Vector3f& p : mesh.points) {
            low = std::min(low, static_cast<double>(p.x()));
            high = std::max(high, static_cast<double>(p.x()));
        }
        CHECK_THAT(low, WithinAbs(aft ? 1200.0 : 1182.0, 1e-3));
        CHECK_THAT(high, WithinAbs(aft ? 1218.0 : 1200.0, 1e-3));
    }
}

TEST_CASE("the strongback has two rails and a cross piece under every mould") {
    FrameSizes sizes;
    sizes.strongbackTop = 500.0;
    const TriangleMesh mesh = strongback({300.0, 600.0, 900.0}, sizes);
    const double rails = 2.0 * 38.0 * 140.0 * (600.0 + 2.0 * 60.0);
    const double crosses = 3.0 * 38.0 * 90.0 * 2.0 * (140.0 - 38.0);
    CHECK_THAT(enclosedVolume(mesh), WithinRel(rails + crosses, 1e-5));
    CHECK(strongback({}, sizes).triangles.empty());
}
