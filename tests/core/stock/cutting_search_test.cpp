#include "core/stock/cutting_search.hpp"
#include "tests/core/stock/cutting_test.hpp"
#include "tests/support/catch.hpp"

#include <random>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

CuttingProblem plainProblem(int capacity) {
    CuttingProblem problem;
    problem.grid = 1.0;
    problem.cut = 0;
    problem.kinds = {{capacity, 1.0, {}}};
    problem.longestPiece = 1e9;
    return problem;
}

Cutting solved(const CuttingProblem& problem) {
    const auto pieces = piecesOf(problem);
    const CuttingBound bound = boundCutting(problem, pieces);
    const Cutting cutting = searchCutting(problem, pieces, bound);
    CHECK(wrongWith(problem, cutting) == "");
    CHECK(bound.cost <= cutting.cost * (1 + 1e-9));
    return cutting;
}

} // namespace

TEST_CASE("two strips, by hand: the offcut of one is joined into the other") {
    // 10 ft strips from 8 ft sticks without scarf length: 8 + 2 and 5 + 5 take 3 sticks, 8 + 2 twice (a stick
    // holds both 2 and nothing else) takes 3 as well; 20 ft of strip can't come from two sticks of 8
    CuttingProblem problem = plainProblem(96);
    for (int i = 0; i < 2; ++i)
        problem.units.push_back(unitOf(120, {24, 60, 96}, 3 * i));
    CHECK(solved(problem).cost == 3.0);
}

TEST_CASE("three strips, by hand: nothing is wasted") {
    // 8 ft each from 6 ft sticks: 24 ft are four sticks, as 6 + 2, 2 + 6 and 4 + 4: 6, 6, 2 + 4, 2 + 4
    CuttingProblem problem = plainProblem(72);
    for (int i = 0; i < 3; ++i)
        problem.units.push_back(unitOf(96, {24, 48, 72}, 3 * i));
    CHECK(solved(problem).cost == 4.0);
}

TEST_CASE("a stick parted by a defect is paid once and gives both its clear lengths, by hand") {
    // clear lengths of 60 and 35 on a stick: two strips of 60 and two of 35 are two sticks, nothing wasted
    CuttingProblem problem = plainProblem(60);
    problem.kinds[0].more = {35};
    for (const double length : {60.0, 35.0, 35.0, 60.0})
        problem.units.push_back(unitOf(length, {}));
    CHECK(solved(problem).cost == 2.0);
    // a third of 35 still fits none of them; a strip of 70 is joined of 40 + 30, from a third stick alike
    problem.units.push_back(unitOf(70, {40}));
    CHECK(solved(problem).cost == 3.0);
    // of whole sticks without the defect the same would be three of 95: 60 + 35, 60 + 35, 70
    problem.kinds = {{95, 1.0, {}}};
    CHECK(solved(problem).cost == 3.0);
    // few sticks of a kind are counted as sticks, not as clear lengths
    problem.kinds = {{60, 1.0, 2, {35}}, {80, 1.5, {}}};
    problem.units.pop_back();
    CHECK(solved(problem).cost == 2.0);
    problem.units.push_back(unitOf(70, {40}));
    CHECK(solved(problem).cost == 3.5);
}

TEST_CASE("a joint is worth what is saved by it, and no more") {
    // 5 ft twice from 8 ft sticks: two sticks as they are; joined as 5 and 3 + 2 still two; no joint is made
    CuttingProblem problem = plainProblem(96);
    problem.jointCost = 0.1;
    for (int i = 0; i < 2; ++i)
        problem.units.push_back(unitOf(60, {24, 36}, 2 * i));
    CHECK(solved(problem).cost == 2.0);
    // three of 64 in from 96: three sticks whole, or two with one joint: 64, 64, and 32 + 32 in what is left
    problem.units.clear();
    for (int i = 0; i < 3; ++i)
        problem.units.push_back(unitOf(64, {32}, i));
    CHECK_THAT(solved(problem).cost, WithinAbs(2.1, 1e-9));
    problem.jointCost = 1.5;
    CHECK_THAT(solved(problem).cost, WithinAbs(3.0, 1e-9));
}

TEST_CASE("the scarf takes wood of both pieces, each piece its cut") {
    CuttingProblem problem = plainProblem(100);
    problem.scarf = 4.0;
    problem.cut = 1;
    problem.units = {unitOf(150, {75})};
    const auto pieces = piecesOf(problem);
    CHECK(pieces[0].steps(0, 0, 1) == 78); // 75 + half a scarf + the cut
    CHECK(pieces[0].steps(0, 1, 2) == 78);
    CHECK_FALSE(pieces[0].allowed(0, 2));
    CHECK(solved(problem).cost == 2.0);
}

TEST_CASE("neighbours are joined in different bays, and the known optimum is reached: 2 to 6 strips") {
    std::mt19937 random(7);
    const auto pick = [&random](int least, int most) {
        return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
    };
    int withNeighbours = 0;
    for (int trial = 0; trial < 120; ++trial) {
        CuttingProblem problem = plainProblem(pick(60, 110));
        if (trial % 3 == 0)
            problem.kinds.push_back({pick(40, 60), 0.01 * pick(50, 70), {}});
        problem.jointCost = 0.01 * pick(0, 8);
        problem.scarf = pick(0, 1) * 4.0;
        problem.cut = pick(0, 1);
        problem.shortestPiece = 15.0;
        const int strips = pick(2, trial % 4 == 0 ? 6 : 4);
        for (int i = 0; i < strips; ++i) {
            const int length = pick(50, 140);
            std::vector<double> places;
            for (int p = 1; p <= (strips > 4 ? 2 : 3); ++p)
                places.push_back(length * p / (strips > 4 ? 3.0 : 4.0));
            problem.units.push_back(unitOf(length, places));
            if (i > 0) {
                problem.units[static_cast<std::size_t>(i)].neighbours.push_back(static_cast<std::size_t>(i) -
                                                                                1);
                problem.units[static_cast<std::size_t>(i) - 1].neighbours.push_back(
                    static_cast<std::size_t>(i));
            }
        }
        const double best = optimumByTrial(problem);
        if (best == std::numeric_limits<double>::infinity())
            continue; // too short sticks for the rules; plan_stock tells
        ++withNeighbours;
        INFO("trial " << trial << ", " << strips << " strips");
        const Cutting cutting = solved(problem);
        CHECK_THAT(cutting.cost, WithinAbs(best, 1e-9));
    }
    CHECK(withNeighbours > 80);
}

TEST_CASE("few sticks of a kind are used first and never more than there are") {
    CuttingProblem problem = plainProblem(100);
    problem.kinds = {{100, 0.5, 2}, {100, 1.0, {}}};
    for (int i = 0; i < 5; ++i)
        problem.units.push_back(unitOf(90, {}));
    CHECK(solved(problem).cost == 4.0);
}
