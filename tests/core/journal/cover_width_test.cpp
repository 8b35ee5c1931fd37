#include "core/journal/cover_width.hpp"
#include "tests/core/journal/simulated_boat.hpp"
#include "tests/support/catch.hpp"

#include <array>
#include <cmath>
#include <stdexcept>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

double squared(double v) {
    return v * v;
}

} // namespace

TEST_CASE("one row within the first board: the closed form") {
    const WidthPrior prior;
    const std::vector<MeanOffset> read{{5, 0.9, 0.2}};
    const CoverWidth width = inferCoverWidth(prior, 35, {read, 0.0, 0.0});
    const double v = squared(prior.common) + squared(prior.board);
    const double noise = (squared(0.2) + 5 * squared(prior.waviness)) / 25;
    const Spread laid = width.meanOf(1, 5);
    CHECK(laid.value == Approx(0.9 / 5 * v / (v + noise)));
    CHECK(laid.sd == Approx(std::sqrt(v * noise / (v + noise))));
    // the rest of the first board is like the laid strips, the second board only shares the common bias
    CHECK(width.meanOf(6, 9).value == Approx(laid.value));
    CHECK(width.meanOf(10, 18).value == Approx(laid.value * squared(prior.common) / v));
    CHECK(width.sumOf(10, 18).value == Approx(9 * width.meanOf(10, 18).value));
}

TEST_CASE("nothing read: what strips usually do") {
    const WidthPrior prior;
    const CoverWidth width = inferCoverWidth(prior, 35, {});
    CHECK(width.meanOf(1, 35).value == 0.0);
    // 35 rows are three boards of 9 and one of 8
    const double boards = squared(prior.board) * (3 * 81 + 64);
    const double all = squared(35 * prior.common) + boards + 35 * squared(prior.waviness);
    CHECK(width.sumOf(1, 35).sd == Approx(std::sqrt(all)));
    CHECK(width.sumOf(36, 35).sd == 0.0);
}

TEST_CASE("readings without noise are believed") {
    WidthPrior prior;
    prior.waviness = 0;
    const std::vector<MeanOffset> read{{20, 3.0, 0.0}, {9, 1.8, 0.0}}; // order does not matter
    const CoverWidth width = inferCoverWidth(prior, 35, {read, 0.0, 4000});
    CHECK(width.meanOf(1, 20).value == Approx(0.15).margin(1e-6));
    CHECK(width.meanOf(1, 9).value == Approx(0.2).margin(1e-6));
    CHECK(width.meanOf(1, 20).sd < 1e-5);
}

TEST_CASE("an error that all rows share is not taken for wide strips") {
    // bare moulds never read: 1 mm of offset at rows 5 and 10 alike is a mould, not the strips
    const std::vector<MeanOffset> same{{5, 1.0, 0.05}, {10, 1.0, 0.05}};
    const std::vector<MeanOffset> growing{{5, 1.0, 0.05}, {10, 2.0, 0.05}};
    const double shared = inferCoverWidth({}, 35, {same, 1.0, 4000}).meanOf(1, 10).value;
    const double real = inferCoverWidth({}, 35, {growing, 1.0, 4000}).meanOf(1, 10).value;
    CHECK(shared < 0.05);
    CHECK(real > 3 * shared);
    // and with the moulds read there is no doubt
    CHECK(inferCoverWidth({}, 35, {same, 0.0, 4000}).meanOf(1, 10).value > 0.08);
}

TEST_CASE("a row that is not on the boat is refused") {
    const std::vector<MeanOffset> read{{36, 1.0, 0.1}};
    CHECK_THROWS_AS(inferCoverWidth({}, 35, {read, 0.0, 0.0}), std::invalid_argument);
    CHECK_THROWS_AS(inferCoverWidth({}, 0, {}), std::invalid_argument);
}

TEST_CASE("strips 0.15 mm wider are found from half-millimetre readings") {
    constexpr int boats = 500;
    constexpr double wider = 0.15;
    for (const int row : {5, 10, 20, 30}) {
        double squares = 0, claimed = 0, sum = 0;
        for (unsigned seed = 1; seed <= boats; ++seed) {
            SimulatedBoat boat(seed, 35, {}, &wider);
            const SmoothOffset smooth = smoothReadings(boat.read(row, 0.5));
            const std::array<MeanOffset, 1> read{{{row, smooth.mean(), smooth.meanSd()}}};
            const Spread found =
                inferCoverWidth({}, 35, {read, 0.0, smooth.to() - smooth.from()}).meanOf(1, row);
            squares += squared(found.value - boat.widthExcess(row)) / boats;
            claimed += squared(found.sd) / boats;
            sum += found.value / boats;
        }
        INFO("row " << row << ": rms " << std::sqrt(squares) << ", claimed " << std::sqrt(claimed)
                    << ", mean " << sum);
        // design study, readings amidships alone: 0.07, 0.046, 0.031, 0.025
        const double limit = row == 5 ? 0.07 : row == 10 ? 0.046 : row == 20 ? 0.03 : 0.025;
        CHECK(std::sqrt(squares) < limit);
        CHECK(std::sqrt(squares) == Approx(std::sqrt(claimed)).epsilon(0.2));
        CHECK(sum > 0.11);
        CHECK(sum < 0.17);
    }
}
