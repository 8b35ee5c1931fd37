#include "geometry/parallels.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <vector>

using namespace sheerlay::geometry;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double pi = std::numbers::pi;
const ParameterBox everywhere{-1e9, 1e9, -1e9, 1e9};

/// Nodes on a circle u = const of a surface of revolution, running toward falling v, so that D points toward
/// growing u.
std::vector<MasterNode> circle(const RevolutionSurface& s, double u, double edgeBend, int n, double turn) {
    std::vector<MasterNode> nodes;
    for (int i = 0; i <= n; ++i)
        nodes.push_back({{u, -turn * i / n}, {0, -1 / s.rho(u)}, edgeBend});
    return nodes;
}

std::vector<MasterNode> bentMaster(const Surface& s, const Vector2d& at, const Vector3d& to, double k0) {
    std::vector<MasterNode> nodes;
    for (const BentLineNode& n : traceBentLine(s, at, to, {k0, 0, 0, 1}, everywhere, 5, 200))
        nodes.push_back({n.uv, n.velocity, n.edgeBend});
    return nodes;
}

double lengthOf(const std::vector<RowNode>& row) {
    double sum = 0;
    for (std::size_t i = 1; i < row.size(); ++i)
        sum += arcLength(row[i - 1], row[i]);
    return sum;
}

} // namespace

TEST_CASE("parallels of a sphere's equator are its latitudes: kappa = tan(latitude) / R") {
    const double R = 800, w = 17;
    const RevolutionSurface s = sphere(R);
    for (const FanSide side : {FanSide::TowardKeel, FanSide::TowardSheer}) {
        ParallelFan fan(s, circle(s, 0, 0, 40, 1.5), side, everywhere);
        const double sign = side == FanSide::TowardKeel ? 1 : -1;
        for (int k = 1; k <= 40; ++k) {
            fan.advance(w);
            const double lat = sign * k * w / R;
            for (const RowNode& n : fan.row()) {
                REQUIRE(n.alive);
                CHECK_THAT(n.state.uv.x(), WithinAbs(lat, 1e-9));
                CHECK_THAT(n.edgeBend, WithinRel(std::tan(lat) / R, 1e-6));
                CHECK_THAT(n.state.jacobi, WithinRel(std::cos(lat), 1e-7));
            }
            CHECK_THAT(lengthOf(fan.row()), WithinRel(1.5 * R * std::cos(lat), 1e-8));
        }
        CHECK(fan.side() == side);
    }
}

TEST_CASE("parallels of a torus' outer equator: J = rho / (R + r), kappa = sin v / rho toward the axis") {
    const double R = 900, r = 400;
    const RevolutionSurface s = torus(R, r);
    ParallelFan fan(s, circle(s, 0, 0, 30, 1.0), FanSide::TowardKeel, everywhere);
    for (int k = 1; k <= 60; ++k) {
        fan.advance(10);
        const double v = 10.0 * k / r, rho = R + r * std::cos(v);
        const RowNode& n = fan.row()[12];
        CHECK_THAT(n.state.jacobi, WithinRel(rho / (R + r), 1e-8));
        CHECK_THAT(n.edgeBend, WithinRel(std::sin(v) / rho, 1e-7));
        // the frame: T along the circle, D away from the master, n outward
        CHECK_THAT(n.frame.tangent.dot(-n.jet.v.normalized()), WithinAbs(1, 1e-10));
        CHECK_THAT(n.frame.across.dot(n.jet.u.normalized()), WithinAbs(1, 1e-10));
        CHECK_THAT(n.frame.normal.dot(n.jet.normal()), WithinAbs(1, 1e-10));
        CHECK_THAT(n.aft.y() * rho, WithinRel(-1, 1e-9));
        CHECK_THAT(lengthOf(fan.row()), WithinRel(rho, 1e-8)); // one radian
    }
}

TEST_CASE("Gauss-Bonnet on a torus band: the bend a row gathers is the K it has crossed") {
    // mechanics.md section 7: R 3, r 1, band 0 to 0.8, a full turn: 4.507281
    const RevolutionSurface s = torus(3, 1);
    ParallelFan fan(s, circle(s, 0, 0, 90, 2 * pi), FanSide::TowardKeel, everywhere);
    for (int k = 0; k < 80; ++k)
        fan.advance(0.01);
    double gathered = 0;
    const auto& row = fan.row();
    for (std::size_t i = 1; i < row.size(); ++i)
        gathered += 0.5 * (row[i - 1].edgeBend + row[i].edgeBend) * arcLength(row[i - 1], row[i]);
    CHECK_THAT(gathered, WithinAbs(4.507281, 5e-7));
}

