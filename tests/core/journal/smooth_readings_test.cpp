#include "core/journal/measured_edge.hpp"
#include "core/journal/smooth_readings.hpp"
#include "tests/core/journal/simulated_boat.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

std::vector<OffsetReading> readingsOf(const std::vector<double>& offsets) {
    std::vector<OffsetReading> readings;
    for (std::size_t i = 0; i < offsets.size(); ++i)
        readings.push_back({300.0 * static_cast<double>(i), offsets[i], 0.5});
    return readings;
}

/// Second derivatives at equally spaced places of the natural cubic spline through them.
std::vector<double> naturalSpline(const std::vector<double>& y, double step) {
    const std::size_t n = y.size();
    std::vector<double> upper(n, 0.0), m(n, 0.0);
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double pivot = 4.0 - upper[i - 1];
        upper[i] = 1.0 / pivot;
        m[i] = (6.0 * (y[i - 1] - 2 * y[i] + y[i + 1]) / (step * step) - m[i - 1]) / pivot;
    }
    for (std::size_t i = n - 1; i-- > 1;)
        m[i] -= upper[i] * m[i + 1];
    return m;
}

} // namespace

TEST_CASE("a straight offset is kept as it is") {
    std::vector<double> offsets;
    for (int i = 0; i < 15; ++i)
        offsets.push_back(1.0 + 0.2 * i);
    const SmoothOffset smooth = smoothReadings(readingsOf(offsets));
    for (const double x : {0.0, 450.0, 2100.0, 4200.0})
        CHECK(smooth.at(x) == Approx(1.0 + 0.2 * x / 300).margin(1e-5));
    CHECK(std::abs(smooth.curvatureAt(2000)) < 1e-11);
    CHECK(smooth.mean() == Approx(1.0 + 0.2 * 7).margin(1e-5));
}

TEST_CASE("residuals come as close to the noise as the stiffest curve allows") {
    // a bump that a stiff curve can't follow within 0.9 x 0.5 mm
    std::vector<double> offsets;
    for (int i = 0; i < 15; ++i)
        offsets.push_back(4.0 * std::cos(0.5 * i));
    const auto readings = readingsOf(offsets);
    const SmoothOffset smooth = smoothReadings(readings);
    double sum = 0;
    for (const OffsetReading& r : readings)
        sum += std::pow((smooth.at(r.x) - r.offset) / r.sd, 2);
    CHECK(std::sqrt(sum / 15) == Approx(0.9).margin(0.001));
}

TEST_CASE("few readings give no more than they know") {
    SECTION("one") {
        const SmoothOffset s = smoothReadings(std::vector<OffsetReading>{{1000, 2.0, 0.4}});
        CHECK(s.at(0) == Approx(2.0));
        CHECK(s.at(3000) == Approx(2.0));
        CHECK(s.sdAt(1000) == Approx(0.4));
    }
    SECTION("two that agree within their noise: their mean") {
        const SmoothOffset s = smoothReadings(std::vector<OffsetReading>{{1000, 2.0, 0.5}, {2000, 2.6, 0.5}});
        CHECK(s.at(1000) == Approx(2.3));
        CHECK(s.at(2000) == Approx(2.3));
        CHECK(s.sdAt(1500) == Approx(0.5 / std::sqrt(2.0)));
    }
    SECTION("three on a slope: the line of least squares") {
        const SmoothOffset s =
            smoothReadings(std::vector<OffsetReading>{{0, 0.0, 0.5}, {1000, 3.3, 0.5}, {2000, 6.0, 0.5}});
        CHECK(s.at(0) == Approx(0.1));
        CHECK(s.at(1000) == Approx(3.1));
        CHECK(s.at(2000) == Approx(6.1));
        CHECK(s.sdAt(1000) == Approx(0.5 / std::sqrt(3.0)));
        CHECK(s.sdAt(2000) == Approx(0.5 * std::sqrt(1.0 / 3 + 0.5)));
    }
    SECTION("two sides at one station") {
        const SmoothOffset s = smoothReadings(std::vector<OffsetReading>{{500, 1.0, 0.5}, {500, 3.0, 0.5}});
        CHECK(s.at(500) == Approx(2.0));
        CHECK(s.at(900) == Approx(2.0));
    }
}

