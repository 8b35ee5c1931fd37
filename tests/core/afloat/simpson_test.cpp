#include "core/afloat/simpson.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <functional>
#include <numeric>
#include <stdexcept>
#include <vector>

using sheerlay::core::simpsonMultipliers;

// Source of the four examples: D. R. Derrett, rev. C. B. Barrass, Ship Stability for Masters and Mates (5th
// ed., 1999, edition inferred), pp. 74, 88 and 262; University of Southampton, EdShare item 4624 (Cutty
// Sark).

namespace {

double sum(
    const std::vector<double>& places,
    const std::vector<double>& ordinates,
    const std::function<double(double)>& lever = [](double) { return 1.0; }) {
    const std::vector<double> multipliers = simpsonMultipliers(places);
    double total = 0;
    for (std::size_t i = 0; i < places.size(); ++i)
        total += multipliers[i] * ordinates[i] * lever(places[i]);
    return total;
}

std::vector<double> evenly(std::size_t count, double interval) {
    std::vector<double> places(count);
    for (std::size_t i = 0; i < count; ++i)
        places[i] = interval * static_cast<double>(i);
    return places;
}

} // namespace

TEST_CASE("Derrett p. 74: area of a ship's waterplane") {
    const double area = 2 * sum(evenly(7, 20), {0, 3.7, 5.9, 7.6, 7.5, 4.6, 0.1});
    CHECK(std::abs(area - 1207) < 0.5); // printed to the whole square metre
}

TEST_CASE("Derrett p. 88: centre of flotation with half stations at both ends") {
    const double h = 9.375;
    const std::vector<double> levers{4, 3.5, 3, 2, 1, 0, -1, -2, -3, -3.5, -4};
    std::vector<double> places; // from aft, metres abaft amidships negative
    for (const double lever : levers)
        places.push_back(-lever * h);
    const std::vector<double> half{0, 1, 2, 4, 5, 5, 5, 4, 3, 2, 0};
    const auto multipliers = simpsonMultipliers(places);
    CHECK(multipliers[0] == Approx(h / 3 * 0.5).epsilon(1e-12)); // the multipliers the book prints
    CHECK(multipliers[2] == Approx(h / 3 * 1.5).epsilon(1e-12));
    CHECK(multipliers[3] == Approx(h / 3 * 4).epsilon(1e-12));
    const double forward = sum(places, half, [](double x) { return x; }) / sum(places, half);
    // the book's levers grow aft of amidships, its sum -11.5 over 85.5: 1.26 m forward
    CHECK(std::abs(forward - 1.26) < 0.005);
}

TEST_CASE("Derrett p. 262: area, centre of flotation and second moment of a boat's waterplane") {
    const auto places = evenly(7, 3);
    const std::vector<double> half{0, 1.2, 1.5, 1.8, 1.8, 1.5, 1.2};
    const double area = 2 * sum(places, half);
    const double centre = 2 * sum(places, half, [](double x) { return x; }) / area;
    const double inertia = 2 * sum(places, half, [](double x) { return x * x; });
    CHECK(std::abs(area - 51.6) < 0.05);
    CHECK(std::abs(centre - 9 - 0.77) < 0.005);
    CHECK(std::abs(inertia - 5983) < 0.5);
    // printed 1058 m4: the book rounds the centre to 9.77 before it squares, which is worth 0.3 percent
    CHECK(std::abs(inertia - area * centre * centre - 1058) < 0.003 * 1058);
}

TEST_CASE("Cutty Sark's largest section") {
    const double half = sum(evenly(7, 3.4), {17.15, 17.40, 17.45, 17.30, 16.10, 10.65, 0.60});
    CHECK(std::abs(half - 301.75) < 0.005);
}

TEST_CASE("Simpson's rule is exact for cubics over intervals that change from pair to pair") {
    const std::vector<double> places{0, 0.5, 1, 3, 5, 5.25, 5.5};
    std::vector<double> ordinates;
    for (const double x : places)
        ordinates.push_back(2 * x * x * x - x * x + 3);
    const double exact = std::pow(5.5, 4) / 2 - std::pow(5.5, 3) / 3 + 3 * 5.5;
    CHECK(std::abs(sum(places, ordinates) - exact) < 1e-12 * exact);
}

TEST_CASE("places that do not come in pairs are refused") {
    CHECK_THROWS_AS(simpsonMultipliers({0, 1}), std::invalid_argument);
    CHECK_THROWS_AS(simpsonMultipliers({0, 1, 2, 3}), std::invalid_argument);
    CHECK_THROWS_AS(simpsonMultipliers({0, 1, 3}), std::invalid_argument);
    CHECK_THROWS_AS(simpsonMultipliers({0, 0, 0}), std::invalid_argument);
}