TEST_CASE("parallels of a bent line where K is constant") {
    // d kappa / dw = kappa^2 + K; + toward the keel. J = C - kappa0 S with (C, S) = (1, w), (cos, a sin),
    // (cosh, a sinh); kappa = -J'/J
    struct Case {
        const char* name;
        std::function<double(double)> C, S, Cw;
        const Surface* surface;
        Vector2d at;
        Vector3d to;
    };
    const double a = 900;
    const CylinderSurface flat(350);
    const RevolutionSurface ball = sphere(a), horn = tractroid(a);
    const std::vector<Case> cases = {{"K = 0",
                                      [](double) { return 1.0; },
                                      [](double w) { return w; },
                                      [](double) { return 0.0; },
                                      &flat,
                                      {0, 0},
                                      {1, 0, 0}},
                                     {"K = 1/a2",
                                      [=](double w) { return std::cos(w / a); },
                                      [=](double w) { return a * std::sin(w / a); },
                                      [=](double w) { return -std::sin(w / a) / a; },
                                      &ball,
                                      {0.1, 0},
                                      {0.3, 0, 1}},
                                     {"K = -1/a2",
                                      [=](double w) { return std::cosh(w / a); },
                                      [=](double w) { return a * std::sinh(w / a); },
                                      [=](double w) { return std::sinh(w / a) / a; },
                                      &horn,
                                      {500, 0},
                                      {0.3, 0, 1}}};
    for (const Case& c : cases)
        for (const double k0 : {-4e-4, 0.0, 6e-4})
            for (const FanSide side : {FanSide::TowardKeel, FanSide::TowardSheer}) {
                INFO(c.name << ", start bent by " << k0 << " per mm, side " << static_cast<int>(side));
                ParallelFan fan(*c.surface, bentMaster(*c.surface, c.at, c.to, k0), side, everywhere);
                const double away = side == FanSide::TowardKeel ? 1 : -1;
                const double startLength = lengthOf(fan.row());
                for (int k = 1; k <= 20; ++k)
                    fan.advance(8.5);
                const double w = 170, J = c.C(w) - away * k0 * c.S(w);
                const double rate = c.Cw(w) - away * k0 * c.C(w);
                for (std::size_t i = 0; i < fan.row().size(); i += 16) {
                    CHECK_THAT(fan.row()[i].state.jacobi, WithinRel(J, 1e-8));
                    CHECK_THAT(fan.row()[i].edgeBend, WithinAbs(-away * rate / J, 1e-6 * 1e-3));
                }
                CHECK_THAT(lengthOf(fan.row()), WithinRel(J * startLength, 2e-7));
            }
}

TEST_CASE("the edge bend read off J is the bend of the row's own points") {
    // independent of J: a circle through three neighbours, its curvature vector dotted with D
    const RevolutionSurface s = ellipsoid(680, 476);
    ParallelFan fan(s, bentMaster(s, {0.5, 0}, {0.5, 0.2, 1}, 2e-4), FanSide::TowardKeel, everywhere);
    for (int k = 0; k < 15; ++k)
        fan.advance(17);
    const auto& row = fan.row();
    for (std::size_t i = 2; i + 2 < row.size(); i += 7) {
        const double h0 = arcLength(row[i - 1], row[i]), h1 = arcLength(row[i], row[i + 1]);
        const Vector3d second =
            2 * ((row[i + 1].jet.p - row[i].jet.p) / h1 - (row[i].jet.p - row[i - 1].jet.p) / h0) / (h0 + h1);
        CHECK_THAT(second.dot(row[i].frame.across), WithinAbs(row[i].edgeBend, 5e-7));
        // Gauss' lemma: rows cross the geodesics squarely
        const Vector3d chord = row[i + 1].jet.p - row[i - 1].jet.p;
        CHECK_THAT(chord.normalized().dot(row[i].frame.across), WithinAbs(0, 2e-5));
    }
}

