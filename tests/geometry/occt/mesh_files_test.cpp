#include "geometry/occt/mesh_files.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/scratch_file.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <cstring>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::geometry;
using namespace sheerlay::test;

namespace {

/// A quarter of a pipe, 1000 long: sheer level with the axis, keel a quarter turn below it.
TrimmedFace quarterPipeFace(double radius) {
    const double v = radius * std::numbers::pi / 2;
    return {splineOf(
                [radius](double u, double w) {
                    return Eigen::Vector3d(u, radius * std::cos(w / radius), -radius * std::sin(w / radius));
                },
                {-100, 40, 30},
                {-60, 20, 40}),
            {{{0, 0}, {1000, 0}}, {{1000, 0}, {1000, v}}, {{1000, v}, {0, v}}, {{0, v}, {0, 0}}},
            false};
}

} // namespace

TEST_CASE("half a pipe's triangles close to a body of its volume") {
    const double radius = 300.0;
    const auto half = faceMesh(quarterPipeFace(radius), 0.1);
    REQUIRE(half);
    double worst = 0.0;
    for (const Eigen::Vector3d& p : half->points)
        worst = std::max(worst, std::abs(std::hypot(p.y(), p.z()) - radius));
    CHECK(worst < 0.01);
    const Mesh body = closedAcrossCentre(*half, 0.01);
    CHECK(isClosed(body));
    const double exact = 0.5 * std::numbers::pi * radius * radius * 1000.0;
    // chords 0.1 mm inside the arc at most take off twice that over the radius
    CHECK_THAT(enclosedVolume(body), WithinRel(exact, 2.0 * 0.1 / radius));
    CHECK(enclosedVolume(body) < exact);
    const auto port =
        faceMesh({quarterPipeFace(radius).surface, quarterPipeFace(radius).boundary, true}, 0.1);
    REQUIRE(port);
    CHECK(isClosed(closedAcrossCentre(*port, 0.01)));
    CHECK_THAT(enclosedVolume(closedAcrossCentre(*port, 0.01)), WithinRel(exact, 2.0 * 0.1 / radius));
}

TEST_CASE("an STL file holds every triangle with its points") {
    const ScratchFile file("pipe.stl");
    const auto half = faceMesh(quarterPipeFace(300.0), 0.5);
    REQUIRE(half);
    REQUIRE_FALSE(writeStl(*half, file.path()));
    const std::string bytes = file.bytes();
    REQUIRE(bytes.size() == 84 + 50 * half->triangles.size()); // binary STL: header, count, 50 bytes each
    std::uint32_t count = 0;
    std::memcpy(&count, bytes.data() + 80, 4);
    CHECK(count == half->triangles.size());
    for (std::size_t i = 0; i < half->triangles.size(); ++i)
        for (std::size_t k = 0; k < 3; ++k) {
            std::array<float, 3> p{};
            std::memcpy(p.data(), bytes.data() + 84 + 50 * i + 12 + 12 * k, 12);
            const Eigen::Vector3d& q = half->points[static_cast<std::size_t>(half->triangles[i][k])];
            CHECK((Eigen::Vector3d(p[0], p[1], p[2]) - q).norm() < 1e-3);
        }
}

TEST_CASE("mesh files are the same for the same meshes, and say when they can't be written") {
    const auto half = faceMesh(quarterPipeFace(300.0), 0.5);
    REQUIRE(half);
    const ScratchFile one("one.glb");
    const ScratchFile two("two.glb");
    const std::vector<NamedMesh> meshes{{"Starboard", {0.5, 0.4, 0.3}, *half}, {"Port", {}, mirrored(*half)}};
    REQUIRE_FALSE(writeGlb(meshes, one.path()));
    REQUIRE_FALSE(writeGlb(meshes, two.path()));
    CHECK(one.bytes().substr(0, 4) == "glTF");
    CHECK((one.bytes() == two.bytes())); // not worth printing
    const std::string nowhere = one.path() + "/no/such/folder";
    CHECK(writeGlb(meshes, nowhere).value_or("").find(nowhere) != std::string::npos);
    CHECK(writeStl(*half, nowhere).value_or("").find(nowhere) != std::string::npos);
}
