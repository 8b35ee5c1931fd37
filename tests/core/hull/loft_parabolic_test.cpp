#include "core/hull/hull.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector3d;

// y = (B/2)(1 - (2x/L)^2)(1 - (z/T)^2): closed forms for everything. Table:
// tests/reference/wigley_offsets_mm.csv.

namespace {

constexpr double L = 5000, B = 800, T = 400; // mm

/// The table as printed, rounded to a tenth of a millimetre, heights above the keel.
Project parabolic() {
    std::ifstream file(SHEERLAY_REFERENCE "/wigley_offsets_mm.csv");
    REQUIRE(file.good());
    Project p;
    p.hull.roundedTo = 0.1;
    std::string line;
    while (std::getline(file, line)) {
        if (line.empty() || line[0] == '#' || line[0] == 's')
            continue;
        std::vector<double> cells;
        std::stringstream row(line);
        for (std::string cell; std::getline(row, cell, ',');)
            cells.push_back(std::stod(cell));
        REQUIRE(cells.size() == 11); // station, x, half-breadths 0 to 400 mm above the keel
        Station s;
        s.x = cells[1];
        s.printedX = std::to_string(static_cast<int>(cells[0]));
        const auto tenth = [](double v) { return std::round(v * 10) / 10; };
        s.sheer = {PointKind::Sheer, tenth(cells[10]), 400, "", "", 0};
        s.keel = TablePoint{PointKind::Keel, tenth(cells[2]), 0, "0", "", 0};
        for (std::size_t k = 3; k < 10; ++k)
            s.points.push_back(
                {PointKind::Waterline, tenth(cells[k]), 50.0 * static_cast<double>(k - 2), "", "", 0});
        p.hull.stations.push_back(s);
    }
    REQUIRE(p.hull.stations.size() == 21);
    return p;
}

/// Simpson's rule.
template <class F> double integral(F f, double a, double b, int n) {
    double sum = f(a) + f(b);
    for (int i = 1; i < n; ++i)
        sum += (i % 2 ? 4 : 2) * f(a + (b - a) * i / n);
    return sum * (b - a) / (3.0 * n);
}

double area(double from, double to) {
    return integral(
        [](double x) {
            return integral(
                [x](double z) {
                    const double yx = -B / 2 * 8 * x / (L * L) * (1 - z * z / (T * T));
                    const double yz = -B / 2 * (1 - 4 * x * x / (L * L)) * 2 * z / (T * T);
                    return std::sqrt(1 + yx * yx + yz * yz);
                },
                0,
                T,
                100);
        },
        from,
        to,
        100);
}

/// Arc of a parabola y = h (1 - (x/a)^2) from its middle to x.
double parabolaArc(double h, double a, double x) {
    const double q = 2 * h * x / (a * a);
    return x / 2 * (std::sqrt(1 + q * q) + std::asinh(q) / q);
}

double lengthOf(const std::vector<Vector3d>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum += (line[i] - line[i - 1]).norm();
    return sum;
}

} // namespace

TEST_CASE("the test's own quadrature gives the reference figures") {
    // analytic_hulls.md, computed there by 200-point Gauss: both sides 5121927.486 mm2, girth 591.57714, arc
    // 5084.0683 mm
    CHECK_THAT(2 * area(-L / 2, L / 2), WithinAbs(5121927.486, 0.1));
    CHECK_THAT(parabolaArc(B / 2, T, T), WithinAbs(591.57714, 1e-4)); // a parabola, 400 high and 400 wide
    CHECK_THAT(2 * parabolaArc(B / 2, L / 2, L / 2), WithinAbs(5084.0683, 1e-3));
}

