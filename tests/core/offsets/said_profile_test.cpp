#include "core/offsets/said_profile.hpp"
#include "core/offsets/table_project.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"

#include <string>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Notation inches() {
    Notation notation;
    notation.plain = PlainUnit::Inches;
    return notation;
}

} // namespace

TEST_CASE("points are read in any notation, along the boat at their height") {
    const auto points = saidProfile("0-0-0 at 1-2-0; 0-1-4 at 8 1/2 in ;5 at -1", inches());
    REQUIRE(points);
    REQUIRE(points->size() == 3);
    CHECK(points->at(0).x == 0.0);
    CHECK(points->at(0).height == Approx(14 * 25.4));
    CHECK(points->at(1).x == Approx(1.5 * 25.4));
    CHECK(points->at(1).height == Approx(8.5 * 25.4));
    CHECK(points->at(2).height == Approx(-25.4)); // a number alone is in the table's unit
    const auto both = saidProfile("0 at 14", inches(), 2438.4);
    REQUIRE(both->size() == 2);
    CHECK(both->at(1).x == Approx(2 * 2438.4));
    CHECK(both->at(1).height == both->at(0).height);
}

TEST_CASE("what is no point is told with what would do") {
    for (const char* text : {"", ";", "14 in", "x at 14 in", "0 at", "3 at 5 at 6"}) {
        INFO(text);
        const auto points = saidProfile(text, inches());
        REQUIRE_FALSE(points);
        CHECK_FALSE(points.error().found.empty());
        CHECK_FALSE(points.error().would.empty());
    }
}

TEST_CASE("a table takes the stems' profile that is said beside it") {
    const std::string table =
        "station,1,2,3\nposition mm,300,1500,2700\nsheer height,300,250,300\n"
        "sheer half-breadth,120,400,120\nkeel height,20,0,20\nwaterline 100,60,350,60\n";
    const auto taken = [&](const std::vector<std::string>& said) {
        return readTable(table, "trial.csv", "Trial", readCorrections(said).value());
    };
    const auto with =
        taken({"profile = 0 at 310; 60 at 150; 150 at 60", "profile = 3000 at 310; 2850 at 60"});
    REQUIRE(with);
    const auto project = parseProject(with->projectText, "trial.sheerlay");
    REQUIRE(project);
    REQUIRE(project->project.hull.profile.size() == 5);
    CHECK(project->project.hull.profile[4].x == 2850);
    CHECK(project->project.hull.profile[4].height == 60);
    const auto wrong = taken({"profile = 0 310"});
    REQUIRE_FALSE(wrong);
    CHECK(toText(wrong.error().front()).find("profile") != std::string::npos);
}
