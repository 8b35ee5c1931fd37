#include "core/project/project_file.hpp"
#include "core/questions/siding_scan.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_tables.hpp"

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("for the canoe of 1889 about three eighths of an inch fit best, and much better than none") {
    // table_checks.md section 1: rabbet points at y = 0, 3.2, 6.35, 9.5, 12.7 leave 0.61, 0.52, 0.42, 0.36,
    // 0.38 mm: a minimum about 10 mm
    HullTable table =
        readProject(SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay").value().project.hull;
    CHECK_FALSE(sidingUntold(table)); // the file gives a quarter of an inch
    table.halfSiding = 0;
    REQUIRE(sidingUntold(table));
    const auto scan = scanSiding(table);
    REQUIRE(scan.has_value());
    REQUIRE(scan->tried.size() == 9);
    for (const auto& [siding, residual] : scan->tried)
        UNSCOPED_INFO(siding << " mm: " << residual);
    CHECK(scan->best > 7.5);
    CHECK(scan->best < 12.5);
    CHECK(scan->bestResidual < 0.75 * scan->residualAtZero);
}

TEST_CASE("a hull that was drawn to the centreline is found to be") {
    const Project p = footStations(formulaCanoe(), sixteenth, 50.8);
    REQUIRE(sidingUntold(p.hull));
    const auto scan = scanSiding(p.hull);
    REQUIRE(scan.has_value());
    CHECK(scan->best < 2.0);
}

TEST_CASE("a keel's own half-breadth tells the siding") {
    HullTable table = footStations(formulaCanoe(), sixteenth, 50.8).hull;
    table.stations[3].keel->halfBreadth = 9.5;
    CHECK_FALSE(sidingUntold(table));
}
