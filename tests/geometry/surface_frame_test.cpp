#include "geometry/surface_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <random>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

constexpr double rounding = 1e-12; // closed form against closed form

/// The frame whose T makes the angle `turn` with X_u, turned toward X_v.
Frame turned(const SurfaceJet& j, double turn) {
    const Frame along = frameAlong(j, j.u);
    return frameAlong(j, std::cos(turn) * along.tangent + std::sin(turn) * along.across);
}

/// A surface without any symmetry, so that no term can drop out unseen.
SurfaceJet monkey(double u, double v) {
    return {{u, v + 0.1 * u * v, 0.2 * u * u - 0.3 * v * v + 0.05 * u * v * v},
            {1, 0.1 * v, 0.4 * u + 0.05 * v * v},
            {0, 1 + 0.1 * u, -0.6 * v + 0.1 * u * v},
            {0, 0, 0.4},
            {0, 0.1, 0.1 * v},
            {0, 0, -0.6 + 0.1 * u}};
}

} // namespace

TEST_CASE("the normal points outward and D = n x T points to the keel on a starboard side") {
    const SurfaceJet j = CylinderSurface(400).jet(1200, 0); // amidships, at the waterline
    CHECK((j.normal() - Vector3d::UnitY()).norm() < rounding);
    const Frame f = frameAlong(j, Vector3d(1, 7, 0)); // its part along the normal must not count
    CHECK((f.tangent - Vector3d::UnitX()).norm() < rounding);
    CHECK((f.across + Vector3d::UnitZ()).norm() < rounding);
    CHECK((f.normal - Vector3d::UnitY()).norm() < rounding);
}

TEST_CASE("a frame is orthonormal and right-handed, and parameter components rebuild the vector") {
    std::mt19937 random(20);
    std::uniform_real_distribution<double> d(-1, 1);
    for (int i = 0; i < 200; ++i) {
        const SurfaceJet j = monkey(d(random), d(random));
        const Frame f = frameAlong(j, Vector3d(d(random), d(random), d(random) + 2.5));
        CHECK_THAT(f.tangent.norm(), WithinAbs(1, rounding));
        CHECK_THAT(f.across.norm(), WithinAbs(1, rounding));
        CHECK_THAT(f.tangent.dot(f.normal), WithinAbs(0, rounding));
        CHECK((f.normal.cross(f.tangent) - f.across).norm() < rounding);
        const Vector3d vector = 3 * f.tangent - 2 * f.across;
        const Eigen::Vector2d w = parameterComponents(j, vector);
        CHECK((j.u * w.x() + j.v * w.y() - vector).norm() < 1e-11);
    }
}

TEST_CASE("a sphere bends every strip alike and twists none") {
    const RevolutionSurface s = sphere(300);
    for (const double lat : {-1.1, -0.2, 0.0, 0.9})
        for (const double turn : {0.0, 0.4, 1.9, -2.5}) {
            const SurfaceJet j = s.jet(lat, 0.7);
            const StripShape shape = stripShape(j, turned(j, turn));
            CHECK_THAT(shape.bend, WithinRel(1.0 / 300, rounding)); // + where convex
            CHECK_THAT(shape.twist, WithinAbs(0, 1e-15));
            CHECK_THAT(fundamentalForms(j).gauss(), WithinRel(1.0 / 90000, rounding));
        }
}

TEST_CASE("a helix on a cylinder: bend cos^2/a, twist sin cos/a") {
    // mechanics.md section 7, a = 1.7, 0.5 rad from the circumference: 0.453030, 0.247491
    const SurfaceJet j = CylinderSurface(1.7).jet(3, 0.4);
    const double fromAxis = std::numbers::pi / 2 - 0.5;
    const StripShape right = stripShape(j, turned(j, fromAxis));
    CHECK_THAT(right.bend, WithinAbs(0.453030, 5e-7));
    CHECK_THAT(std::abs(right.twist), WithinAbs(0.247491, 5e-7));
    const StripShape left = stripShape(j, turned(j, -fromAxis));
    CHECK_THAT(left.bend, WithinRel(right.bend, rounding));
    CHECK_THAT(left.twist, WithinRel(-right.twist, rounding));
    // an II(T, D) along T = (cos, sin), D = (-sin, cos) with II = diag(0, -1/a): - sin cos / a
    CHECK(right.twist < 0);
    CHECK_THAT(fundamentalForms(j).gauss(), WithinAbs(0, 1e-15));
}

