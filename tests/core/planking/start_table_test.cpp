#include "core/planking/start_table.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("candidates are compared by what a builder asks of them") {
    const Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    const LoftedHull hull = loft(p).value();
    StartLine bilge;
    bilge.kind = StartLine::Kind::Geodesic;
    bilge.girth = 250;
    StartLine tooLow = bilge;
    tooLow.girth = 5000; // below the keel: can't be laid
    const auto table = compareStarts(p, hull, {StartLine{}, tooLow, bilge}, 0.25e-3);
    REQUIRE(table.size() == 2);
    const StartTableRow& sheer = table[0];
    // planking.md section 4: 37 rows, 140.2 m a side of middle lines, 0.434 /m in rows 0 to 18 at the stem
    // ends, 35 rows over 0.15 and 35 over 0.30
    CHECK_THAT(sheer.worst, WithinAbs(0.434e-3, 0.02e-3));
    CHECK(sheer.rowsOverFree >= 34);
    CHECK(sheer.rowsOverClamp >= 30);
    CHECK(sheer.fillers == 0);
    CHECK(sheer.stripLength > 2 * 140.2e3);
    CHECK(sheer.stripLength < 2 * 140.2e3 * 1.06);
    CHECK_FALSE(sheer.tapered.has_value()); // the sheer itself is bent harder
    const StartTableRow& low = table[1];
    // 15 rows above, 17 pieces a side, two of them 4.2 mm wide (closing.md section 3); 0.208 /m; 139.8 m
    CHECK_THAT(low.worst, WithinAbs(0.208e-3, 0.02e-3));
    CHECK(low.rowsOverClamp == 0);
    CHECK(low.fillers >= 15);
    CHECK(low.fillers <= 19);
    CHECK(low.tapered.value_or(-1) == 0);
    CHECK(low.shutter > 0);
}

TEST_CASE("of a search the best line of each kind is worth comparing, and the one that is chosen") {
    StartCandidate sheer, a, b, bent;
    sheer.worst = 0.4;
    a.line.kind = b.line.kind = StartLine::Kind::Geodesic;
    a.worst = 0.3;
    a.line.girth = 100;
    b.worst = 0.2;
    b.line.girth = 200;
    bent.line.kind = StartLine::Kind::Bent;
    const auto lines = linesToCompare({sheer, a, b, bent}, sheer.line);
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].kind == StartLine::Kind::Sheer);
    CHECK(lines[1].girth == 200);
    CHECK(lines[2].kind == StartLine::Kind::Bent);
    // moved off a sliver it stands in its place; anything else stands beside
    StartLine moved = b.line;
    moved.girth = 197;
    const auto nudged = linesToCompare({sheer, a, b, bent}, moved);
    REQUIRE(nudged.size() == 3);
    CHECK(nudged[1] == moved);
    StartLine own = b.line;
    own.girth = 260;
    const auto both = linesToCompare({sheer, a, b, bent}, own);
    REQUIRE(both.size() == 4);
    CHECK(both[1] == b.line);
    CHECK(both[3] == own);
    CHECK(linesToCompare({}, own).size() == 1);
}
