#include "core/patterns/pattern_set.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <set>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

test::Planked boatAt(const std::string& name) {
    return test::planked(
        test::projectAt(std::string(SHEERLAY_EXAMPLES) + "/" + name + "/" + name + ".sheerlay"));
}

bool named(const std::vector<Pattern>& patterns, const std::string& part) {
    return std::ranges::any_of(patterns,
                               [&](const Pattern& p) { return p.file.find(part) != std::string::npos; });
}

} // namespace

TEST_CASE("the set holds every mould, the stem forms, pointed strips and the sheets they are sawn from") {
    const test::Planked boat = boatAt("brindlewick");
    const auto set = patternSet(boat.project, boat.hull, boat.plan, Units::Inches);
    REQUIRE(set);
    CHECK(set->moulds.size() == set->frame.moulds.size() + set->frame.stemForms.size());
    CHECK(named(set->moulds, "stem-form"));
    CHECK_FALSE(set->strips.empty());
    CHECK_FALSE(set->boards.nesting.sheets.empty());
    std::set<std::string> files; // none takes another's name
    for (const auto* patterns : {&set->moulds, &set->strips})
        for (const Pattern& pattern : *patterns)
            CHECK(files.insert(pattern.file).second);
    CHECK(rollPages(set->moulds, "Trial").size() == set->moulds.size()); // moulds go on a roll whole
    CHECK(tiledPages(set->moulds, PageSize::A4, "Trial").size() > 2 * set->moulds.size());
}

TEST_CASE("a boat with a transom has its pattern among the moulds") {
    const test::Planked boat = boatAt("sedgewren");
    const auto set = patternSet(boat.project, boat.hull, boat.plan, Units::Millimetres);
    REQUIRE(set);
    REQUIRE_FALSE(set->frame.transoms.empty());
    CHECK(named(set->moulds, "transom"));
}

TEST_CASE("parts are in the set where a fit-out is given") {
    const test::Planked boat = boatAt("brindlewick");
    const auto fitout = planFitout(boat.project, boat.hull, boat.plan, [](const Fitout&) { return 2400.0; });
    REQUIRE(fitout);
    const auto set = patternSet(boat.project, boat.hull, boat.plan, Units::Inches, *fitout);
    REQUIRE(set);
    CHECK(set->parts.size() == 9); // two bulkheads, two decks, two seats, a yoke, two gunwales
    CHECK(patternSet(boat.project, boat.hull, boat.plan, Units::Inches)->parts.empty());
}

TEST_CASE("a hull without room for a mould is told as a stop, with what would do") {
    test::Planked boat = boatAt("sedgewren");
    boat.project.moulds.stations = {-5000.0}; // far before the bow
    const auto set = patternSet(boat.project, boat.hull, boat.plan, Units::Millimetres);
    REQUIRE_FALSE(set);
    const Finding finding = withoutMoulds(set.error());
    CHECK(finding.level == Level::Stop);
    CHECK(finding.code == "no-moulds");
    CHECK(finding.text.find("would do") != std::string::npos);
}