TEST_CASE("twist is -n'.D: the turning of the normal toward the strip's edges") {
    const double h = 1e-5;
    std::mt19937 random(21);
    std::uniform_real_distribution<double> d(-1, 1);
    for (int i = 0; i < 50; ++i) {
        const double u = d(random), v = d(random);
        const SurfaceJet j = monkey(u, v);
        const Frame f = frameAlong(j, Vector3d(d(random) + 1.5, d(random), 0));
        const Eigen::Vector2d w = parameterComponents(j, f.tangent);
        const Vector3d turning =
            (monkey(u + h * w.x(), v + h * w.y()).normal() - monkey(u - h * w.x(), v - h * w.y()).normal()) /
            (2 * h);
        const StripShape shape = stripShape(j, f);
        CHECK_THAT(shape.twist, WithinAbs(-turning.dot(f.across), 1e-9));
        CHECK_THAT(shape.bend, WithinAbs(turning.dot(f.tangent), 1e-9)); // -T'.n = n'.T
    }
}

TEST_CASE("cone and torus: the handbook's figures") {
    // mechanics.md section 7: half angle 0.4, slant 2: |kn| of the circle 1.182611
    const SurfaceJet c = cone(0.4).jet(2, 0.3);
    CHECK_THAT(stripShape(c, turned(c, std::numbers::pi / 2)).bend, WithinAbs(1.182611, 5e-7));
    CHECK_THAT(stripShape(c, turned(c, 0)).bend, WithinAbs(0, 1e-15));
    const double b = 0.8; // from the generator
    CHECK_THAT(std::abs(stripShape(c, turned(c, b)).twist),
               WithinRel(std::sin(b) * std::cos(b) / (2 * std::tan(0.4)), rounding));
    // R 3, r 1, v 0.8, 0.6 rad from the parallel: |kn| 0.447201, |tg| 0.378190
    const SurfaceJet t = torus(3, 1).jet(0.8, 1.1);
    const StripShape shape = stripShape(t, turned(t, std::numbers::pi / 2 - 0.6));
    CHECK_THAT(shape.bend, WithinAbs(0.447201, 5e-7));
    CHECK_THAT(std::abs(shape.twist), WithinAbs(0.378190, 5e-7));
    CHECK_THAT(fundamentalForms(t).gauss(), WithinRel(std::cos(0.8) / (3 + std::cos(0.8)), rounding));
    // inner side: K < 0
    CHECK(fundamentalForms(torus(3, 1).jet(2.5, 0)).gauss() < 0);
    CHECK_THAT(fundamentalForms(tractroid(500).jet(230, 1)).gauss(), WithinRel(-1.0 / 250000, 1e-10));
}

TEST_CASE("Euler: bends square to one another add up to twice the mean curvature") {
    std::mt19937 random(22);
    std::uniform_real_distribution<double> d(-1, 1);
    for (int i = 0; i < 50; ++i) {
        const SurfaceJet j = monkey(d(random), d(random));
        const FundamentalForms I = fundamentalForms(j);
        const double twiceMean = -(I.E * I.N - 2 * I.F * I.M + I.G * I.L) / I.det();
        const double turn = 3 * d(random);
        const StripShape a = stripShape(j, turned(j, turn));
        const StripShape b = stripShape(j, turned(j, turn + std::numbers::pi / 2));
        CHECK_THAT(a.bend + b.bend, WithinAbs(twiceMean, 1e-12));
        CHECK_THAT(a.bend * b.bend - a.twist * a.twist, WithinAbs(I.gauss(), 1e-12));
        CHECK_THAT(a.twist + b.twist, WithinAbs(0, 1e-12));
    }
}

TEST_CASE("edge bend of a parameter line, + toward growing v") {
    // a flat fan: u along circles of radius 1000 - v about a centre on the keel side, then about one above
    class Fan final : public Surface {
    public:
        explicit Fan(double toKeel) : m_k(toKeel) {}
        [[nodiscard]] SurfaceJet jet(double u, double v) const override {
            const double r = 1000 - m_k * v, c = std::cos(u), s = std::sin(u);
            // side view: x aft, z up, y outward; circle about (0, ., -m_k 1000)
            return {{r * s, 5, m_k * r * c},
                    {r * c, 0, -m_k * r * s},
                    {-m_k * s, 0, -c},
                    {-r * s, 0, -m_k * r * c},
                    {-m_k * c, 0, s},
                    {0, 0, 0}};
        }

    private:
        double m_k;
    };
    for (const double toKeel : {1.0, -1.0}) {
        const SurfaceJet j = Fan(toKeel).jet(0.2, 100);
        CHECK_THAT(j.normal().y(), WithinAbs(1, rounding));
        CHECK_THAT(edgeBendOfULine(j), WithinRel(toKeel / (1000 - toKeel * 100), rounding));
    }
    CHECK_THAT(edgeBendOfULine(PlaneSurface({1, 2, 3}, {2, 0, 1}, {1, 0, -3}).jet(4, 5)),
               WithinAbs(0, 1e-15));
}
