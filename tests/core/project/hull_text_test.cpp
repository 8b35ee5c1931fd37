#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/project_text.hpp"

#include <string>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// Written by hand: comments, odd keys, several notations.
const std::string table = "# Ours.\nformat = 1\nname = \"Trial\"\nunits = \"mm\"\n\n"
                          "[hull]   # moulds\ndrawn-to = \"moulds\"\n\n"
                          "[hull.profile]\npoints = [\n    [0, 360],    # stem head\n    [100, 60],\n"
                          "    [1900, 62],\n]\n\n"
                          "# the forward one\n[[hull.station]]\nx = 300   # measured twice\n"
                          "sheer = { height = 355, half-breadth = 76, by = \"me\" }  # as lifted\n"
                          "keel = { height = 51 }\nwaterlines = [\n"
                          "    { height = 300, half-breadth = 60 },   # upper\n"
                          "    { height = 200, half-breadth = 51 },\n"
                          "    { height = 100, half-breadth = 19 },   # lower\n]\n\n"
                          "# the widest\n[[hull.station]]\nx = 1000\n"
                          "sheer = { height = 305, half-breadth = 279 }\nkeel = { height = 0 }\n"
                          "waterlines = [ { height = 200, half-breadth = 285 } ]\n\n"
                          "[[hull.station]]\nx = 1700\n"
                          "sheer = { height = 343, half-breadth = 89 }\nkeel = { height = 38 }\n"
                          "# no waterlines yet\n\n"
                          "[[hull.station]]\nx = 1800\nsheer = { height = 350, half-breadth = 50 }\n"
                          "keel = { height = 45 }\n\n"
                          "[strips]\nthickness = 6\nwidth = 19\ncover-width = 16\n"
                          "wood = \"western-redcedar\"\n";

Project readAny(const std::string& text) {
    const auto read = parseProject(text, "trial.sheerlay"); // an unknown key is named, which is right
    REQUIRE(read.has_value());
    return read->project;
}

Project base() {
    return readAny(table);
}

/// The text with the project in it, which says what the project says.
std::string update(const Project& project, const std::string& text = table) {
    std::string inText = updateProjectText(text, project);
    CHECK(writeProject(readAny(inText)) == writeProject(project));
    return inText;
}

} // namespace

TEST_CASE("an edited number is replaced where it stands, and nothing else") {
    Project project = base();
    TablePoint& sheer = project.hull.stations[0].sheer;
    sheer.height = 356.0;
    sheer.printedHeight = "356";
    CHECK(update(project) == replaced(table, "height = 355", "height = 356"));
    project = base();
    project.hull.stations[0].points[1].halfBreadth = 50.8;
    project.hull.stations[0].points[1].printedHalfBreadth = "0-2-0";
    CHECK(update(project) == replaced(table, "half-breadth = 51", "half-breadth = \"0-2-0\""));
    project = base();
    project.hull.profile[1].height = 61.0;
    CHECK(update(project) == replaced(table, "[100, 60]", "[100, 61]"));
    project = base();
    project.hull.stations[1].x = 1001.0;
    project.hull.stations[1].printedX = "1001";
    CHECK(update(project) == replaced(table, "x = 1000", "x = 1001"));
}

TEST_CASE("points come and go beside their neighbours") {
    Project project = base();
    auto& points = project.hull.stations[0].points;
    points.erase(points.begin() + 1);
    CHECK(update(project) == replaced(table, "    { height = 200, half-breadth = 51 },\n", ""));
    points.pop_back();
    CHECK(says(update(project), "# upper"));

    project = base();
    TablePoint p = project.hull.stations[0].points[0];
    p.height = 340.0;
    p.printedHeight = "340";
    project.hull.stations[0].points.insert(project.hull.stations[0].points.begin(), p);
    CHECK(update(project) == replaced(table,
                                      "    { height = 300,",
                                      "    { height = 340, half-breadth = 60 },\n    { height = 300,"));
    project = base();
    p.height = 150.0;
    p.printedHeight = "150";
    project.hull.stations[1].points.push_back(p);
    CHECK(update(project) == replaced(table,
                                      "half-breadth = 285 }",
                                      "half-breadth = 285 }, { height = 150, half-breadth = 60 }"));
}

