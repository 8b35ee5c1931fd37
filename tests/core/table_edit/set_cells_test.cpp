#include "core/project/project_writer.hpp"
#include "core/table_edit/set_cells.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/project_text.hpp"

#include <cmath>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;
using Kind = GridLine::Kind;

namespace {

constexpr double same = 1e-9; // mm; one rounding of a double

/// A project with its lines: place, sheer height, keel height, sheer half-breadth, two waterlines, keel
/// half-breadth, and what `more` adds.
struct Table {
    Project project;
    std::vector<GridLine> lines;
    explicit Table(const std::string& text = smallProject())
        : project(parsed(text)), lines(gridLines(project.hull)) {}

    [[nodiscard]] EditedTable set(std::size_t line, std::size_t station, const std::string& text) const {
        return setCells(project, lines, {{{line, station}, text}});
    }
    /// What one refused cell is told.
    [[nodiscard]] std::string refusal(std::size_t line, std::size_t station, const std::string& text) const {
        const EditedTable edited = set(line, station, text);
        CHECK(edited.project == project);
        REQUIRE(edited.refused.size() == 1);
        CHECK(edited.refused.front().entry.text == text);
        return edited.refused.front().found + "; " + edited.refused.front().would;
    }
};

} // namespace

TEST_CASE("a cell is set as it is typed, and keeps its writing in the file") {
    const Table table;
    const EditedTable edited = table.set(1, 1, "1-0-4+");
    CHECK(edited.refused.empty());
    const TablePoint& sheer = edited.project.hull.stations[1].sheer;
    CHECK_THAT(sheer.height, WithinAbs(12.5625 * 25.4, same)); // 12 9/16 in
    CHECK(sheer.printedHeight == "1-0-4+");
    CHECK(says(writeProject(edited.project), "height = \"1-0-4+\""));
    // nothing else moved
    Project back = edited.project;
    back.hull.stations[1].sheer = table.project.hull.stations[1].sheer;
    CHECK(back == table.project);

    CHECK(table.set(4, 1, "0 11 3").project.hull.stations[1].points[0].printedHalfBreadth == "0-11-3");
    CHECK(table.set(4, 1, "0-11-3?").project.hull.stations[1].points[0].printedHalfBreadth == "0-11-3");
    CHECK(table.set(4, 1, "280 mm").project.hull.stations[1].points[0].halfBreadth == 280.0);
    CHECK(table.set(0, 1, "2-11-0").project.hull.stations[1].printedX == "2-11-0");
}

TEST_CASE("what can't be read stays with what would do") {
    const Table table;
    CHECK(says(table.refusal(1, 1, "about so"), "about so"));
    CHECK(says(table.refusal(1, 1, "7"), "all three parts"));
    CHECK(says(table.refusal(1, 1, "3-4"), "feet, inches and eighths"));
    CHECK(says(table.refusal(1, 1, ""), "every station has its sheer"));
    CHECK(says(table.refusal(0, 1, ""), "how far the station stands"));
    CHECK(says(table.refusal(3, 1, "-0-3-0"), "negative"));
    CHECK(says(table.refusal(0, 1, "6-0-0"), "each x larger"));
    CHECK(says(table.refusal(2, 1, ""), "keel = { height"));
}

