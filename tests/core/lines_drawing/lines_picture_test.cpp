#include "core/hull/hull.hpp"
#include "core/lines_drawing/lines_picture.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheet_reading.hpp"

#include <string>
#include <variant>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

const DrawnLines& skiff() {
    static const DrawnLines lines = [] {
        const Project project =
            readProject(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay").value().project;
        return drawnLines(project, loft(project).value(), project.units);
    }();
    return lines;
}

const Eigen::Vector2d room(250, 90);

/// Whether every line lies on the picture.
bool within(const Sheet& sheet) {
    for (const Item& item : sheet.items)
        if (const auto* path = std::get_if<Path>(&item))
            for (const Eigen::Vector2d& p : path->points)
                if (p.x() < 0 || p.y() < 0 || p.x() > sheet.width || p.y() > sheet.height)
                    return false;
    return true;
}

} // namespace

TEST_CASE("every part fills its room and no more, and grows with the zoom") {
    for (const LinesPart part :
         {LinesPart::Whole, LinesPart::Profile, LinesPart::HalfBreadths, LinesPart::BodyPlan}) {
        INFO("part " << static_cast<int>(part));
        const LinesPicture once = linesPicture(skiff(), part, Units::Millimetres, room, 1.0);
        CHECK(once.sheet.width <= room.x() + 1e-9);
        CHECK(once.sheet.height <= room.y() + 1e-9);
        CHECK((once.sheet.width > 0.8 * room.x() || once.sheet.height > 0.8 * room.y()));
        CHECK(within(once.sheet));
        CHECK(once.sheet.items.size() > 30);
        const LinesPicture twice = linesPicture(skiff(), part, Units::Millimetres, room, 2.0);
        CHECK((twice.sheet.width > 1.5 * once.sheet.width || twice.sheet.height > 1.5 * once.sheet.height));
        CHECK(within(twice.sheet));
    }
}

TEST_CASE("a point of the boat has its place on every view that is shown") {
    const LinesPicture whole = linesPicture(skiff(), LinesPart::Whole, Units::Millimetres, room, 1.0);
    const Eigen::Vector3d p(1500, 300, 200);
    const auto places = whole.placesOf(p);
    REQUIRE(places.size() == 3);
    const double k = whole.side->scale;
    // half a metre aft and higher goes right and up on the side view, right on the one from above
    const auto aft = whole.placesOf(p + Eigen::Vector3d(500, 0, 100));
    CHECK_THAT(aft[0].x() - places[0].x(), WithinAbs(500 * k, 1e-9));
    CHECK_THAT(aft[0].y() - places[0].y(), WithinAbs(-100 * k, 1e-9));
    CHECK_THAT(aft[1].x() - places[1].x(), WithinAbs(500 * k, 1e-9));
    CHECK_THAT(aft[1].y() - places[1].y(), WithinAbs(0, 1e-9));
    // forward sections to the right of the centreline, after ones to the left
    const double centre = whole.end->at(0, 0).x();
    CHECK(whole.placesOf({skiff().widestX - 500, 300, 200})[2].x() > centre);
    CHECK(whole.placesOf({skiff().widestX + 500, 300, 200})[2].x() < centre);
    CHECK(linesPicture(skiff(), LinesPart::Profile, Units::Millimetres, room, 1.0).placesOf(p).size() == 1);
}

TEST_CASE("stations are named, and a room of nothing is refused") {
    bool named = false;
    for (const Text& text :
         textsOf(linesPicture(skiff(), LinesPart::Profile, Units::Millimetres, room, 1.0).sheet))
        named = named || lineOf(text) == skiff().names[6];
    CHECK(named);
    CHECK_THROWS_AS(linesPicture(skiff(), LinesPart::Whole, Units::Millimetres, {0, 90}, 1.0),
                    std::invalid_argument);
    CHECK_THROWS_AS(linesPicture(skiff(), LinesPart::Whole, Units::Millimetres, room, 0.0),
                    std::invalid_argument);
    // a very small room still gives a picture
    CHECK(linesPicture(skiff(), LinesPart::Whole, Units::Millimetres, {5, 5}, 1.0).sheet.items.size() > 30);
}