TEST_CASE("points between nodes: the error falls with the fourth power of the spacing") {
    const double R = 500;
    const RevolutionSurface s = torus(900, R);
    const auto worst = [&](int parts) {
        // a latitude seen from a slanting master would be no fair test: use a geodesic of known parallels,
        // the outer equator, in parameters that are not proportional to length: compare with a fan four times
        // finer
        std::vector<MasterNode> coarse, fine;
        const auto line =
            traceBentLine(s, {0.2, 0}, {1, 0.2, 1}, {0, 0, 0, 1}, everywhere, 200.0 / parts, 400);
        const auto dense =
            traceBentLine(s, {0.2, 0}, {1, 0.2, 1}, {0, 0, 0, 1}, everywhere, 50.0 / parts, 400);
        for (const auto& m : line)
            coarse.push_back({m.uv, m.velocity, 0});
        for (const auto& m : dense)
            fine.push_back({m.uv, m.velocity, 0});
        ParallelFan a(s, coarse, FanSide::TowardKeel, everywhere),
            b(s, fine, FanSide::TowardKeel, everywhere);
        for (int k = 0; k < 40; ++k) {
            a.advance(3);
            b.advance(3);
        }
        double e = 0;
        for (std::size_t i = 0; i + 1 < a.row().size(); ++i)
            for (const std::size_t q : {1U, 2U, 3U}) {
                const Vector2d uv = between(a.row()[i], a.row()[i + 1], static_cast<double>(q) / 4);
                const RowNode& near = b.row()[4 * i + q];
                e = std::max(e, std::abs((s.jet(uv.x(), uv.y()).p - near.jet.p).dot(near.frame.across)));
            }
        return e;
    };
    const double e4 = worst(4), e8 = worst(8), e16 = worst(16);
    INFO("errors " << e4 << ' ' << e8 << ' ' << e16);
    CHECK(e4 / e8 > 10);
    CHECK(e8 / e16 > 10);
    CHECK(e16 < 1e-4); // 12.5 mm apart
}

TEST_CASE("points along one geodesic between two nodes") {
    const double R = 500;
    const RevolutionSurface s = sphere(R);
    const GeodesicState a{{0.2, 0}, {1 / R, 0}, 1, 0};
    const GeodesicState b = geodesicStep(s, s.jet(0.2, 0), a, 17);
    for (const double f : {0.0, 0.3, 0.5, 1.0})
        CHECK((betweenAlong(a, b, 17, f) - Vector2d(0.2 + 17 * f / R, 0)).norm() < 1e-9);
}

TEST_CASE("arc length is exact for a circle's arc and for a straight line") {
    const double R = 400;
    const RevolutionSurface s = sphere(R);
    const ParallelFan fan(s, circle(s, 0.7, 0, 3, 2.4), FanSide::TowardKeel, everywhere);
    CHECK_THAT(arcLength(fan.row()[0], fan.row()[1]), WithinRel(0.8 * R * std::cos(0.7), 1e-12));
    const CylinderSurface flat(300);
    const ParallelFan straight(
        flat, {{{0, 5}, {1, 0}, 0}, {{250, 5}, {1, 0}, 0}}, FanSide::TowardKeel, everywhere);
    CHECK_THAT(arcLength(straight.row()[0], straight.row()[1]), WithinRel(250, 1e-12));
}

TEST_CASE("columns die outside the box, where the rows fold, and when told to") {
    const double R = 300;
    const RevolutionSurface s = sphere(R);
    ParallelFan fan(s, circle(s, 0, 0, 10, 1), FanSide::TowardKeel, {-10, 10, -0.55, 10});
    CHECK(fan.row()[5].alive);
    CHECK_FALSE(fan.row()[6].alive); // v = -0.6 lies outside
    fan.kill(2);
    fan.keepOnly(1, 5);
    fan.advance(10);
    const std::vector<bool> wanted = {false, true, false, true, true, false};
    for (std::size_t i = 0; i < wanted.size(); ++i)
        CHECK(fan.row()[i].alive == wanted[i]);
    CHECK(fan.row()[2].state.uv.x() == 0.0); // not advanced

    ParallelFan pole(s, circle(s, 0, 0, 4, 1), FanSide::TowardKeel, everywhere);
    int steps = 0;
    while (pole.row()[0].alive && steps < 1000) {
        pole.advance(1);
        ++steps;
    }
    // J = cos(w / R) reaches nothing at a quarter turn
    CHECK_THAT(static_cast<double>(steps), WithinAbs(R * pi / 2, 10));
}
