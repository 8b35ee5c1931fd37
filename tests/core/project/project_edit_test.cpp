#include "core/project/project_edit.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

namespace {

Project reference() {
    const auto read = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    REQUIRE(read.has_value());
    return read->project;
}

} // namespace

TEST_CASE("an edit is judged by the rules of the file") {
    Project project = reference();
    CHECK(checked(project).has_value());
    project.planking.narrowest = project.strips.width + 1.0;
    const auto refused = checked(project);
    REQUIRE(!refused.has_value());
    CHECK(refused.error().front().key == "planking.limits.narrowest");
    project = reference();
    project.planking.shutter = {{0.9, 0.5}};
    CHECK(!checked(project).has_value());
}

TEST_CASE("an edit is named after what it changes") {
    const Planking before;
    Planking after = before;
    CHECK(nameOfChange(before, after).empty());
    after.taper = Taper::Anywhere;
    CHECK(nameOfChange(before, after) == "Taper anywhere");
    after.start.kind = StartLine::Kind::Easiest;
    CHECK(nameOfChange(before, after) == "Planking");
    after.taper = before.taper;
    CHECK(nameOfChange(before, after) == "Start where it is easiest");
    Planking lower = after;
    lower.start = {StartLine::Kind::Geodesic, 100.0, 0.0, {}};
    Planking lowest = lower;
    lowest.start.girth = 200.0;
    CHECK(nameOfChange(lower, lowest) == "Move the start");
    lower.accents = {{Accent::By::Height, 250.0}};
    lowest = lower;
    lowest.accents.front().at = 260.0;
    CHECK(nameOfChange(lower, lowest) == "Rows that stand out");
}

TEST_CASE("changes made on both sides are brought together") {
    const Project base = reference();
    Project mine = base;
    mine.planking.taper = Taper::Ends;
    mine.planking.accents = {{Accent::By::Girth, 120.0}};
    mine.journal.laid.push_back({"S01", "", "", 0});
    Project theirs = base;
    theirs.name = "Theirs";
    theirs.planking.taper = Taper::Anywhere;
    theirs.planking.closing = ClosingMethod::RunOver;
    const Project both = carryOver(base, mine, theirs);
    CHECK(both.name == "Theirs");
    CHECK(both.planking.taper == Taper::Ends);
    CHECK(both.planking.closing == ClosingMethod::RunOver);
    CHECK(both.planking.accents == mine.planking.accents);
    CHECK(both.journal.laid.size() == 1);
    CHECK(carryOver(base, base, theirs) == theirs);
    // an edited table goes on top whole, and only where it was edited
    CHECK(both.hull == theirs.hull);
    mine.hull.stations[3].sheer.height += 1.0;
    theirs.hull.stations[5].sheer.height += 2.0;
    CHECK(carryOver(base, mine, theirs).hull == mine.hull);
    CHECK(carryOver(base, base, theirs).hull == theirs.hull);
}
