#include "core/hull/hull.hpp"
#include "core/lines_drawing/lines_parts.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/sheet_reading.hpp"

#include <utility>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("the lines to draw are reckoned once, with their extent") {
    const Project project = readProject(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay").value().project;
    const LoftedHull hull = loft(project).value();
    const DrawnLines lines = drawnLines(project, hull, Units::Millimetres);
    CHECK(lines.names.size() == lines.choices.stations.size());
    CHECK_THAT(lines.stern - lines.bow, WithinAbs(hull.drawn.length, 1.0));
    CHECK_THAT(2 * lines.broad, WithinAbs(hull.drawn.beam, 2.0)); // sampled, a crest may fall between
    CHECK_FALSE(lines.sternTransom.empty());                      // a skiff
    CHECK(lines.bowTransom.empty());
    CHECK(lines.far > 0.0);
    CHECK(lines.low <= 0.0);

    std::vector<Item> items;
    LinesPen pen(items);
    LinesParts parts(lines, Units::Millimetres, pen);
    parts.profile({{0, 200}, 0.05});
    const std::size_t side = items.size();
    CHECK(side > 20);
    parts.halfBreadths({{0, 400}, 0.05});
    CHECK(items.size() > side + 20);
    CHECK(LinesParts::letter(0) == "A");
    CHECK(LinesParts::letter(2) == "C");
}

TEST_CASE("a knuckle is drawn from the side and from above") {
    Project project = prismProject();
    const auto drawn = [](const Project& p) {
        const DrawnLines lines = drawnLines(p, loft(p).value(), Units::Millimetres);
        std::vector<Item> items;
        LinesPen pen(items);
        LinesParts parts(lines, Units::Millimetres, pen);
        parts.profile({{0, 200}, 0.05});
        parts.halfBreadths({{0, 400}, 0.05});
        return std::pair(lines.knuckle, items.size());
    };
    const auto [knuckle, items] = drawn(project);
    REQUIRE(knuckle.size() > 10);
    for (const Eigen::Vector3d& p : knuckle)
        CHECK((p.tail<2>() - prismSection(p.x())[1]).norm() < 0.05);
    for (Station& s : project.hull.stations)
        s.knuckle.reset();
    CHECK(drawn(project).first.empty());
    CHECK(items > 20);
}
