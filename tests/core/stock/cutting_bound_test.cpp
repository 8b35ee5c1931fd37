#include "core/stock/cutting_bound.hpp"
#include "tests/core/stock/cutting_test.hpp"
#include "tests/support/catch.hpp"

#include <random>

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("the bound of pieces that can't be joined is the linear program's") {
    // 7 of 30 from sticks of 100: three in each, so 7/3 sticks; no fraction of a stick does better
    CuttingProblem problem;
    problem.grid = 1.0;
    problem.cut = 0;
    problem.longestPiece = 1e9;
    problem.kinds = {{100, 1.0, {}}};
    for (int i = 0; i < 7; ++i)
        problem.units.push_back(unitOf(30, {}));
    const CuttingBound bound = boundCutting(problem, piecesOf(problem));
    CHECK(bound.closed);
    CHECK_THAT(bound.cost, WithinAbs(7.0 / 3.0, 1e-3));
    CHECK(bound.cost <= 7.0 / 3.0 + 1e-12);
}

TEST_CASE("prices prove the bound: no filling of a stick is worth more than the stick") {
    std::mt19937 random(3);
    CuttingProblem problem;
    problem.grid = 1.0;
    problem.cut = 1;
    problem.scarf = 8.0;
    problem.shortestPiece = 60.0;
    problem.longestPiece = 1e9;
    problem.kinds = {{361, 1.0, {}}, {241, 0.7, {}}};
    for (int i = 0; i < 12; ++i) {
        std::vector<double> places;
        for (int p = 1; p < 12; ++p)
            places.push_back(p * 40.0 + static_cast<double>(random() % 20));
        problem.units.push_back(unitOf(480.0 + static_cast<double>(random() % 30), places));
        if (i > 0) {
            problem.units[static_cast<std::size_t>(i)].neighbours = {static_cast<std::size_t>(i) - 1};
            problem.units[static_cast<std::size_t>(i) - 1].neighbours.push_back(static_cast<std::size_t>(i));
        }
    }
    const auto pieces = piecesOf(problem);
    const CuttingBound bound = boundCutting(problem, pieces);
    const std::vector<double> best = bestFilling(bound.worth, 361);
    for (std::size_t k = 0; k < problem.kinds.size(); ++k)
        CHECK(best[static_cast<std::size_t>(problem.kinds[k].capacity)] <= bound.price[k] * (1 + 1e-9));
    for (std::size_t k = 1; k < bound.worth.size(); ++k)
        CHECK(bound.worth[k] >= bound.worth[k - 1]);
    // fewer rounds prove less, never more
    for (const int rounds : {1, 3, 8})
        CHECK(boundCutting(problem, pieces, rounds).cost <= bound.cost * (1 + 1e-3));
    // wood alone: all pieces together are at least as long as the strips and their cuts
    double wood = 0.0;
    for (const CutUnit& unit : problem.units)
        wood += unit.members[0].at.back();
    CHECK(bound.cost >= wood / 361.0 * 0.999);
}

TEST_CASE("a better filling holds no more than its capacity and is worth what it says") {
    std::vector<double> worth(41, 0.0);
    for (std::size_t k = 7; k < worth.size(); ++k)
        worth[k] = static_cast<double>(k) - (k % 3 == 0 ? 0.0 : 1.5);
    const std::vector<double> best = bestFilling(worth, 100);
    for (int c = 0; c <= 100; ++c) {
        double sum = 0.0;
        int filled = 0;
        for (const auto& [steps, count] : fillingOf(worth, best, c)) {
            sum += count * worth[static_cast<std::size_t>(steps)];
            filled += count * steps;
        }
        CHECK(filled <= c);
        CHECK_THAT(sum, WithinAbs(best[static_cast<std::size_t>(c)], 1e-9));
    }
}
