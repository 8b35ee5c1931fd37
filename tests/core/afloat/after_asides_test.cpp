#include "core/afloat/after_asides.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("what is put aside is marked in the list of all and in its part's own, and nowhere else") {
    const Finding bend{Level::Caution, "gunwale-bend", std::nullopt, 79.0, "The outer gunwale is bent."};
    const Finding other{Level::Note, "foot-room", std::nullopt, 1500.0, "Under the seat there is little."};
    const Finding heavy{Level::Note, "two-to-carry", std::nullopt, std::nullopt, "She weighs more."};
    AfterPlanking after;
    after.fitout.emplace().findings = {bend, other};
    after.weights.emplace().findings = {heavy};
    after.findings = {bend, other, heavy};
    const AsideNote steamed{"we steam it", "2026-05-02"}, two{"we are two", ""};
    const AfterPlanking marked = withAsides(after,
                                            {{Level::Caution, bend.code, {}, bend.x, bend.text, steamed, 0},
                                             {Level::Note, heavy.code, {}, {}, "", two, 0}});
    CHECK(marked.fitout->findings[0].aside == steamed);
    CHECK_FALSE(marked.fitout->findings[1].aside);
    CHECK(marked.weights->findings[0].aside == two);
    CHECK(marked.findings[0].aside == steamed);
    CHECK_FALSE(marked.findings[1].aside);
    CHECK(marked.findings[2].aside == two);
    CHECK_FALSE(marked.covering);
    // taken back, the marks go too
    CHECK_FALSE(withAsides(marked, {}).findings[0].aside);
}
