#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/project_text.hpp"

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

constexpr const char* plain = "sheer = { height = \"1-0-0\", half-breadth = \"0-11-0\" }";

std::string sheerWith(const std::string& more) {
    return replaced(
        smallProject(), plain, "sheer = { height = \"1-0-0\", half-breadth = \"0-11-0\", " + more + " }");
}

} // namespace

TEST_CASE("a printed number that was corrected is kept beside the one in its place") {
    const std::string text = sheerWith("replaces = { half-breadth = \"0-1-1\", height = 300 }");
    const Project project = parsed(text);
    const TablePoint& sheer = project.hull.stations[1].sheer;
    CHECK(sheer.replacedHalfBreadth == "0-1-1");
    CHECK(sheer.replacedHeight == "300");
    CHECK(sheer.height == parsed(smallProject()).hull.stations[1].sheer.height);
    CHECK(parsed(writeProject(project)).hull.stations[1].sheer.replacedHalfBreadth == "0-1-1");
    CHECK(parsed(writeProject(project)).hull.stations[1].sheer.replacedHeight == "300");
}

TEST_CASE("of a diagonal it is the distance") {
    const Project project =
        parsed(replaced(smallProject(),
                        plain,
                        std::string(plain) + "\ndiagonals = [{ height = 300, angle = 40, distance = 200, "
                                             "replaces = { distance = \"0-0-7\" } }]"));
    CHECK(project.hull.stations[1].points.back().diagonal->replacedDistance == "0-0-7");
    CHECK(parsed(writeProject(project)).hull == parsed(writeProject(parsed(writeProject(project)))).hull);
    CHECK(says(writeProject(project), "replaces = { distance = \"0-0-7\" }"));
}

TEST_CASE("what replaces no number is refused or left out by name") {
    const auto wrong = parseProject(sheerWith("replaces = { height = \"high\" }"), "trial.sheerlay");
    REQUIRE_FALSE(wrong.has_value());
    CHECK(wrong.error().front().key == "hull.station[2].sheer.replaces.height");
    const auto list = parseProject(sheerWith("replaces = \"0-1-1\""), "trial.sheerlay");
    REQUIRE_FALSE(list.has_value());
    CHECK(says(list.error().front().would, "replaces = { height"));
    const auto odd = parseProject(sheerWith("replaces = { depth = 3 }"), "trial.sheerlay");
    REQUIRE(odd.has_value());
    REQUIRE(odd->warnings.size() == 1);
    CHECK(odd->warnings.front().key == "hull.station[2].sheer.replaces.depth");
}

TEST_CASE("a keel half-breadth of nothing is told from one that is left out") {
    const std::string text = replaced(
        smallProject(), "keel = { height = \"0-0-0\" }", "keel = { height = \"0-0-0\", half-breadth = 0 }");
    const Project project = parsed(text);
    CHECK(project.hull.stations[1].keel->printedHalfBreadth == "0");
    CHECK(parsed(writeProject(project)).hull.stations[1].keel->printedHalfBreadth == "0");
    CHECK(parsed(writeProject(project)).hull.stations[0].keel->printedHalfBreadth.empty());
}
