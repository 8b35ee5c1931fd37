#include "core/planking/taper_program.hpp"
#include "tests/support/catch.hpp"

#include <cstddef>
#include <vector>

using namespace sheerlay::core;
using Catch::Matchers::WithinAbs;

// Programs small enough to solve by hand. Two edges of two coefficients; widths lie between 10 and 17 mm.

namespace {

TaperProgram twoRows() {
    TaperProgram p;
    p.edges = 2;
    p.coefficients = 2;
    p.narrowest.assign(4, 10);
    p.full.assign(4, 17);
    p.wood.assign(4, 0.1); // m2 per mm
    p.slant.assign(4, 1);
    p.inHull.assign(4, 1);
    p.lower.assign(4, 0);
    p.upper.assign(4, 100);
    p.limit = 1;
    return p;
}

/// The second edge's first coefficient must not lie beyond 30 mm: bend = c - 29, limit 1.
TaperProgram heldBack() {
    TaperProgram p = twoRows();
    TaperProgram::Bend bend;
    bend.edge = 1;
    bend.first = 0;
    bend.a = {1, 0, 0, 0};
    bend.constant = -29;
    bend.present = 5;
    p.bends.push_back(bend);
    return p;
}

} // namespace

TEST_CASE("without limits every row is full") {
    TaperSolver solver(twoRows());
    REQUIRE(solver.solve());
    const std::vector<double> c = solver.coefficients();
    REQUIRE(c.size() == 4);
    CHECK_THAT(c[0], WithinAbs(17, 1e-6));
    CHECK_THAT(c[2], WithinAbs(34, 1e-6));
    CHECK_THAT(solver.wood(), WithinAbs(0, 1e-9));
    CHECK_THAT(solver.excess(), WithinAbs(0, 1e-9));
}

TEST_CASE("a limit takes 4 mm from the rows above it, and from one alone when that is cheaper") {
    TaperSolver solver(heldBack());
    REQUIRE(solver.solve());
    CHECK_THAT(solver.coefficients()[2], WithinAbs(30, 1e-6));
    CHECK_THAT(solver.wood(), WithinAbs(0.4, 1e-6));
    solver.setPrices({1, 10});
    REQUIRE(solver.solve());
    CHECK_THAT(solver.narrowing(0), WithinAbs(4, 1e-6));
    CHECK_THAT(solver.narrowing(1), WithinAbs(0, 1e-6));
    // held full, the other one gives
    CHECK(solver.tryHeld({1, 0}, 100, 1e-6));
    CHECK_THAT(solver.narrowing(1), WithinAbs(4, 0.01));
    // both held: refused, and the last solution stands
    CHECK_FALSE(solver.tryHeld({1, 1}, 100, 1e-6));
    CHECK_THAT(solver.narrowing(1), WithinAbs(4, 0.01));
    CHECK_THAT(solver.excess(), WithinAbs(0, 1e-9));
}

TEST_CASE("what can't be met is told as excess") {
    TaperProgram p = heldBack();
    p.bends[0].constant = -18; // not beyond 19, but two narrowest rows take 20
    TaperSolver solver(p);
    REQUIRE(solver.solve());
    CHECK_THAT(solver.excess(), WithinAbs(1, 1e-6));
    CHECK_THAT(solver.coefficients()[2], WithinAbs(20, 1e-6));
}

TEST_CASE("begun from the basis of a like program it comes to the same") {
    TaperSolver first(heldBack());
    REQUIRE(first.solve());
    const TaperBasis basis = first.basis();
    REQUIRE(basis.bends.size() == 1);
    TaperProgram moved = heldBack();
    moved.bends[0].constant = -27.5; // not beyond 28.5
    TaperSolver again(moved, basis);
    REQUIRE(again.solve());
    CHECK_THAT(again.coefficients()[2], WithinAbs(28.5, 1e-6));
    TaperSolver fresh(moved);
    REQUIRE(fresh.solve());
    CHECK_THAT(again.wood(), WithinAbs(fresh.wood(), 1e-9));

    // with an edge more than the basis knows of
    TaperProgram more = moved;
    more.edges = 3;
    for (auto* v : {&more.narrowest, &more.full, &more.wood, &more.slant, &more.lower, &more.upper})
        v->insert(v->end(), 2, v->back());
    more.inHull.insert(more.inHull.end(), 2, 1);
    TaperSolver longer(more, basis);
    REQUIRE(longer.solve());
    CHECK_THAT(longer.coefficients()[2], WithinAbs(28.5, 1e-6));
    CHECK_THAT(longer.coefficients()[4], WithinAbs(45.5, 1e-6));
}

TEST_CASE("a basis without an edge names the edges that are left") {
    TaperSolver solver(heldBack());
    REQUIRE(solver.solve());
    const TaperBasis lower = withoutEdges(solver.basis(), {0});
    CHECK(lower.edges == 1);
    CHECK(lower.coefficient.size() == 2);
    CHECK(lower.narrowing.size() == 1);
    REQUIRE(lower.bends.size() == 1);
    CHECK(lower.bends[0].edge == 0);
    CHECK(withoutEdges(solver.basis(), {1}).bends.empty());
}