TEST_CASE("past the outermost reading the slope runs out") {
    const SmoothOffset s = smoothReadings(std::vector<OffsetReading>{{0, 0.0, 0.1}, {1000, 10.0, 0.1}});
    CHECK(s.at(1000 + 600) == Approx(10.0 + 0.01 * 300));
    CHECK(s.at(1000 + 5000) == Approx(s.at(1600)));
    CHECK(s.at(-600) == Approx(-0.01 * 300));
    CHECK((s.at(1001) - s.at(1000)) == Approx(0.01).epsilon(0.01));
}

TEST_CASE("what can't be smoothed is refused") {
    CHECK_THROWS_AS(smoothReadings({}), std::invalid_argument);
    CHECK_THROWS_AS(smoothReadings(std::vector<OffsetReading>{{0, 0, 0.0}}), std::invalid_argument);
}

TEST_CASE("the measured edge carries the smoothed offset") {
    std::vector<double> offsets;
    for (int i = 0; i < 15; ++i)
        offsets.push_back(2.0 * std::sin(0.4 * i));
    const SmoothOffset smooth = smoothReadings(readingsOf(offsets));
    const MeasuredEdge edge = measuredEdge(20, smooth);
    CHECK(edge.row == 20);
    REQUIRE(edge.x.size() == edge.offset.size());
    for (double x = -700; x < 5000; x += 7)
        CHECK(edge.at(x) == Approx(smooth.at(x)).margin(2e-4));
}

TEST_CASE("smoothing takes the noise and leaves the wave") {
    // Design study of the journal, 0.5 mm readings every 305 mm: error 0.47 -> 0.31 mm rms; largest edge bend
    // of the interpolated readings 0.065 /m, smoothed 0.004, true 0.005. Its boats are drawn anew here.
    constexpr int boats = 500;
    double rawSquares = 0, smoothSquares = 0, claimedSquares = 0, rawBend = 0, smoothBend = 0, trueBend = 0;
    int places = 0;
    for (unsigned seed = 1; seed <= boats; ++seed) {
        SimulatedBoat boat(seed, 20, {});
        const auto readings = boat.read(20, 0.5);
        const SmoothOffset smooth = smoothReadings(readings);
        std::vector<double> y;
        for (const OffsetReading& r : readings)
            y.push_back(r.offset);
        const auto bend = naturalSpline(y, stationSpacing);
        double worst = 0, worstSmooth = 0, worstTrue = 0;
        const auto compare = [&](double x, double interpolated) {
            const double truth = boat.edge(20, x);
            rawSquares += std::pow(interpolated - truth, 2);
            smoothSquares += std::pow(smooth.at(x) - truth, 2);
            claimedSquares += std::pow(smooth.sdAt(x), 2);
            ++places;
        };
        for (std::size_t i = 0; i < y.size(); ++i) {
            const double x = readings[i].x;
            compare(x, y[i]);
            if (i + 1 < y.size())
                compare(x + stationSpacing / 2,
                        (y[i] + y[i + 1]) / 2 -
                            stationSpacing * stationSpacing * (bend[i] + bend[i + 1]) / 16);
            worst = std::max(worst, std::abs(bend[i]));
            worstSmooth = std::max(worstSmooth, std::abs(smooth.curvatureAt(x)));
            const double h = 50;
            worstTrue = std::max(
                worstTrue,
                std::abs(boat.edge(20, x - h) - 2 * boat.edge(20, x) + boat.edge(20, x + h)) / (h * h));
        }
        rawBend += 1000 * worst / boats;
        smoothBend += 1000 * worstSmooth / boats;
        trueBend += 1000 * worstTrue / boats;
    }
    const double raw = std::sqrt(rawSquares / places);
    const double smoothed = std::sqrt(smoothSquares / places);
    const double claimed = std::sqrt(claimedSquares / places);
    INFO("rms " << raw << " -> " << smoothed << ", claimed " << claimed << "; largest edge bend " << rawBend
                << ", smoothed " << smoothBend << ", true " << trueBend);
    CHECK(raw == Approx(0.47).epsilon(0.1));
    CHECK(smoothed == Approx(0.31).epsilon(0.1));
    CHECK(rawBend == Approx(0.065).epsilon(0.2));
    CHECK(smoothBend == Approx(0.004).epsilon(0.2));
    CHECK(smoothBend < trueBend); // nothing is added
    CHECK(claimed > 0.75 * smoothed);
    CHECK(claimed < 1.1 * smoothed);
}
