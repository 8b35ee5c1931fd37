#include "core/table_edit/table_grid.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/project_text.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;
using Kind = GridLine::Kind;

namespace {

std::vector<std::string> names(const std::vector<GridLine>& lines) {
    std::vector<std::string> all;
    for (const GridLine& line : lines)
        all.push_back(lineName(line));
    return all;
}

} // namespace

TEST_CASE("the lines of a table come in the builder's order, each once") {
    const Project project =
        parsed(replaced(smallProject(),
                        "[[hull.station]]\nx = \"3-0-0\"\n",
                        "[[hull.station]]\nx = \"3-0-0\"\n"
                        "buttocks = [\n{ half-breadth = \"0-3-0\", height = \"0-0-4\" },\n"
                        "{ half-breadth = \"0-6-0\", height = \"0-1-4\" },\n"
                        "{ half-breadth = \"0-6-0\", height = \"0-11-0\" }]\n"
                        "diagonals = [{ height = \"1-0-0\", angle = 40, distance = 300 }]\n"
                        "points = [{ half-breadth = \"0-9-0\", height = \"0-3-0\" }]\n"));
    CHECK(names(gridLines(project.hull)) ==
          std::vector<std::string>{"place",
                                   "sheer height",
                                   "height at the buttock 0-6-0",
                                   "height at the buttock 0-6-0 (2)",
                                   "height at the buttock 0-3-0",
                                   "keel height",
                                   "sheer half-breadth",
                                   "half-breadth at the waterline 0-8-0",
                                   "half-breadth at the waterline 0-4-0",
                                   "keel half-breadth",
                                   "distance along the diagonal from height 1-0-0",
                                   "height of point 1",
                                   "half-breadth of point 1"});
}

TEST_CASE("a cell has its number, its writing and its name, or is blank") {
    const Project project = parsed(smallProject());
    const std::vector<GridLine> lines = gridLines(project.hull);
    REQUIRE(lines.size() == 7);
    const Station& second = project.hull.stations[1];
    CHECK(cellText(second, lines[0], project.units) == "3-0-0");
    CHECK(cellText(second, lines[4], project.units) == "0-11-2");
    CHECK(cellValue(second, lines[4]).value() == 11.25 * 25.4); // 11 2/8 in
    CHECK(cellText(second, lines[6], project.units).empty());   // no keel half-breadth is given
    CHECK_FALSE(cellValue(second, lines[6]).has_value());
    CHECK(cellName(project, lines, {1, 1}) == "Station 3-0-0, sheer height");
    CHECK(givesHeight(lines[2]));
    CHECK_FALSE(givesHeight(lines[4]));
    CHECK(pointOf(second, lines[0]) == nullptr);
    CHECK(pointOf(second, lines[5]) == &second.points[1]);

    Station bare = second;
    bare.keel.reset();
    bare.points.clear();
    CHECK(cellText(bare, lines[2], project.units).empty());
    CHECK(cellText(bare, lines[4], project.units).empty());
    bare.printedX.clear();
    CHECK(cellText(bare, lines[0], project.units) == "914.4"); // 3 ft
}

TEST_CASE("a line is the same however it writes its level, and takes its place again") {
    const Project project = parsed(smallProject());
    std::vector<GridLine> lines = gridLines(project.hull);
    GridLine other = lines[4];
    other.printed = "8 in";
    CHECK(sameLine(lines[4], other));
    CHECK_FALSE(sameLine(lines[4], lines[5]));
    CHECK_FALSE(sameLine(lines[2], lines[1]));
    const std::vector<GridLine> inOrder = lines;
    std::rotate(lines.begin(), lines.begin() + 3, lines.end());
    sortLines(lines);
    CHECK(lines == inOrder);
}

TEST_CASE("a knuckle has its two lines, right below the sheer's") {
    const Project project = skiffProject();
    const std::vector<GridLine> lines = gridLines(project.hull);
    const std::vector<std::string> all = names(lines);
    CHECK(all[1] == "sheer height");
    REQUIRE(all[2] == "knuckle height");
    const auto breadth =
        static_cast<std::size_t>(std::find(all.begin(), all.end(), "knuckle half-breadth") - all.begin());
    REQUIRE(breadth < all.size());
    CHECK(all[breadth - 1] == "sheer half-breadth");
    const Station& station = project.hull.stations[4];
    CHECK(cellValue(station, lines[2]).value() == station.knuckle->height);
    CHECK(cellValue(station, lines[breadth]).value() == station.knuckle->halfBreadth);
    CHECK(givesHeight(lines[2]));
    CHECK_FALSE(givesHeight(lines[breadth]));
    Station onStem = station;
    onStem.knuckle.reset();
    CHECK_FALSE(cellValue(onStem, lines[2]).has_value());
}