TEST_CASE("a decimal comma is one; a comma that may stand between thousands is not guessed") {
    const Table plain(fileText(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay")); // plain millimetres
    CHECK(plain.set(1, 1, "532,5").project.hull.stations[1].sheer.height == 532.5);
    CHECK(says(plain.refusal(1, 1, "1,250"), "thousands"));
    CHECK(plain.set(1, 1, "532.5").project.hull.stations[1].sheer.height == 532.5);
    CHECK(plain.set(1, 1, "1-9-0").project.hull.stations[1].sheer.height == 21 * 25.4);
}

TEST_CASE("points come and go") {
    const Table table;
    const EditedTable without = table.set(4, 1, " . ");
    REQUIRE(without.project.hull.stations[1].points.size() == 1);
    CHECK(without.project.hull.stations[1].points[0].printedHeight == "0-4-0");
    // the line is still there for the other stations, and the cell can be given again
    const EditedTable again = setCells(without.project, table.lines, {{{4, 1}, "0-11-2"}});
    CHECK(writeProject(again.project) == writeProject(table.project));
    CHECK(table.set(4, 1, "-").project == without.project);

    // a keel half-breadth is the siding there; blank again it is not given
    const EditedTable keel = table.set(6, 1, "0-0-3");
    CHECK_THAT(keel.project.hull.stations[1].keel->halfBreadth, WithinAbs(0.375 * 25.4, same));
    CHECK(setCells(keel.project, table.lines, {{{6, 1}, ""}}).project == table.project);
}

TEST_CASE("a single point has both its numbers or none") {
    const Table table(replaced(smallProject(),
                               "[[hull.station]]\nx = \"3-0-0\"\n",
                               "[[hull.station]]\nx = \"3-0-0\"\n"
                               "points = [{ half-breadth = \"0-9-0\", height = \"0-3-0\" }, "
                               "{ half-breadth = \"0-6-0\", height = \"0-1-0\" }]\n"));
    REQUIRE(table.lines.size() == 11);
    REQUIRE(table.lines[7].kind == Kind::PointHeight);
    CHECK(says(table.refusal(7, 1, ""), "both numbers, or neither"));
    CHECK(says(table.refusal(7, 0, "0-3-0"), "no half-breadth"));
    CHECK(says(table.refusal(8, 0, "0-1-0"), "no height"));
    const auto fresh =
        setCells(table.project, table.lines, {{{7, 0}, "0-6-0"}, {{8, 0}, "0-1-4"}}).project.hull.stations[0];
    REQUIRE(fresh.points.size() == 3);
    CHECK(fresh.points[2].kind == PointKind::Point);
    CHECK_THAT(fresh.points[2].height, WithinAbs(6 * 25.4, same));
    CHECK_THAT(fresh.points[2].halfBreadth, WithinAbs(1.5 * 25.4, same));
    // the first goes, the second takes its place
    const auto gone =
        setCells(table.project, table.lines, {{{7, 1}, ""}, {{8, 1}, ""}}).project.hull.stations[1];
    REQUIRE(gone.points.size() == 3);
    CHECK(gone.points[2].printedHeight == "0-1-0");
}

TEST_CASE("the distance along a diagonal moves its point") {
    const Table table(replaced(smallProject(),
                               "[[hull.station]]\nx = \"3-0-0\"\n",
                               "[[hull.station]]\nx = \"3-0-0\"\n"
                               "diagonals = [{ height = \"1-0-0\", angle = 30, distance = 200 }]\n"));
    REQUIRE(table.lines[7].kind == Kind::Diagonal);
    const auto moved = table.set(7, 1, "250 mm").project.hull.stations[1].points[2];
    CHECK(moved.diagonal->distance == 250.0);
    CHECK_THAT(moved.halfBreadth, WithinAbs(250 * std::sqrt(0.75), 1e-9));
    CHECK_THAT(moved.height, WithinAbs(304.8 - 125.0, 1e-9));
    const auto fresh = table.set(7, 0, "50 mm").project.hull.stations[0].points;
    REQUIRE(fresh.size() == 3);
    CHECK(fresh[2].diagonal->printedHeight == "1-0-0");
    CHECK_THAT(fresh[2].height, WithinAbs(304.8 - 25.0, 1e-9));
}

TEST_CASE("many cells are judged together; where they don't pass, each on its own") {
    const Table table;
    // no single step of this is in order, all of it is
    const auto moved =
        setCells(table.project, table.lines, {{{0, 0}, "6-6-0"}, {{0, 1}, "7-6-0"}, {{0, 2}, "9-0-0"}});
    CHECK(moved.refused.empty());
    CHECK(moved.project.hull.stations[0].printedX == "6-6-0");

    const auto mixed = setCells(table.project,
                                table.lines,
                                {{{1, 0}, "1-2-4"}, {{3, 1}, "-0-3-0"}, {{4, 1}, "wide"}, {{1, 2}, "1-1-0"}});
    REQUIRE(mixed.refused.size() == 2);
    CHECK(mixed.project.hull.stations[0].sheer.printedHeight == "1-2-4");
    CHECK(mixed.project.hull.stations[2].sheer.printedHeight == "1-1-0");
    CHECK(mixed.project.hull.stations[1] == table.project.hull.stations[1]);
}

TEST_CASE("a correction keeps the printed number beside it, in the file too, until it is taken back") {
    const Table table;
    const auto corrected = setCells(table.project, table.lines, {{{4, 1}, "0-11-3", true}}).project;
    const GridLine& waterline = table.lines[4];
    CHECK(replacedText(corrected.hull.stations[1], waterline) == "0-11-2");
    CHECK(replacedText(table.project.hull.stations[1], waterline).empty());
    CHECK(parsed(writeProject(corrected)).hull.stations[1].points[0].replacedHalfBreadth == "0-11-2");
    // what was printed stays so under a second correction and a number that is typed
    const auto twice = setCells(corrected, table.lines, {{{4, 1}, "0-11-4", true}}).project;
    CHECK(replacedText(twice.hull.stations[1], waterline) == "0-11-2");
    const auto typed = setCells(twice, table.lines, {{{4, 1}, "0-11-5"}}).project;
    CHECK(replacedText(typed.hull.stations[1], waterline) == "0-11-2");
    CHECK(setCells(typed, table.lines, {{{4, 1}, "0-11-2"}}).project == table.project);
    // heights likewise
    const auto sheer = setCells(table.project, table.lines, {{{1, 1}, "1-0-1", true}}).project;
    CHECK(sheer.hull.stations[1].sheer.replacedHeight == "1-0-0");
    CHECK(sheer.hull.stations[1].sheer.replacedHalfBreadth.empty());
}

TEST_CASE("a knuckle's numbers are set like any other, but neither put in nor taken out") {
    const Project project = skiffProject();
    const std::vector<GridLine> lines = gridLines(project.hull);
    REQUIRE(lines[2].kind == Kind::KnuckleHeight);
    const EditedTable edited = setCells(project, lines, {{{2, 4}, "6 in"}});
    CHECK(edited.refused.empty());
    CHECK_THAT(edited.project.hull.stations[4].knuckle->height, WithinAbs(152.4, same));
    CHECK(edited.project.hull.stations[4].knuckle->halfBreadth ==
          project.hull.stations[4].knuckle->halfBreadth);
    const EditedTable cleared = setCells(project, lines, {{{2, 4}, ""}});
    CHECK(cleared.project == project);
    REQUIRE(cleared.refused.size() == 1);
    CHECK(says(cleared.refused.front().would, "file's text"));
    const EditedTable high = setCells(project, lines, {{{2, 4}, "3 ft"}});
    CHECK(high.project == project);
    REQUIRE(high.refused.size() == 1);
    CHECK(says(high.refused.front().would, "below the sheer"));
}