TEST_CASE("a station's own keys come and go") {
    Project project = base();
    project.hull.stations[2].points.push_back(project.hull.stations[1].points[0]);
    const std::string with = update(project);
    CHECK(says(with, "keel = { height = 38 }\nwaterlines = ["));
    CHECK(says(with, "# no waterlines yet"));
    CHECK(update(base(), with) == table);
    project = base();
    project.hull.stations[1].keel->halfBreadth = 10.0;
    project.hull.stations[1].keel->printedHalfBreadth = "10";
    CHECK(update(project) ==
          replaced(table, "keel = { height = 0 }", "keel = { height = 0, half-breadth = 10 }"));
}

TEST_CASE("a new key leaves the unknown ones of its point") {
    Project project = base();
    project.hull.stations[0].sheer.replacedHeight = "255";
    const std::string with = update(project);
    CHECK(says(with, "replaces = { height = 255 }"));
    CHECK(says(with, "by = \"me\""));
    CHECK(says(with, "# as lifted"));
}

TEST_CASE("stations come and go between their neighbours") {
    Project project = base();
    Station middle = project.hull.stations[1];
    middle.x = 600.0;
    middle.printedX = "600";
    project.hull.stations.insert(project.hull.stations.begin() + 1, middle);
    const std::string with = update(project);
    CHECK(with.find("x = 300") < with.find("x = 600"));
    CHECK(with.find("x = 600") < with.find("# the widest"));
    for (const char* kept : {"# Ours.", "# measured twice", "# lower", "# no waterlines yet", "# stem head"})
        CHECK(says(with, kept));
    CHECK(says(update(base(), with), "# the widest"));

    project = base();
    project.hull.stations.erase(project.hull.stations.begin() + 2);
    const std::string without = update(project);
    CHECK_FALSE(says(without, "x = 1700"));
    CHECK(without.find("[strips]") != std::string::npos);
    // one goes, another changes
    project.hull.stations[0].sheer.halfBreadth = 77.0;
    project.hull.stations[0].sheer.printedHalfBreadth = "77";
    CHECK(says(update(project), "half-breadth = 77, by = \"me\""));
}

TEST_CASE("a finer number than all before says how finely the table is rounded") {
    Project project = base();
    project.hull.stations[0].sheer.height = 355.5;
    project.hull.stations[0].sheer.printedHeight = "355.5";
    const std::string with = update(project);
    CHECK(says(with, "rounded-to = 1\n"));
    CHECK(says(with, "# measured twice"));
}

TEST_CASE("how closely the loft follows the table is written where it is said, or added") {
    Project project = base();
    project.hull.fairing = 0.6;
    const std::string with = update(project);
    CHECK(says(with, "fairing = 0.6\n"));
    CHECK(with.find("fairing") < with.find("[[hull.station]]"));
    CHECK(says(with, "# measured twice"));
}

TEST_CASE("moulds follow in place") {
    const std::string text = table + "\n[moulds]\nstations = [600, 1200]   # ours\n";
    Project project = readAny(text);
    project.moulds.stations = {660.0, 1320.0};
    CHECK(update(project, text) == replaced(text, "[600, 1200]", "[660, 1320]"));
}

TEST_CASE("windows line ends are borne") {
    std::string text;
    for (const char c : table)
        text += c == '\n' ? std::string("\r\n") : std::string(1, c);
    Project project = readAny(text);
    project.hull.stations[0].points.pop_back();
    project.hull.stations.pop_back();
    CHECK(says(update(project, text), "# upper"));
}
