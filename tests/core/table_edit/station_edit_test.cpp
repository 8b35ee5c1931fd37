#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/station_edit.hpp"
#include "core/table_edit/table_grid.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/project_text.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

std::string refusal(const Expected<Project, LengthError>& edited) {
    REQUIRE_FALSE(edited.has_value());
    return edited.error().found + "; " + edited.error().would;
}

} // namespace

TEST_CASE("a new station lies on the loft, to half a unit, and hardly moves it") {
    const auto edited = insertStation(plankedCanoe().project, plankedCanoe().hull, "5-6-0");
    REQUIRE(edited.has_value());
    REQUIRE(edited->hull.stations.size() == plankedCanoe().project.hull.stations.size() + 1);
    const auto at = std::find_if(edited->hull.stations.begin(),
                                 edited->hull.stations.end(),
                                 [](const auto& s) { return s.printedX == "5-6-0"; });
    REQUIRE(at != edited->hull.stations.end());
    CHECK(std::prev(at)->x < at->x);
    CHECK(at->x < std::next(at)->x);
    CHECK(at->keel.has_value());
    CHECK(at->points.size() >= 8);
    const LoftedSection section(plankedCanoe().hull, at->x + plankedCanoe().hull.xShift);
    for (const GridLine& line : gridLines(edited->hull)) {
        const auto loft = section.at(*at, line);
        if (!cellValue(*at, line) || !loft)
            continue;
        INFO(lineName(line));
        CHECK(std::abs(loft->off) <= 0.5 * edited->hull.roundedTo + 1e-6);
        CHECK(cellText(*at, line, edited->units).find('-') != std::string::npos); // builder's notation
    }
    const auto lofted = loft(*edited);
    REQUIRE(lofted.has_value());
    CHECK_THAT(lofted->drawn.halfGirthMax, WithinAbs(plankedCanoe().hull.drawn.halfGirthMax, 0.5)); // mm
}

TEST_CASE("taking a station out and reading it off again gives it back within the loft's accuracy") {
    const std::size_t middle = 6;
    const Station& known = plankedCanoe().project.hull.stations[middle];
    const auto without = removeStation(plankedCanoe().project, middle);
    REQUIRE(without.has_value());
    CHECK(without->hull.stations.size() + 1 == plankedCanoe().project.hull.stations.size());
    const auto lofted = loft(*without);
    REQUIRE(lofted.has_value());
    const auto again = insertStation(*without, *lofted, known.printedX);
    REQUIRE(again.has_value());
    const Station& read = again->hull.stations[middle];
    CHECK(read.x == known.x);
    const LoftedSection section(*lofted, known.x + lofted->xShift);
    int compared = 0;
    for (const GridLine& line : gridLines(plankedCanoe().project.hull)) {
        const auto off = section.at(known, line);
        if (!off)
            continue;
        ++compared;
        INFO(lineName(line));
        CHECK(std::abs(off->normal) <= 2.0); // mm off a surface that does not know the station
        if (cellValue(read, line))
            CHECK_THAT(*cellValue(read, line), WithinAbs(off->lofted, 0.5 * without->hull.roundedTo + 1e-6));
    }
    CHECK(compared >= 8);
}

TEST_CASE("a station of single points gets as many as its neighbour") {
    Project project = plankedCanoe().project;
    for (Station& s : project.hull.stations)
        for (TablePoint& p : s.points)
            p.kind = PointKind::Point;
    const auto lofted = loft(project);
    REQUIRE(lofted.has_value());
    const auto edited = insertStation(project, *lofted, "5-5-0");
    REQUIRE(edited.has_value());
    const auto& stations = edited->hull.stations;
    for (std::size_t i = 0; i < stations.size(); ++i)
        if (stations[i].printedX == "5-5-0")
            CHECK(stations[i].points.size() == stations[i - 1].points.size());
}

TEST_CASE("no station outside the boat, upon another, or below three") {
    CHECK(says(refusal(insertStation(plankedCanoe().project, plankedCanoe().hull, "here")), "here"));
    CHECK(says(refusal(insertStation(plankedCanoe().project, plankedCanoe().hull, "20-0-0")),
               "not on the boat"));
    CHECK(says(refusal(insertStation(plankedCanoe().project, plankedCanoe().hull, "1-0-0+")),
               "where station \"1-0-0\""));
    CHECK(says(refusal(insertStation(plankedCanoe().project, plankedCanoe().hull, "7")), "all three parts"));
    const Project small = parsed(smallProject());
    CHECK(says(refusal(removeStation(small, 1)), "three have to stay"));
}

TEST_CASE("a new station has the knuckle too, but on the stem above it") {
    const Project project = projectAt(SHEERLAY_EXAMPLES "/tanglepike/tanglepike.sheerlay");
    const LoftedHull hull = loft(project).value();
    const auto at = [&](const std::string& x) {
        const auto edited = insertStation(project, hull, x);
        INFO((edited ? std::string() : edited.error().found + "; " + edited.error().would));
        REQUIRE(edited);
        const auto& stations = edited->hull.stations;
        return *std::find_if(
            stations.begin(), stations.end(), [&](const Station& s) { return s.printedX == x; });
    };
    const Station s = at("1050");
    REQUIRE(s.knuckle);
    // the formula she was drawn by: 500 (1 - (1 - 750 / 2800)^3) out, 95 + 114 (0.65 / 0.9)^3 up
    CHECK_THAT(s.knuckle->halfBreadth, WithinAbs(303.8, 1.0));
    CHECK_THAT(s.knuckle->height, WithinAbs(137.9, 1.0));
    CHECK_FALSE(at("240").knuckle);
}
