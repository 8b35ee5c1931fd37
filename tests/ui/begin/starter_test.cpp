#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "ui/begin/starter.hpp"

using namespace sheerlay;

TEST_CASE("the starter is a project under the builder's name") {
    const auto read = core::parseProject(ui::starterProject("Back\\slash\tTab"), "");
    REQUIRE(read.has_value());
    CHECK(read->project.name == "Back\\slash\tTab");
    CHECK(read->warnings.empty());
    CHECK(read->project.hull.stations.size() > 5);
}