TEST_CASE("cut between two plumb transoms: area, girth and sheer are the closed forms") {
    Project p = parabolic();
    p.hull.transoms = {{End::Bow, -2400, -2400, 0}, {End::Stern, 2300, 2300, 0}};
    const auto h = loft(p);
    REQUIRE(h.has_value());
    INFO("residual " << h->residualRms << " mm of sigma " << h->roundingSigma);
    CHECK(h->residualRms / h->roundingSigma > 0.7);
    CHECK(h->residualRms / h->roundingSigma < 0.9);
    const TrimmedSurface& d = h->drawn;
    CHECK_THAT(h->xShift, WithinAbs(2400, 1e-6));
    CHECK_THAT(d.length, WithinAbs(4700, 1e-6));
    CHECK_THAT(d.beam, WithinAbs(B, 0.2));
    CHECK_THAT(d.halfGirthMax, WithinAbs(parabolaArc(B / 2, T, T), 0.2));
    CHECK_THAT(d.halfGirthMaxX, WithinAbs(2400, 30));
    CHECK_THAT(d.halfArea, WithinRel(area(-2400, 2300), 2e-4));
    CHECK_THAT(lengthOf(d.sheer),
               WithinAbs(parabolaArc(B / 2, L / 2, 2400) + parabolaArc(B / 2, L / 2, 2300), 0.3));
    for (const double x : {-2200.0, -1000.0, 0.0, 1300.0, 2250.0})
        // toward the ends the fairing rounds the corner where sides and bottom run out together
        CHECK_THAT(
            halfGirthAt(d, x + 2400),
            WithinAbs(parabolaArc(B / 2 * (1 - 4 * x * x / (L * L)), T, T), std::abs(x) > 2000 ? 0.5 : 0.2));
    for (const Vector3d& q : sectionAt(d, 2400 + 1234, 40)) {
        const double depth = (400 - q.z()) / T;
        CHECK_THAT(q.y(), WithinAbs(B / 2 * (1 - 4 * 1234.0 * 1234 / (L * L)) * (1 - depth * depth), 0.4));
    }
}

/// The end stations are all zeros: they are the stems.
Project plumbEnds() {
    Project p = parabolic();
    for (double z = 0; z <= 400; z += 50)
        for (const double x : {-L / 2, L / 2})
            p.hull.profile.push_back({x, z, {}, 0});
    return p;
}

TEST_CASE("plumb ends that meet a straight keel at a corner close all the same") {
    Project p = plumbEnds();
    p.planking.layOn = LayOn::Moulds;
    const auto h = loft(p);
    if (!h.has_value())
        UNSCOPED_INFO(h.error().text);
    REQUIRE(h.has_value());
    // at the foot the half-breadth stays within 0.05 mm of nothing for some mm past the stem
    CHECK_THAT(h->drawn.length, WithinAbs(L, 8));
    CHECK_THAT(h->drawn.halfArea, WithinRel(area(-L / 2, L / 2), 1e-3));
    CHECK_THAT(lengthOf(h->drawn.sheer), WithinAbs(5084.0683, 2));
}

TEST_CASE("volume, waterplane and wetted surface are the published hull's to two in a thousand") {
    // analytic_hulls.md section 1: V = 4/9 L B T, waterplane 2/3 L B, wetted surface 5121927.486 mm2,
    // floating at her sheer
    Project p = plumbEnds();
    p.planking.layOn = LayOn::Moulds;
    const auto h = loft(p);
    REQUIRE(h.has_value());
    constexpr int slices = 400;
    const double step = h->drawn.length / slices;
    double volume = 0;
    double waterplane = 0;
    for (int i = 0; i < slices; ++i) {
        const auto section = sectionAt(h->drawn, (i + 0.5) * step, 60);
        if (section.empty())
            continue;
        waterplane += 2 * section.front().y() * step;
        for (std::size_t k = 1; k < section.size(); ++k)
            volume += (section[k - 1].y() + section[k].y()) * (section[k - 1].z() - section[k].z()) * step;
    }
    CHECK_THAT(volume, WithinRel(4.0 / 9 * L * B * T, 2e-3));
    CHECK_THAT(waterplane, WithinRel(2.0 / 3 * L * B, 2e-3));
    CHECK_THAT(2 * h->drawn.halfArea, WithinRel(5121927.486, 2e-3));
}

TEST_CASE("sides that run out flat against each other need a siding, and the refusal says so") {
    // half-breadth and both its slopes vanish at the foot of the stem: planks of any thickness never meet
    // there
    const Project p = plumbEnds();
    const auto refused = loft(p);
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().text.find("half-siding") != std::string::npos);
}
